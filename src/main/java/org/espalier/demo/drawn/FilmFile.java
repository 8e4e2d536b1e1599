package org.espalier.demo.drawn;

import java.io.IOException;
import java.io.OutputStream;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.UUID;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import org.espalier.science.quantity.Side;

/** A drawn film as a DICOM file: digital X-ray, 12 of 16 bits, said to be drawn in three places. */
public final class FilmFile {

    private static final String DIGITAL_XRAY_FOR_PRESENTATION = "1.2.840.10008.5.1.4.1.1.1.1";
    private static final String COMMENT =
            "Drawn by a program from invented geometry. Not a patient, not for diagnosis.";

    private final DrawnFilm film;
    private final DrawnLabel label;
    private final FilmEncoding encoding;

    /** In explicit little endian. */
    public FilmFile(DrawnFilm film, DrawnLabel label) {
        this(film, label, FilmEncoding.EXPLICIT);
    }

    public FilmFile(DrawnFilm film, DrawnLabel label, FilmEncoding encoding) {
        this.film = film;
        this.label = label;
        this.encoding = encoding;
    }

    /** The UID this film has, today and tomorrow. */
    public String instanceUid() {
        return uid("instance");
    }

    /** Writes preamble, header and pixels; the stream stays open. */
    public void writeTo(OutputStream out) throws IOException {
        ElementWriter meta = new ElementWriter(true);
        meta.bytes(0x00020001, "OB", new byte[] {0, 1});
        meta.text(0x00020002, "UI", DIGITAL_XRAY_FOR_PRESENTATION);
        meta.text(0x00020003, "UI", instanceUid());
        meta.text(0x00020010, "UI", encoding.uid());
        meta.text(0x00020012, "UI", uid("implementation"));
        ElementWriter length = new ElementWriter(true);
        length.uint32(0x00020000, meta.size());
        out.write(new byte[128]);
        out.write("DICM".getBytes(StandardCharsets.US_ASCII));
        length.writeTo(out);
        meta.writeTo(out);
        ElementWriter set = new ElementWriter(encoding != FilmEncoding.IMPLICIT);
        identity(set);
        acquisition(set);
        image(set);
        if (encoding == FilmEncoding.DEFLATED) {
            deflate(set, out);
        } else {
            set.writeTo(out);
        }
    }

    private static void deflate(ElementWriter set, OutputStream out) throws IOException {
        Deflater deflater = new Deflater(Deflater.BEST_SPEED, true);
        try {
            DeflaterOutputStream deflated = new DeflaterOutputStream(out, deflater);
            set.writeTo(deflated);
            deflated.finish();
        } finally {
            deflater.end();
        }
    }

    private void identity(ElementWriter set) {
        String day = day(label.takenOn());
        set.text(0x00080005, "CS", "ISO_IR 192");
        set.text(0x00080008, "CS", "DERIVED\\PRIMARY");
        set.text(0x00080016, "UI", DIGITAL_XRAY_FOR_PRESENTATION);
        set.text(0x00080018, "UI", instanceUid());
        set.text(0x00080020, "DA", day);
        set.text(0x00080021, "DA", day);
        set.text(0x00080023, "DA", day);
        set.text(0x00080030, "TM", "100000");
        set.text(0x00080033, "TM", "100000");
        set.text(0x00080050, "SH", "");
        set.text(0x00080060, "CS", "DX");
        set.text(0x00080068, "CS", "FOR PRESENTATION");
        set.text(0x00080070, "LO", "None: drawn by a program");
        set.text(0x00080080, "LO", label.institution());
        set.text(0x00080090, "PN", "");
        set.text(0x00081030, "LO", title("standing"));
        set.text(0x0008103E, "LO", title("AP standing"));
        set.text(0x00100010, "PN", label.familyName() + "^" + label.givenName());
        set.text(0x00100020, "LO", label.patientId());
        set.text(0x00100030, "DA", day(label.birthDate()));
        set.text(0x00100040, "CS", label.sex());
    }

    private void acquisition(ElementWriter set) {
        set.text(0x00180015, "CS", "LEG");
        set.text(0x00181110, "DS", "3000");
        set.text(0x00181114, "DS", number(film.boneMagnification()));
        double pixel = film.detectorPixel().millimetres();
        set.text(0x00181164, "DS", number(pixel) + "\\" + number(pixel));
        set.text(0x00185101, "CS", "AP");
        set.text(0x0020000D, "UI", uid("study"));
        set.text(0x0020000E, "UI", uid("series"));
        set.text(0x00200010, "SH", day(label.takenOn()));
        set.text(0x00200011, "IS", "1");
        set.text(0x00200013, "IS", "1");
        set.text(0x00200020, "CS", "L\\F");
        set.text(0x00200062, "CS", film.shown().map(Side::letter).orElse("B"));
        set.text(0x00204000, "LT", COMMENT);
    }

    private void image(ElementWriter set) {
        set.uint16(0x00280002, 1);
        set.text(0x00280004, "CS", "MONOCHROME2");
        set.uint16(0x00280010, film.height());
        set.uint16(0x00280011, film.width());
        if (label.spacing() == DrawnLabel.Spacing.FIDUCIAL) {
            String pixel = number(film.bonePixel().millimetres());
            set.text(0x00280030, "DS", pixel + "\\" + pixel);
        }
        set.uint16(0x00280100, 16);
        set.uint16(0x00280101, 12);
        set.uint16(0x00280102, 11);
        set.uint16(0x00280103, 0);
        set.text(0x00280301, "CS", "YES");
        if (label.spacing() == DrawnLabel.Spacing.FIDUCIAL) {
            set.text(0x00280A02, "CS", "FIDUCIAL");
            set.text(
                    0x00280A04, "LO", "Ball of " + number(film.ball().diameter().millimetres()) + " mm");
        }
        set.text(0x00281040, "CS", "LOG");
        set.bytes(0x00281041, "SS", new byte[] {1, 0});
        set.text(0x00281050, "DS", Integer.toString(film.windowCentre()));
        set.text(0x00281051, "DS", Integer.toString(film.windowWidth()));
        set.text(0x00281052, "DS", "0");
        set.text(0x00281053, "DS", "1");
        set.text(0x00281054, "LO", "US");
        set.text(0x00282110, "CS", "00");
        set.text(0x20500020, "CS", "IDENTITY");
        if (encoding == FilmEncoding.RUN_LENGTH) {
            set.encapsulated(0x7FE00010, RunLength.encode(film.stored(), film.width()));
        } else {
            set.words(0x7FE00010, film.stored());
        }
    }

    private String title(String standing) {
        return legs() + (film.contrast() ? " arthrogram (drawn)" : " " + standing + " (drawn)");
    }

    private String legs() {
        return film.shown()
                .map(side -> side == Side.RIGHT ? "Right leg" : "Left leg")
                .orElse("Both legs");
    }

    private String uid(String level) {
        UUID uuid = UUID.nameUUIDFromBytes(label.key(level, title("")).getBytes(StandardCharsets.UTF_8));
        BigInteger number = new BigInteger(uuid.toString().replace("-", ""), 16);
        return "2.25." + number;
    }

    private static String day(LocalDate date) {
        return date.format(DateTimeFormatter.BASIC_ISO_DATE);
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.6f", value).replaceAll("0+$", "").replaceAll("\\.$", "");
    }
}
