package org.espalier.film.internal.dicom;

import java.util.Locale;
import java.util.Optional;

/**
 * The tag of a data element.
 *
 * @param value group in the upper, element in the lower 16 bits
 */
public record Tag(int value) implements Comparable<Tag> {

    public static final Tag TRANSFER_SYNTAX_UID = new Tag(0x00020010);
    public static final Tag SPECIFIC_CHARACTER_SET = new Tag(0x00080005);
    public static final Tag SOP_CLASS_UID = new Tag(0x00080016);
    public static final Tag SOP_INSTANCE_UID = new Tag(0x00080018);
    public static final Tag STUDY_DATE = new Tag(0x00080020);
    public static final Tag ACQUISITION_DATE = new Tag(0x00080022);
    public static final Tag CONTENT_DATE = new Tag(0x00080023);
    public static final Tag STUDY_TIME = new Tag(0x00080030);
    public static final Tag ACCESSION_NUMBER = new Tag(0x00080050);
    public static final Tag MODALITY = new Tag(0x00080060);
    public static final Tag STUDY_DESCRIPTION = new Tag(0x00081030);
    public static final Tag SERIES_DESCRIPTION = new Tag(0x0008103E);
    public static final Tag PATIENT_NAME = new Tag(0x00100010);
    public static final Tag PATIENT_ID = new Tag(0x00100020);
    public static final Tag PATIENT_BIRTH_DATE = new Tag(0x00100030);
    public static final Tag PATIENT_SEX = new Tag(0x00100040);
    public static final Tag BODY_PART_EXAMINED = new Tag(0x00180015);
    public static final Tag MAGNIFICATION_FACTOR = new Tag(0x00181114);
    public static final Tag IMAGER_PIXEL_SPACING = new Tag(0x00181164);
    public static final Tag NOMINAL_SCANNED_PIXEL_SPACING = new Tag(0x00182010);
    public static final Tag VIEW_POSITION = new Tag(0x00185101);
    public static final Tag STUDY_INSTANCE_UID = new Tag(0x0020000D);
    public static final Tag SERIES_INSTANCE_UID = new Tag(0x0020000E);
    public static final Tag INSTANCE_NUMBER = new Tag(0x00200013);
    public static final Tag IMAGE_LATERALITY = new Tag(0x00200062);
    public static final Tag SAMPLES_PER_PIXEL = new Tag(0x00280002);
    public static final Tag PHOTOMETRIC_INTERPRETATION = new Tag(0x00280004);
    public static final Tag PLANAR_CONFIGURATION = new Tag(0x00280006);
    public static final Tag NUMBER_OF_FRAMES = new Tag(0x00280008);
    public static final Tag ROWS = new Tag(0x00280010);
    public static final Tag COLUMNS = new Tag(0x00280011);
    public static final Tag PIXEL_SPACING = new Tag(0x00280030);
    public static final Tag BITS_ALLOCATED = new Tag(0x00280100);
    public static final Tag BITS_STORED = new Tag(0x00280101);
    public static final Tag HIGH_BIT = new Tag(0x00280102);
    public static final Tag PIXEL_REPRESENTATION = new Tag(0x00280103);
    public static final Tag PIXEL_SPACING_CALIBRATION_TYPE = new Tag(0x00280A02);
    public static final Tag WINDOW_CENTER = new Tag(0x00281050);
    public static final Tag WINDOW_WIDTH = new Tag(0x00281051);
    public static final Tag RESCALE_INTERCEPT = new Tag(0x00281052);
    public static final Tag RESCALE_SLOPE = new Tag(0x00281053);
    public static final Tag WINDOW_EXPLANATION = new Tag(0x00281055);
    public static final Tag VOI_LUT_FUNCTION = new Tag(0x00281056);
    public static final Tag RED_PALETTE_DESCRIPTOR = new Tag(0x00281101);
    public static final Tag GREEN_PALETTE_DESCRIPTOR = new Tag(0x00281102);
    public static final Tag BLUE_PALETTE_DESCRIPTOR = new Tag(0x00281103);
    public static final Tag RED_PALETTE = new Tag(0x00281201);
    public static final Tag GREEN_PALETTE = new Tag(0x00281202);
    public static final Tag BLUE_PALETTE = new Tag(0x00281203);
    public static final Tag MODALITY_LUT_SEQUENCE = new Tag(0x00283000);
    public static final Tag LUT_DESCRIPTOR = new Tag(0x00283002);
    public static final Tag LUT_EXPLANATION = new Tag(0x00283003);
    public static final Tag LUT_DATA = new Tag(0x00283006);
    public static final Tag VOI_LUT_SEQUENCE = new Tag(0x00283010);
    public static final Tag PIXEL_DATA = new Tag(0x7FE00010);

    static final Tag ITEM = new Tag(0xFFFEE000);
    static final Tag ITEM_END = new Tag(0xFFFEE00D);
    static final Tag SEQUENCE_END = new Tag(0xFFFEE0DD);

    /** The keyword in PS3.6; empty for private and unknown tags. */
    public Optional<String> keyword() {
        return DataElements.keyword(this);
    }

    public int group() {
        return value >>> 16;
    }

    public int element() {
        return value & 0xFFFF;
    }

    public boolean isPrivate() {
        return (group() & 1) == 1;
    }

    /** Eight hexadecimal digits, as in DICOM JSON (PS3.18 annex F). */
    public String toHex() {
        return String.format(Locale.ROOT, "%08X", value);
    }

    @Override
    public int compareTo(Tag other) {
        return Integer.compareUnsigned(value, other.value);
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "(%04X,%04X)", group(), element());
    }
}
