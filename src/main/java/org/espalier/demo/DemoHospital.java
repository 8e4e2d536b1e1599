package org.espalier.demo;

import java.time.ZoneId;
import org.espalier.demo.drawn.DrawnLabel;
import org.espalier.demo.drawn.FilmEncoding;

/** The three hospitals of the demonstration, in the invented country of Torvalen. */
enum DemoHospital {
    HARBOUR(
            "HARB",
            "Skerrin Harbour Children's Hospital (invented)",
            "Quay Road 5, Skerrin (invented)",
            "000 555 0001",
            "Etc/GMT-1",
            DrawnLabel.Spacing.DETECTOR,
            FilmEncoding.EXPLICIT,
            1.05),
    VALLEY(
            "VALL",
            "Ysterdal Valley Hospital (invented)",
            "Mill Lane 12, Ysterdal (invented)",
            "000 555 0002",
            "Etc/GMT-2",
            DrawnLabel.Spacing.FIDUCIAL,
            FilmEncoding.DEFLATED,
            1.06),
    MOOR(
            "MOOR",
            "Brakkelund Moor Clinic (invented)",
            "Heather Way 3, Brakkelund (invented)",
            "000 555 0003",
            "Etc/GMT-1",
            DrawnLabel.Spacing.DETECTOR,
            FilmEncoding.RUN_LENGTH,
            1.07);

    private final String code;
    private final String title;
    private final String address;
    private final String phone;
    private final String zone;
    private final DrawnLabel.Spacing spacing;
    private final FilmEncoding encoding;
    private final double magnification;

    DemoHospital(
            String code,
            String title,
            String address,
            String phone,
            String zone,
            DrawnLabel.Spacing spacing,
            FilmEncoding encoding,
            double magnification) {
        this.code = code;
        this.title = title;
        this.address = address;
        this.phone = phone;
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

    String address() {
        return address;
    }

    /** Nobody's number. */
    String phone() {
        return phone;
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
