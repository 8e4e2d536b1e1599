package org.espalier.film.internal.dicom;

import java.util.Optional;

/** What the samples of a decoded picture mean (PS3.3 section C.7.6.3.1.2). */
public enum Photometric {
    /** Grey, the lowest value white. */
    MONOCHROME1(1),
    /** Grey, the lowest value black. */
    MONOCHROME2(1),
    /** Numbers of colours in a palette. */
    PALETTE_COLOR(1),
    /** Red, green, blue. */
    RGB(3),
    /** Luminance and two colour differences, each at every pixel. */
    YBR_FULL(3);

    private final int samples;

    Photometric(int samples) {
        this.samples = samples;
    }

    int samples() {
        return samples;
    }

    public boolean isGrey() {
        return this == MONOCHROME1 || this == MONOCHROME2;
    }

    /** What remains of a declared interpretation once the code stream is decoded and colours are at every pixel. */
    static Optional<Photometric> ofDecoded(String declared) {
        return Optional.ofNullable(
                switch (declared) {
                    case "MONOCHROME1" -> MONOCHROME1;
                    case "MONOCHROME2" -> MONOCHROME2;
                    case "PALETTE COLOR" -> PALETTE_COLOR;
                    case "RGB", "YBR_ICT", "YBR_RCT" -> RGB;
                    case "YBR_FULL", "YBR_FULL_422" -> YBR_FULL;
                    default -> null;
                });
    }
}
