package org.espalier.film.internal.dicom;

import java.util.Optional;

/**
 * A picture in colours of 8 bits.
 *
 * @param columns pixels in a row
 * @param rows rows
 * @param rgb red, green, blue of each pixel, row by row; not a copy
 */
@SuppressWarnings("ArrayRecordComponent") // one owner, never compared
public record ColourImage(int columns, int rows, byte[] rgb) {

    /** The colours of an image (PS3.3 section C.7.6.3.1.2); empty for grey ones and for palettes that are missing. */
    public static Optional<ColourImage> of(DataSet dataSet, StoredImage image) {
        return switch (image.photometric()) {
            case RGB -> Optional.of(new ColourImage(image.columns(), image.rows(), rgb(image)));
            case YBR_FULL -> Optional.of(new ColourImage(image.columns(), image.rows(), ybr(image)));
            case PALETTE_COLOR -> palette(dataSet, image);
            case MONOCHROME1, MONOCHROME2 -> Optional.empty();
        };
    }

    private static byte[] rgb(StoredImage image) {
        double scale = scale(image);
        byte[] rgb = new byte[image.samples().length];
        for (int i = 0; i < rgb.length; i++) {
            rgb[i] = toByte(image.value(i) * scale);
        }
        return rgb;
    }

    /** The inverse of the equations of section C.7.6.3.1.2 for YBR_FULL. */
    private static byte[] ybr(StoredImage image) {
        double scale = scale(image);
        byte[] rgb = new byte[image.samples().length];
        for (int i = 0; i < rgb.length; i += 3) {
            double y = image.value(i) * scale;
            double blue = image.value(i + 1) * scale - 128;
            double red = image.value(i + 2) * scale - 128;
            rgb[i] = toByte(y + 1.402 * red);
            rgb[i + 1] = toByte(y - 0.344136 * blue - 0.714136 * red);
            rgb[i + 2] = toByte(y + 1.772 * blue);
        }
        return rgb;
    }

    private static Optional<ColourImage> palette(DataSet dataSet, StoredImage image) {
        boolean signed = image.isSigned();
        var red = LookUpTable.of(dataSet, Tag.RED_PALETTE_DESCRIPTOR, Tag.RED_PALETTE, signed);
        var green = LookUpTable.of(dataSet, Tag.GREEN_PALETTE_DESCRIPTOR, Tag.GREEN_PALETTE, signed);
        var blue = LookUpTable.of(dataSet, Tag.BLUE_PALETTE_DESCRIPTOR, Tag.BLUE_PALETTE, signed);
        if (red.isEmpty() || green.isEmpty() || blue.isEmpty()) {
            return Optional.empty();
        }
        byte[] rgb = new byte[3 * image.samples().length];
        for (int i = 0; i < image.samples().length; i++) {
            int value = image.value(i);
            rgb[3 * i] = toByte(255 * red.get().part(value));
            rgb[3 * i + 1] = toByte(255 * green.get().part(value));
            rgb[3 * i + 2] = toByte(255 * blue.get().part(value));
        }
        return Optional.of(new ColourImage(image.columns(), image.rows(), rgb));
    }

    private static double scale(StoredImage image) {
        return 255.0 / ((1 << image.bitsStored()) - 1);
    }

    private static byte toByte(double value) {
        return (byte) Math.round(Math.clamp(value, 0, 255));
    }
}
