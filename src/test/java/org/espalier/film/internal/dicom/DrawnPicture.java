package org.espalier.film.internal.dicom;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.util.Objects;
import java.util.stream.IntStream;

/** A small picture known by formula, which files in {@code encodings} hold encoded by other programs. */
record DrawnPicture(int bits, int samplesPerPixel) {

    static final int COLUMNS = 40;
    static final int ROWS = 24;

    /** The picture that a file's name ends with: grey8, grey12, grey16 or rgb8. */
    static DrawnPicture of(String name) {
        return switch (name.substring(name.lastIndexOf('-') + 1)) {
            case "grey8" -> new DrawnPicture(8, 1);
            case "grey12" -> new DrawnPicture(12, 1);
            case "grey16" -> new DrawnPicture(16, 1);
            case "rgb8" -> new DrawnPicture(8, 3);
            default -> throw new IllegalArgumentException(name);
        };
    }

    /** The bytes of the file with this name. */
    static ByteBuffer file(String name) {
        try (InputStream file = DrawnPicture.class.getResourceAsStream("encodings/" + name + ".dcm")) {
            return ByteBuffer.wrap(Objects.requireNonNull(file, name).readAllBytes());
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    static StoredImage decoded(String name) {
        return Films.decoded(Films.good(DicomReader.read(file(name), Limits.STANDARD)));
    }

    int[] values() {
        return IntStream.range(0, COLUMNS * ROWS * samplesPerPixel)
                .map(i -> {
                    int pixel = i / samplesPerPixel;
                    return value(pixel % COLUMNS, pixel / COLUMNS, i % samplesPerPixel);
                })
                .toArray();
    }

    private int value(int x, int y, int sample) {
        int values = 1 << bits;
        if (x < 16 && y < 9) {
            return (100 + sample) % values;
        }
        return y < 18
                ? (7 * x * x + 13 * y * y + 5 * x * y + 31 * sample * x) * (1 + sample) % values
                : (40 * x + sample * 25) % values;
    }
}
