package org.espalier.film;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.espalier.science.quantity.PixelScale;
import org.jspecify.annotations.Nullable;

/**
 * What the film room must know to show a film.
 *
 * @param levels how many halvings there are besides the full size
 * @param minValue the least value, in the values windows are given in
 * @param maxValue the greatest value
 * @param calibration how lengths come about on this film, in words
 * @param grey whether windows have an effect
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record FilmInfo(
        int width,
        int height,
        int tileSize,
        int levels,
        List<FilmWindow> windows,
        double minValue,
        double maxValue,
        String calibration,
        Scale scale,
        boolean grey) {

    /**
     * The film's own millimetres.
     *
     * @param mmPerPxX null when the film says nothing usable
     * @param mmPerPxY null when the film says nothing usable
     * @param magnification the sender's estimate; null when it gave none
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record Scale(
            ScaleSource source,
            @Nullable Double mmPerPxX,
            @Nullable Double mmPerPxY,
            @Nullable Double magnification) {

        static Scale of(FilmScale scale) {
            return new Scale(
                    scale.source(),
                    scale.size().map(PixelScale::millimetresPerPixelX).orElse(null),
                    scale.size().map(PixelScale::millimetresPerPixelY).orElse(null),
                    scale.magnification().orElse(null));
        }
    }
}
