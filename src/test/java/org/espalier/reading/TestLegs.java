package org.espalier.reading;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.espalier.demo.drawn.BodyProportions;
import org.espalier.demo.drawn.DrawnFilm;
import org.espalier.demo.drawn.DrawnLabel;
import org.espalier.demo.drawn.DrawnLimb;
import org.espalier.demo.drawn.FilmFile;
import org.espalier.demo.drawn.FilmOrder;
import org.espalier.science.alignment.Landmark;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.Side;

/** A drawn film of an eight-year-old: tibia vara on the right, a femur in valgus on the left; every angle known. */
record TestLegs(DrawnLimb right, DrawnLimb left, DrawnFilm film) {

    static TestLegs draw() {
        var body = BodyProportions.at(BodyProportions.Build.GIRL, Age.ofYears(8));
        var right = DrawnLimb.straight(Side.RIGHT, body).withKnee(new Angle(89), new Angle(78), new Angle(3));
        var left = DrawnLimb.straight(Side.LEFT, body).withKnee(new Angle(80), new Angle(88), new Angle(0.5));
        var sheet = FilmOrder.FilmSheet.ofPixel(new Length(0.4));
        return new TestLegs(right, left, DrawnFilm.draw(new FilmOrder(body, right, left, 1.2, sheet, 7)));
    }

    DrawnLimb limb(Side side) {
        return side == Side.RIGHT ? right : left;
    }

    /** Where a landmark truly lies. */
    PixelPoint place(Side side, Landmark landmark) {
        return film.landmarks(side).point(landmark).orElseThrow();
    }

    PixelPoint centreOfHead(Side side) {
        return place(side, Landmark.HIP_CENTRE);
    }

    /** Eight points round the edge of the femoral head. */
    List<PixelPoint> edgeOfHead(Side side) {
        var centre = centreOfHead(side);
        double radius = film.headRadius().millimetres() / film.bonePixel().millimetres();
        return IntStream.range(0, 8)
                .mapToDouble(point -> Math.toRadians(45 * point))
                .mapToObj(turn ->
                        new PixelPoint(centre.x() + radius * Math.cos(turn), centre.y() + radius * Math.sin(turn)))
                .toList();
    }

    /** The film as a machine sends it, saying what a pixel measures in the plane of the bones. */
    byte[] file(String number, LocalDate birth, LocalDate takenOn) {
        var label = new DrawnLabel(
                number, "Invented", "Child", birth, "F", takenOn, "Test hospital", DrawnLabel.Spacing.FIDUCIAL);
        var out = new ByteArrayOutputStream();
        try {
            new FilmFile(film, label).writeTo(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }
}
