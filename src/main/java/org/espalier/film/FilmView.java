package org.espalier.film;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.espalier.film.tiles.Pyramid;
import org.espalier.film.tiles.Region;
import org.jspecify.annotations.Nullable;

/**
 * What of a film is wanted, and how (PS3.18 section 8.3.5.1).
 *
 * @param width at most so many pixels across
 * @param height at most so many pixels down
 * @param part left, top, width and height in pixels of the film; empty for the whole film
 * @param window empty for the sender's first proposal
 * @param quality of the JPEG, 1 to 100
 */
public record FilmView(int width, int height, List<Double> part, Optional<FilmWindow> window, int quality) {

    private static final int QUALITY = 85;
    private static final int THUMBNAIL = 256;
    private static final int SIZES = 2;
    private static final int SIZES_AND_PART = 6;
    private static final int WINDOW_PARTS = 3;

    public FilmView {
        if (quality < 1 || quality > 100) {
            throw new IllegalArgumentException("a quality of " + quality + "; 1 to 100 are known");
        }
        if (Math.min(width, height) < 1 || Math.max(width, height) > Region.LARGEST_VIEW) {
            throw new IllegalArgumentException("a view of " + width + " x " + height + " pixels; 1 to "
                    + Region.LARGEST_VIEW + " each way are drawn");
        }
        window.ifPresent(FilmWindow::toWindow);
        part = List.copyOf(part);
    }

    /** The whole film, small. */
    public static FilmView thumbnail() {
        return new FilmView(THUMBNAIL, THUMBNAIL, List.of(), Optional.empty(), QUALITY);
    }

    /**
     * Reads the parameters of a request.
     *
     * @param viewport {@code vw,vh} or {@code vw,vh,sx,sy,sw,sh}; null for the whole film as large as it is drawn
     * @param window {@code centre,width,function}; null for the sender's first proposal
     * @param quality null for the usual one
     * @throws IllegalArgumentException if one of them is not of its form
     */
    public static FilmView of(@Nullable String viewport, @Nullable String window, @Nullable Integer quality) {
        var numbers = viewport == null
                ? List.of((double) Region.LARGEST_VIEW, (double) Region.LARGEST_VIEW)
                : numbers(viewport.split(",", -1), "viewport");
        if (numbers.size() != SIZES && numbers.size() != SIZES_AND_PART) {
            throw new IllegalArgumentException("a viewport has 2 or 6 numbers");
        }
        return new FilmView(
                numbers.get(0).intValue(),
                numbers.get(1).intValue(),
                numbers.subList(SIZES, numbers.size()),
                Optional.ofNullable(window).map(FilmView::window),
                quality == null ? QUALITY : quality);
    }

    private static FilmWindow window(String text) {
        var parts = text.split(",", -1);
        if (parts.length != WINDOW_PARTS) {
            throw new IllegalArgumentException("a window has a centre, a width and a function");
        }
        var numbers = numbers(Arrays.copyOf(parts, SIZES), "window");
        return new FilmWindow(numbers.get(0), numbers.get(1), parts[SIZES], "");
    }

    private static List<Double> numbers(String[] texts, String what) {
        try {
            return Arrays.stream(texts).map(Double::valueOf).toList();
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("the " + what + " has a part that is no number", e);
        }
    }

    /** A whole film is made smaller where it must be, and never larger. */
    Region region(Pyramid pyramid) {
        return part.isEmpty()
                ? Region.whole(pyramid, Math.min(width, pyramid.width()), Math.min(height, pyramid.height()))
                : new Region(width, height, part.get(0), part.get(1), part.get(2), part.get(3));
    }
}
