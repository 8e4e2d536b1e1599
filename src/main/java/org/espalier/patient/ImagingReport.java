package org.espalier.patient;

import java.time.LocalDate;
import org.espalier.science.quantity.Angle;
import org.jspecify.annotations.Nullable;

/**
 * A report of a picture in layers, with the values that a plan hangs on. Each is null when the report does not give it.
 *
 * @param on the day of the picture
 * @param barShare of the growth plate's area that the bar takes, above 0 to 100 %; only with a bar
 * @param femoralTorsion positive with the neck forward of the condyles, −40 to 90 degrees
 * @param tibialTorsion positive outward, −60 to 90 degrees
 * @param reportedBy who read the picture
 * @param report in the words of the report
 */
public record ImagingReport(
        LocalDate on,
        Modality modality,
        AffectedSides sides,
        @Nullable Bar bar,
        @Nullable Integer barShare,
        @Nullable Angle femoralTorsion,
        @Nullable Angle tibialTorsion,
        String reportedBy,
        @Nullable String report)
        implements Finding {

    /** How the picture was made. */
    public enum Modality {
        MAGNETIC_RESONANCE,
        COMPUTED_TOMOGRAPHY
    }

    /** What crosses the growth plate. */
    public enum Bar {
        NONE,
        BONY,
        FIBROCARTILAGINOUS
    }

    /** The longest name and the longest report that are kept. */
    public static final int NAME_LENGTH = 120;

    public static final int REPORT_LENGTH = 4000;

    private static final int WHOLE = 100;

    /** Limits of torsion in degrees. */
    public static final int LEAST_FEMORAL = -40;

    public static final int LEAST_TIBIAL = -60;
    public static final int GREATEST_TORSION = 90;

    public ImagingReport {
        reportedBy = reportedBy.strip();
        report = report == null || report.isBlank() ? null : report.strip();
        if (reportedBy.isEmpty() || reportedBy.length() > NAME_LENGTH) {
            throw new IllegalArgumentException(
                    "A report names who read the picture, in " + NAME_LENGTH + " characters");
        }
        if (report != null && report.length() > REPORT_LENGTH) {
            throw new IllegalArgumentException("Longer than " + REPORT_LENGTH + " characters");
        }
        if (barShare != null && (bar == null || bar == Bar.NONE || barShare < 1 || barShare > WHOLE)) {
            throw new IllegalArgumentException("A bar takes 1 to 100 % of the growth plate, not " + barShare);
        }
        demand(femoralTorsion, LEAST_FEMORAL);
        demand(tibialTorsion, LEAST_TIBIAL);
    }

    private static void demand(@Nullable Angle torsion, int least) {
        if (torsion != null && (torsion.degrees() < least || torsion.degrees() > GREATEST_TORSION)) {
            throw new IllegalArgumentException(
                    "A torsion lies between " + least + " and 90 degrees, not at " + torsion);
        }
    }
}
