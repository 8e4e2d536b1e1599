package org.espalier.film.internal.dicom;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * From stored values to grey, in the order of the standard: modality table or slope and intercept (PS3.3 section
 * C.11.1), then window or table of interest (C.11.2), then inversion for MONOCHROME1 (C.7.6.3.1.2).
 */
public final class GreyTransform {

    private static final int PATTERNS = 1 << 16;

    private final boolean signed;
    private final boolean inverted;
    private final Optional<LookUpTable> modality;
    private final double slope;
    private final double intercept;
    private final List<Voi> presets;

    private GreyTransform(DataSet dataSet, boolean signed, boolean inverted) {
        this.signed = signed;
        this.inverted = inverted;
        this.modality = dataSet.items(Tag.MODALITY_LUT_SEQUENCE).stream()
                .findFirst()
                .flatMap(item -> LookUpTable.of(item, Tag.LUT_DESCRIPTOR, Tag.LUT_DATA, signed));
        double declaredSlope = first(dataSet, Tag.RESCALE_SLOPE, 1);
        this.slope = declaredSlope == 0 ? 1 : declaredSlope;
        this.intercept = first(dataSet, Tag.RESCALE_INTERCEPT, 0);
        this.presets = presets(dataSet);
    }

    /** The transform of a grey image; empty for colours. */
    public static Optional<GreyTransform> of(DataSet dataSet, StoredImage image) {
        return image.photometric().isGrey()
                ? Optional.of(
                        new GreyTransform(dataSet, image.isSigned(), image.photometric() == Photometric.MONOCHROME1))
                : Optional.empty();
    }

    /** The transform of a grey image, from its tags alone; empty for colours. */
    public static Optional<GreyTransform> of(DataSet dataSet) {
        return dataSet.string(Tag.PHOTOMETRIC_INTERPRETATION)
                .flatMap(Photometric::ofDecoded)
                .filter(Photometric::isGrey)
                .map(photometric -> new GreyTransform(
                        dataSet,
                        dataSet.integer(Tag.PIXEL_REPRESENTATION).orElse(0) == 1,
                        photometric == Photometric.MONOCHROME1));
    }

    /** The windows and tables the sender proposes, windows first; may be empty. */
    public List<Voi> presets() {
        return presets;
    }

    /** The sender's first proposal, else a window over all values of the image. */
    public Voi standard(StoredImage image) {
        return presets.isEmpty() ? spanning(image) : presets.getFirst();
    }

    /** A window over all values of the image. */
    public Window spanning(StoredImage image) {
        double least = Double.POSITIVE_INFINITY;
        double greatest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < image.samples().length; i++) {
            double value = value(image.value(i));
            least = Math.min(least, value);
            greatest = Math.max(greatest, value);
        }
        return Window.spanning(least, greatest);
    }

    /** The value after the modality step. */
    public double value(int stored) {
        return modality.isPresent() ? modality.get().entry(stored) : stored * slope + intercept;
    }

    /** Grey 0 to 255 for each bit pattern of a sample: {@code table[sample & 0xFFFF]}. */
    public byte[] table(Voi voi) {
        byte[] table = new byte[PATTERNS];
        for (int pattern = 0; pattern < PATTERNS; pattern++) {
            double light = voi.light(value(signed ? (short) pattern : pattern));
            table[pattern] = (byte) Math.round(255 * (inverted ? 1 - light : light));
        }
        return table;
    }

    private List<Voi> presets(DataSet dataSet) {
        boolean tableSigned = modality.isEmpty() && (signed || intercept < 0);
        List<Voi> all = new ArrayList<>(Window.of(dataSet));
        all.addAll(VoiTable.of(dataSet, tableSigned));
        return List.copyOf(all);
    }

    private static double first(DataSet dataSet, Tag tag, double otherwise) {
        return dataSet.decimals(tag).stream().findFirst().orElse(otherwise);
    }
}
