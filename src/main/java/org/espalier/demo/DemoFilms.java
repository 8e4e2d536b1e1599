package org.espalier.demo;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.espalier.demo.drawn.BodyProportions;
import org.espalier.demo.drawn.DrawnFilm;
import org.espalier.demo.drawn.DrawnLabel;
import org.espalier.demo.drawn.DrawnLimb;
import org.espalier.demo.drawn.FilmFile;
import org.espalier.demo.drawn.FilmOrder;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Sex;
import org.espalier.science.quantity.Side;

/** Draws the film of a visit, the same one each time. */
final class DemoFilms {

    private static final Length FINE = new Length(0.25);
    private static final Length COARSE = new Length(0.33);
    private static final Length COPIED = new Length(1.1);
    private static final Length BALL = new Length(25);
    private static final int LARGE_CHILD_MONTHS = 84;

    private DemoFilms() {}

    /** Every film of a visit. */
    static List<DrawnFilm> draw(DemoStory story, DemoVisit visit) {
        return switch (story.filming()) {
            case BOTH_LEGS, COPIED -> List.of(both(story, visit));
            case EACH_LEG_ALONE ->
                Stream.of(Side.values())
                        .map(side -> DrawnFilm.draw(order(story, visit, Set.of(side), false)))
                        .toList();
            case ARTHROGRAM_LAST ->
                visit.equals(story.visits().getLast())
                        ? List.of(both(story, visit), arthrogram(story, visit))
                        : List.of(both(story, visit));
        };
    }

    private static DrawnFilm both(DemoStory story, DemoVisit visit) {
        return DrawnFilm.draw(order(story, visit, EnumSet.allOf(Side.class), false));
    }

    private static DrawnFilm arthrogram(DemoStory story, DemoVisit visit) {
        return DrawnFilm.draw(order(story, visit, Set.of(Side.LEFT), true));
    }

    private static FilmOrder order(DemoStory story, DemoVisit visit, Set<Side> shown, boolean contrast) {
        BodyProportions body = BodyProportions.at(
                story.sex() == Sex.FEMALE ? BodyProportions.Build.GIRL : BodyProportions.Build.BOY,
                Age.ofMonths(visit.ageMonths()));
        Length pixel = story.filming() == DemoStory.Filming.COPIED
                ? COPIED
                : visit.ageMonths() < LARGE_CHILD_MONTHS ? FINE : COARSE;
        double magnification = story.hospital().magnification();
        return new FilmOrder(
                body,
                limb(Side.RIGHT, body, visit.right(), story.build().legShare()),
                limb(Side.LEFT, body, visit.left(), story.build().legShare()),
                story.build().plump(),
                new FilmOrder.FilmSheet(pixel, magnification, magnification, BALL),
                story.number().hashCode() + visit.ageMonths(),
                shown,
                contrast);
    }

    private static DrawnLimb limb(Side side, BodyProportions body, DemoKnee knee, double share) {
        return DrawnLimb.straight(side, body)
                .withKnee(knee.mLDFA(), knee.mMPTA(), knee.jlca())
                .withLengths(new Length(body.femurMm() * share), new Length(body.tibiaMm() * share))
                .withPlates(knee.plates());
    }

    /** The film as the X-ray machine sends it. */
    static byte[] file(DrawnFilm film, DemoStory story, DemoVisit visit, LocalDate firstDay) {
        return file(film, label(story, visit, firstDay, story.number(), story.birthDate(firstDay)), story.hospital());
    }

    /**
     * The same film from a machine into which somebody typed the child wrongly: it belongs to nobody until looked at.
     */
    static byte[] mistyped(DemoStory story, DemoVisit visit, LocalDate firstDay) {
        LocalDate birth = story.birthDate(firstDay);
        boolean wrongNumber = story.hospital() == DemoHospital.VALLEY;
        String number = wrongNumber ? story.number().replace('2', '3') : story.number();
        return file(
                both(story, visit),
                label(story, visit, firstDay, number, wrongNumber ? birth : birth.withDayOfYear(1)),
                story.hospital());
    }

    private static DrawnLabel label(
            DemoStory story, DemoVisit visit, LocalDate firstDay, String number, LocalDate birthDate) {
        return new DrawnLabel(
                number,
                story.familyName(),
                story.givenName(),
                birthDate,
                story.sex() == Sex.FEMALE ? "F" : "M",
                story.dayOf(visit, firstDay),
                story.hospital().title(),
                story.hospital().spacing());
    }

    private static byte[] file(DrawnFilm film, DrawnLabel label, DemoHospital hospital) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            new FilmFile(film, label, hospital.encoding()).writeTo(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }
}
