package org.espalier.shell;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import org.espalier.kit.Texts;
import org.springframework.boot.webmvc.autoconfigure.error.ErrorViewResolver;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.util.HtmlUtils;

/** What is read in place of an answer that is none: outside the screens, so that it stands when they do not. */
@Component
class BrokenPage implements ErrorViewResolver {

    @Override
    public ModelAndView resolveErrorView(HttpServletRequest asked, HttpStatus status, Map<String, Object> model) {
        return new ModelAndView((_, request, response) -> write(status, request, response));
    }

    private static void write(HttpStatus status, HttpServletRequest request, HttpServletResponse response)
            throws IOException {
        boolean broken = status.is5xxServerError();
        var number = Optional.ofNullable(response.getHeader("X-Request-Id")).orElse("\u2013");
        var heading = Texts.text(broken ? "shell.broken" : "shell.no-such-place");
        var say = broken ? Texts.text("shell.broken.say", number) : Texts.text("shell.no-such-place.say");
        response.setContentType(MediaType.TEXT_HTML_VALUE);
        response.setCharacterEncoding(StandardCharsets.UTF_8.name());
        response.getWriter().write("""
                        <!doctype html>
                        <html lang="%1$s">
                        <head>
                        <meta charset="utf-8">
                        <meta name="viewport" content="width=device-width, initial-scale=1">
                        <title>%2$s</title>
                        <link rel="stylesheet" href="%5$s/themes/espalier.css">
                        <link rel="stylesheet" href="%5$s/themes/patient.css">
                        </head>
                        <body><main class="screen narrow">
                        <h1>%3$s</h1><p>%4$s</p><a class="act" href="%5$s/">%6$s</a>
                        </main></body>
                        </html>
                        """.formatted(
                        Texts.language().getLanguage(),
                        HtmlUtils.htmlEscape(Texts.text("kit.page", heading)),
                        HtmlUtils.htmlEscape(heading),
                        HtmlUtils.htmlEscape(say),
                        HtmlUtils.htmlEscape(request.getContextPath()),
                        HtmlUtils.htmlEscape(Texts.text("shell.no-such-place.way"))));
    }
}
