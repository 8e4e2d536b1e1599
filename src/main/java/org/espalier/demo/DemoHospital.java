package org.espalier.demo;

import java.time.ZoneId;
import org.espalier.demo.drawn.DrawnLabel;

/** The two hospitals of the demonstration, in the invented country of Torvalen. */
enum DemoHospital {
    HARBOUR("HARB", "Skerrin Harbour Children's Hospital (invented)", "Etc/GMT-1", DrawnLabel.Spacing.DETECTOR, 1.05),
    VALLEY("VALL", "Ysterdal Valley Hospital (invented)", "Etc/GMT-2", DrawnLabel.Spacing.FIDUCIAL, 1.06);

    private final String code;
    private final String title;
    private final String zone;
    private final DrawnLabel.Spacing spacing;
    private final double magnification;

    DemoHospital(String code, String title, String zone, DrawnLabel.Spacing spacing, double magnification) {
        this.code = code;
        this.title = title;
        this.zone = zone;
        this.spacing = spacing;
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

    /** How much its X-ray machine enlarges bones and ball. */
    double magnification() {
        return magnification;
    }
}
