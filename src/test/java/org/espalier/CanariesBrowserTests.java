package org.espalier;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.microsoft.playwright.Route;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.espalier.Browser.Screen;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.slf4j.MDC;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpServletResponse;

/** Each search for canaries finds one that is there. */
@IntegrationTest
class CanariesBrowserTests {

    private static final Logger LOG = LoggerFactory.getLogger(CanariesBrowserTests.class);

    static final List<String> words = Canaries.ANYWHERE;

    @LocalServerPort
    int port;

    @ParameterizedTest
    @FieldSource("words")
    void areFoundInALineOfTheLog(String word) {
        LOG.info("Registered {}", word);
        assertThat(Canaries.found()).isNotEmpty().allMatch(found -> found.startsWith(word + " in the log"));
        LOG.warn("Refused", new IllegalStateException("Key (number)=(" + word + ") exists"));
        assertThat(Canaries.found()).isNotEmpty();
        try (var asked = MDC.putCloseable("asked", word)) {
            LOG.info("Found nobody");
        }
        assertThat(Canaries.found()).isNotEmpty();
    }

    @Test
    void areFoundInAnAnswerHoweverItIsWritten() throws Exception {
        var word = Canaries.ABROAD.getFirst();
        var halves = List.of("<td>" + word.substring(0, 5), word.substring(5) + "</td>");
        assertThat(foundIn(answer -> {
                    for (var half : halves) {
                        answer.getOutputStream().write(half.getBytes(StandardCharsets.UTF_8));
                    }
                }))
                .containsExactly(word + " in answer of /somewhere");
        assertThat(foundIn(answer -> answer.getWriter().print(word.toUpperCase(Locale.ROOT))))
                .hasSize(1);
        assertThat(foundIn(answer -> answer.setHeader("Location", "/find?name=" + word)))
                .containsExactly(word + " in header Location of /somewhere");
        assertThat(foundIn(answer -> answer.getWriter().print("nobody"))).isEmpty();
    }

    @Test
    void areFoundByTheBrowserInWhateverArrives() {
        var person = Browser.person(port, Screen.DESKTOP);
        person.page()
                .route(
                        "**/leak",
                        route -> route.fulfill(
                                new Route.FulfillOptions().setStatus(404).setBody(Canaries.ABROAD.getLast())));
        person.open("leak");
        assertThatThrownBy(person::close)
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining(Canaries.ABROAD.getLast());
    }

    private interface Answering {
        void write(HttpServletResponse answer) throws IOException;
    }

    private static List<String> foundIn(Answering answering) throws ServletException, IOException {
        FilterChain house = (request, answer) -> answering.write((HttpServletResponse) answer);
        new CanaryFilter()
                .doFilter(new MockHttpServletRequest("GET", "/somewhere"), new MockHttpServletResponse(), house);
        return Canaries.found();
    }
}
