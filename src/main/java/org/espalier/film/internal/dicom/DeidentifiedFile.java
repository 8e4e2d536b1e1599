package org.espalier.film.internal.dicom;

import java.io.ByteArrayOutputStream;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A picture written anew with nothing that tells whose it is: the basic profile of PS3.15 annex E. It goes by a list of
 * what stays, not of what goes: the pixels, and numbers of how they were made and are to be shown. Each of them is read
 * as a number or as one of a few words and written from that, so that no text of the sender is carried over.
 */
public final class DeidentifiedFile {

    private static final String SECONDARY_CAPTURE = "1.2.840.10008.5.1.4.1.1.7";

    /**
     * Computed radiography, digital X-ray for presentation and processing, secondary capture, angiography, fluoroscopy.
     */
    private static final Set<String> CLASSES = Set.of(
            "1.2.840.10008.5.1.4.1.1.1",
            "1.2.840.10008.5.1.4.1.1.1.1",
            "1.2.840.10008.5.1.4.1.1.1.1.1",
            SECONDARY_CAPTURE,
            "1.2.840.10008.5.1.4.1.1.12.1",
            "1.2.840.10008.5.1.4.1.1.12.2");

    private static final Set<String> MODALITIES = Set.of("CR", "DX", "RF", "XA", "RG", "OT", "XC");
    private static final Set<String> SIDES = Set.of("R", "L", "B", "U");
    private static final Set<String> CALIBRATIONS = Set.of("GEOMETRY", "FIDUCIAL");
    private static final Set<String> FUNCTIONS = Set.of("LINEAR", "LINEAR_EXACT", "SIGMOID");

    private static final Tag CONVERSION_TYPE = new Tag(0x00080064);
    private static final Tag REFERRING_PHYSICIAN = new Tag(0x00080090);
    private static final Tag CODE_VALUE = new Tag(0x00080100);
    private static final Tag CODE_SCHEME = new Tag(0x00080102);
    private static final Tag CODE_MEANING = new Tag(0x00080104);
    private static final Tag IDENTITY_REMOVED = new Tag(0x00120062);
    private static final Tag METHOD = new Tag(0x00120063);
    private static final Tag METHOD_CODES = new Tag(0x00120064);
    private static final Tag STUDY_ID = new Tag(0x00200010);
    private static final Tag SERIES_NUMBER = new Tag(0x00200011);
    private static final Tag BURNED_IN = new Tag(0x00280301);
    private static final Tag TIMES_MODIFIED = new Tag(0x00280303);

    private final Optional<DataSet> source;
    private final boolean covered;
    private final String sopClass;
    private final String instance = DeidentifiedWriter.newUid();

    private DeidentifiedFile(Optional<DataSet> source, boolean covered) {
        this.source = source;
        this.covered = covered;
        sopClass = source.flatMap(set -> set.string(Tag.SOP_CLASS_UID))
                .filter(CLASSES::contains)
                .orElse(SECONDARY_CAPTURE);
    }

    /**
     * A grey picture.
     *
     * @param image how its samples are stored
     * @param samples in place of the image's own
     * @param covered whether something in them was covered
     */
    public static byte[] ofGrey(DataSet source, StoredImage image, short[] samples, boolean covered) {
        var file = new DeidentifiedFile(Optional.of(source), covered);
        var set = file.head();
        set.shorts(Tag.SAMPLES_PER_PIXEL, Vr.US, 1)
                .text(Tag.PHOTOMETRIC_INTERPRETATION, Vr.CS, image.photometric().name());
        file.size(set, image.columns(), image.rows());
        set.shorts(Tag.BITS_ALLOCATED, Vr.US, 16)
                .shorts(Tag.BITS_STORED, Vr.US, image.bitsStored())
                .shorts(Tag.HIGH_BIT, Vr.US, image.bitsStored() - 1)
                .shorts(Tag.PIXEL_REPRESENTATION, Vr.US, image.isSigned() ? 1 : 0);
        file.assurances(set);
        file.greys(set, image);
        return file.whole(set.words(Tag.PIXEL_DATA, samples));
    }

    /** A picture in colours; of a film its scale is kept, a photo has none. */
    public static byte[] ofColour(Optional<DataSet> source, int columns, int rows, byte[] rgb, boolean covered) {
        var file = new DeidentifiedFile(source, covered);
        var set = file.head();
        set.shorts(Tag.SAMPLES_PER_PIXEL, Vr.US, 3)
                .text(Tag.PHOTOMETRIC_INTERPRETATION, Vr.CS, "RGB")
                .shorts(Tag.PLANAR_CONFIGURATION, Vr.US, 0);
        file.size(set, columns, rows);
        set.shorts(Tag.BITS_ALLOCATED, Vr.US, 8)
                .shorts(Tag.BITS_STORED, Vr.US, 8)
                .shorts(Tag.HIGH_BIT, Vr.US, 7)
                .shorts(Tag.PIXEL_REPRESENTATION, Vr.US, 0);
        file.assurances(set);
        return file.whole(
                set.bytes(Tag.PIXEL_DATA, Vr.OW, rgb.length % 2 == 0 ? rgb : Arrays.copyOf(rgb, rgb.length + 1)));
    }

    private DeidentifiedWriter head() {
        var set = new DeidentifiedWriter()
                .text(Tag.SOP_CLASS_UID, Vr.UI, sopClass)
                .text(Tag.SOP_INSTANCE_UID, Vr.UI, instance)
                .empty(Tag.STUDY_DATE, Vr.DA)
                .empty(Tag.STUDY_TIME, Vr.TM)
                .empty(Tag.ACCESSION_NUMBER, Vr.SH)
                .text(Tag.MODALITY, Vr.CS, word(Tag.MODALITY, MODALITIES).orElse("OT"));
        if (sopClass.equals(SECONDARY_CAPTURE)) {
            set.text(CONVERSION_TYPE, Vr.CS, "WSD");
        }
        set.empty(REFERRING_PHYSICIAN, Vr.PN)
                .empty(Tag.PATIENT_NAME, Vr.PN)
                .empty(Tag.PATIENT_ID, Vr.LO)
                .empty(Tag.PATIENT_BIRTH_DATE, Vr.DA)
                .empty(Tag.PATIENT_SEX, Vr.CS)
                .text(IDENTITY_REMOVED, Vr.CS, "YES")
                .text(METHOD, Vr.LO, "PS3.15 Annex E basic profile, tags by a list of what stays")
                .sequence(METHOD_CODES, methods());
        numbers(set, Tag.MAGNIFICATION_FACTOR, 1);
        numbers(set, Tag.IMAGER_PIXEL_SPACING, 2);
        numbers(set, Tag.NOMINAL_SCANNED_PIXEL_SPACING, 2);
        set.text(Tag.STUDY_INSTANCE_UID, Vr.UI, DeidentifiedWriter.newUid())
                .text(Tag.SERIES_INSTANCE_UID, Vr.UI, DeidentifiedWriter.newUid())
                .empty(STUDY_ID, Vr.SH)
                .empty(SERIES_NUMBER, Vr.IS)
                .text(Tag.INSTANCE_NUMBER, Vr.IS, "1");
        word(Tag.IMAGE_LATERALITY, SIDES).ifPresent(side -> set.text(Tag.IMAGE_LATERALITY, Vr.CS, side));
        return set;
    }

    private DeidentifiedWriter[] methods() {
        var basic = code("113100", "Basic Application Confidentiality Profile");
        return covered
                ? new DeidentifiedWriter[] {basic, code("113101", "Clean Pixel Data Option")}
                : new DeidentifiedWriter[] {basic};
    }

    private static DeidentifiedWriter code(String value, String meaning) {
        return new DeidentifiedWriter()
                .text(CODE_VALUE, Vr.SH, value)
                .text(CODE_SCHEME, Vr.SH, "DCM")
                .text(CODE_MEANING, Vr.LO, meaning);
    }

    private void size(DeidentifiedWriter set, int columns, int rows) {
        set.shorts(Tag.ROWS, Vr.US, rows).shorts(Tag.COLUMNS, Vr.US, columns);
        numbers(set, Tag.PIXEL_SPACING, 2);
    }

    private void assurances(DeidentifiedWriter set) {
        set.text(BURNED_IN, Vr.CS, "NO").text(TIMES_MODIFIED, Vr.CS, "REMOVED");
        word(Tag.PIXEL_SPACING_CALIBRATION_TYPE, CALIBRATIONS)
                .ifPresent(type -> set.text(Tag.PIXEL_SPACING_CALIBRATION_TYPE, Vr.CS, type));
    }

    private void greys(DeidentifiedWriter set, StoredImage image) {
        var windows = source.map(Window::of).orElse(List.of());
        if (!windows.isEmpty()) {
            set.text(Tag.WINDOW_CENTER, Vr.DS, decimal(windows.getFirst().center()))
                    .text(Tag.WINDOW_WIDTH, Vr.DS, decimal(windows.getFirst().width()));
        }
        numbers(set, Tag.RESCALE_INTERCEPT, 1);
        numbers(set, Tag.RESCALE_SLOPE, 1);
        word(Tag.VOI_LUT_FUNCTION, FUNCTIONS).ifPresent(word -> set.text(Tag.VOI_LUT_FUNCTION, Vr.CS, word));
        table(set, Tag.MODALITY_LUT_SEQUENCE, image.isSigned());
        if (windows.isEmpty()) {
            table(set, Tag.VOI_LUT_SEQUENCE, image.isSigned());
        }
    }

    private void table(DeidentifiedWriter set, Tag tag, boolean signed) {
        source.map(from -> from.items(tag)).orElse(List.of()).stream()
                .findFirst()
                .flatMap(item -> LookUpTable.of(item, Tag.LUT_DESCRIPTOR, Tag.LUT_DATA, signed))
                .ifPresent(table -> set.sequence(
                        tag,
                        new DeidentifiedWriter()
                                .shorts(Tag.LUT_DESCRIPTOR, signed ? Vr.SS : Vr.US, table.descriptor())
                                .shorts(Tag.LUT_DATA, Vr.OW, table.data())));
    }

    private void numbers(DeidentifiedWriter set, Tag tag, int count) {
        var values = source.map(from -> from.decimals(tag)).orElse(List.of());
        if (values.size() == count) {
            set.text(
                    tag,
                    Vr.DS,
                    String.join(
                            "\\", values.stream().map(DeidentifiedFile::decimal).toList()));
        }
    }

    private Optional<String> word(Tag tag, Set<String> known) {
        return source.flatMap(from -> from.string(tag)).filter(known::contains);
    }

    /** To eight digits, at most 16 characters (PS3.5 section 6.2). */
    private static String decimal(double value) {
        return new BigDecimal(value, new MathContext(8)).stripTrailingZeros().toString();
    }

    private byte[] whole(DeidentifiedWriter set) {
        var meta = new DeidentifiedWriter()
                .bytes(new Tag(0x00020001), Vr.OB, new byte[] {0, 1})
                .text(new Tag(0x00020002), Vr.UI, sopClass)
                .text(new Tag(0x00020003), Vr.UI, instance)
                .text(Tag.TRANSFER_SYNTAX_UID, Vr.UI, TransferSyntax.EXPLICIT_LITTLE_ENDIAN.uid())
                .text(new Tag(0x00020012), Vr.UI, "2.25.320268155331450498237180266461052518431")
                .toBytes();
        var length = new DeidentifiedWriter()
                .bytes(new Tag(0x00020000), Vr.UL, new byte[] {(byte) meta.length, (byte) (meta.length >> 8), 0, 0});
        var content = set.toBytes();
        var file = new ByteArrayOutputStream(132 + 12 + meta.length + content.length);
        file.writeBytes(new byte[128]);
        file.writeBytes("DICM".getBytes(StandardCharsets.US_ASCII));
        file.writeBytes(length.toBytes());
        file.writeBytes(meta);
        file.writeBytes(content);
        return file.toByteArray();
    }
}
