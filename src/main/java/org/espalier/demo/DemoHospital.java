package org.espalier.demo;

import java.time.ZoneId;
import org.espalier.demo.drawn.DrawnLabel;
import org.espalier.demo.drawn.FilmEncoding;

/** The three hospitals of the demonstration, in the invented country of Torvalen. */
enum DemoHospital {
    HARBOUR(
            "HARB",
            "Skerrin Harbour Children's Hospital (invented)",
            "Etc/GMT-1",
            DrawnLabel.Spacing.DETECTOR,
            FilmEncoding.EXPLICIT,
            1.05),
    VALLEY(
            "VALL",
            "Ysterdal Valley Hospital (invented)",
            "Etc/GMT-2",
            DrawnLabel.Spacing.FIDUCIAL,
            FilmEncoding.DEFLATED,
            1.06),
    MOOR(
            "MOOR",
            "Brakkelund Moor Clinic (invented)",
            "Etc/GMT-1",
            DrawnLabel.Spacing.DETECTOR,
            FilmEncoding.RUN_LENGTH,
            1.07);

    private final String code;
    private final String title;
    private final String zone;
    private final DrawnLabel.Spacing spacing;
    private final FilmEncoding encoding;
    private final double magnification;

    DemoHospital(
            String code,
            String title,
            String zone,
            DrawnLabel.Spacing spacing,
            FilmEncoding encoding,
            double magnification) {
        this.code = code;
        this.title = title;
        this.zone = zone;
        this.spacing = spacing;
        this.encoding = encoding;
        this.magnification = magnification;
    }

    String code() {
        return code;
    }

    String title() {
        return title;
    }

    ZoneId zone() {
        return ZoneId.of(zone);
    }

    /** What its X-ray machine writes of the size of a pixel. */
    DrawnLabel.Spacing spacing() {
        return spacing;
    }

    /** How its X-ray machine writes its films. */
    FilmEncoding encoding() {
        return encoding;
    }

    /** How much its X-ray machine enlarges bones and ball. */
    double magnification() {
        return magnification;
    }
}
