package org.espalier.film;

import java.util.Locale;
import org.espalier.film.internal.dicom.Window;

/**
 * Which values of a film are shown between black and white (PS3.3 section C.11.2).
 *
 * @param c centre, in values after the film's own modality step
 * @param w width
 * @param fn {@code linear}, {@code linear-exact} or {@code sigmoid}
 * @param name what the sender or the house calls it
 */
public record FilmWindow(double c, double w, String fn, String name) {

    static FilmWindow of(Window window, String name) {
        return new FilmWindow(window.center(), window.width(), word(window.function()), name);
    }

    Window toWindow() {
        for (var function : Window.Function.values()) {
            if (word(function).equals(fn)) {
                return new Window(c, w, function, name);
            }
        }
        throw new IllegalArgumentException("no such window function; linear, linear-exact and sigmoid are known");
    }

    private static String word(Window.Function function) {
        return function.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
