package org.espalier.access.internal;

import com.vaadin.flow.server.ServiceInitEvent;
import com.vaadin.flow.server.VaadinServiceInitListener;
import com.vaadin.flow.server.communication.IndexHtmlRequestListener;
import com.vaadin.flow.server.communication.IndexHtmlResponse;
import java.security.SecureRandom;
import java.util.Base64;
import org.springframework.stereotype.Component;

/**
 * The content security policy of the page every screen stands in. A fresh nonce lets its own inline scripts run and
 * none that found its way into a text; evaluating stays allowed because the page's engine is sent its calls as text.
 */
@Component
class ContentPolicy implements VaadinServiceInitListener, IndexHtmlRequestListener {

    private static final long serialVersionUID = 1;

    /** For every answer that is not the page: nothing in it is there to run. */
    static final String ELSEWHERE =
            "default-src 'self'; object-src 'none'; base-uri 'none'; form-action 'self';" + " frame-ancestors 'none'";

    private static final String PAGE =
            "default-src 'none'; object-src 'none'; script-src 'self' 'nonce-%s' 'unsafe-eval';"
                    + " style-src 'self' 'unsafe-inline'; img-src 'self' data: blob:; media-src 'self';"
                    + " font-src 'self' data:; connect-src 'self';"
                    + " worker-src 'self' blob:; manifest-src 'self'; form-action 'self'; base-uri 'self';"
                    + " frame-ancestors 'none'";

    private static final SecureRandom RANDOM = new SecureRandom();

    @Override
    public void serviceInit(ServiceInitEvent event) {
        event.addIndexHtmlRequestListener(this);
    }

    @Override
    public void modifyIndexHtmlResponse(IndexHtmlResponse page) {
        var bytes = new byte[18];
        RANDOM.nextBytes(bytes);
        var nonce = Base64.getEncoder().encodeToString(bytes);
        page.getDocument().select("script").attr("nonce", nonce);
        page.getVaadinResponse().setHeader("Content-Security-Policy", PAGE.formatted(nonce));
        page.getVaadinResponse().setHeader("X-Frame-Options", "DENY");
    }
}
