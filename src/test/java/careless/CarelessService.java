package careless;

import com.vaadin.flow.component.html.Div;
import java.time.Instant;
import org.springframework.stereotype.Service;

/**
 * Breaks the rules of services: knows a screen, stands nowhere, cannot be guarded, takes the time and writes as it
 * likes.
 */
@Service
class CarelessService {

    private final Div screen = new Div();

    public final Div screen() {
        System.out.println(Instant.now());
        return screen;
    }
}
