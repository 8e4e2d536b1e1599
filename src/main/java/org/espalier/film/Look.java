package org.espalier.film;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.espalier.film.internal.dicom.DicomFile;
import org.espalier.film.internal.dicom.GreyTransform;
import org.espalier.film.internal.dicom.Voi;
import org.espalier.film.internal.dicom.Window;
import org.espalier.film.tiles.Pyramid;
import org.espalier.film.tiles.Shades;
import org.espalier.kit.Texts;

/**
 * How a film's values become shades.
 *
 * @param grey empty for a picture in colours, which is shown as it is
 */
record Look(Optional<GreyTransform> grey) {

    private static final int BRIGHTEST = 255;

    static final Look IN_COLOUR = new Look(Optional.empty());

    static Look of(DicomFile file) {
        return new Look(GreyTransform.of(file.dataSet()));
    }

    /**
     * The windows to choose from: the sender's, then one over all values; a picture in colours has that one, to no
     * effect.
     */
    List<FilmWindow> windows(Pyramid pyramid) {
        var windows = new ArrayList<FilmWindow>();
        if (grey.isEmpty()) {
            windows.add(FilmWindow.of(Window.spanning(0, BRIGHTEST), Texts.text("film.window.all")));
        }
        grey.ifPresent(transform -> {
            int number = 1;
            for (Voi preset : transform.presets()) {
                if (preset instanceof Window window) {
                    var name = FilmInspector.cleaned(window.explanation());
                    windows.add(FilmWindow.of(window, name.isEmpty() ? Texts.text("film.window", number) : name));
                    number++;
                }
            }
            windows.add(FilmWindow.of(spanning(transform, pyramid), Texts.text("film.window.all")));
        });
        return windows;
    }

    /** The least value of the picture, after the modality step. */
    double least(Pyramid pyramid) {
        return grey.map(transform -> spanning(transform, pyramid))
                .map(window -> window.center() - window.width() / 2)
                .orElse((double) pyramid.least());
    }

    /** The greatest value of the picture, after the modality step. */
    double greatest(Pyramid pyramid) {
        return grey.map(transform -> spanning(transform, pyramid))
                .map(window -> window.center() + window.width() / 2)
                .orElse((double) pyramid.greatest());
    }

    /** The shades through a window; through the sender's first proposal when none is chosen. */
    Shades shades(Pyramid pyramid, Optional<FilmWindow> chosen) {
        return grey.map(transform -> {
                    var voi = chosen.<Voi>map(FilmWindow::toWindow).orElseGet(() -> standard(transform, pyramid));
                    return Shades.of(transform.table(voi));
                })
                .orElse(Shades.NONE);
    }

    private static Voi standard(GreyTransform transform, Pyramid pyramid) {
        return transform.presets().isEmpty()
                ? spanning(transform, pyramid)
                : transform.presets().getFirst();
    }

    private static Window spanning(GreyTransform transform, Pyramid pyramid) {
        double one = transform.value(pyramid.least());
        double other = transform.value(pyramid.greatest());
        return Window.spanning(Math.min(one, other), Math.max(one, other));
    }
}
