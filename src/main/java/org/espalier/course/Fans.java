package org.espalier.course;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.espalier.kit.CourseModel;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.prognosis.AngleSpread;
import org.espalier.prognosis.Arrival;
import org.espalier.prognosis.Forecast;
import org.espalier.prognosis.LimbOutlook;
import org.espalier.prognosis.PhysisPrognosis;
import org.espalier.prognosis.Prognosis;
import org.espalier.reading.NumberText;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.forecast.PhysisSite;
import org.espalier.science.quantity.Side;

/** Where limbs with a plate in are going, as fans from the last film on: each joint angle and the limb's HKA. */
final class Fans {

    /** So far ahead a fan is drawn at least and at most; the page about the prognosis goes on to the end of growth. */
    private static final int LEAST_MONTHS = 6;

    private static final int MOST_MONTHS = 18;

    /** So long beyond its target a limb is not left. */
    private static final int MONTHS_PAST_TARGET = 3;

    private static final int STEP_MONTHS = 2;

    private final Prognosis prognosis;

    Fans(Prognosis prognosis) {
        this.prognosis = prognosis;
    }

    /** Of the lanes that are drawn, and of limbs that have a point there to start from. */
    List<CourseModel.Fan> of(List<CourseModel.Track> tracks) {
        var ofPhyses = prognosis.physes().stream().flatMap(this::ofPhysis);
        var ofLimbs = prognosis.limbs().stream().map(this::ofLimb);
        return Stream.concat(ofLimbs, ofPhyses)
                .filter(fan -> tracks.stream().anyMatch(track -> track.id().equals(fan.track())))
                .toList();
    }

    private Stream<CourseModel.Fan> ofPhysis(PhysisPrognosis physis) {
        return physis.forecast().filter(Forecast::isPlaced).stream().map(forecast -> {
            var side = physis.physis().side();
            var quantity = forecast.site() == PhysisSite.DISTAL_FEMUR ? Quantity.MLDFA : Quantity.MMPTA;
            return new CourseModel.Fan(
                    track(quantity, side),
                    words(side, quantity, forecast),
                    days(
                            forecast.from(),
                            until(forecast.from(), forecast.arrival().middle(), forecast.growthEnds()),
                            forecast::angle));
        });
    }

    private CourseModel.Fan ofLimb(LimbOutlook limb) {
        var words = limb.straight()
                .map(straight -> Texts.text(
                        "course.fan.straight",
                        Texts.of(limb.side()),
                        DateText.of(straight.day()),
                        DateText.of(straight.earliest()),
                        orEnd(straight.latest()),
                        percent(straight.never())))
                .orElseGet(() -> Texts.text(
                        limb.isLedAway() ? "course.fan.led-away" : "course.fan.never-straight", Texts.of(limb.side())));
        return new CourseModel.Fan(
                track(Quantity.HKA, limb.side()),
                words,
                days(
                        prognosis.today(),
                        until(prognosis.today(), limb.straight().map(LimbOutlook.Straight::day), limb.ends()),
                        limb::hka));
    }

    private LocalDate until(LocalDate from, Optional<LocalDate> target, LocalDate ends) {
        var least = prognosis.today().plusMonths(LEAST_MONTHS);
        var wanted =
                target.map(day -> day.plusMonths(MONTHS_PAST_TARGET)).orElseGet(() -> from.plusMonths(MOST_MONTHS));
        var most = prognosis.today().plusMonths(MOST_MONTHS);
        return earlier(ends, earlier(most, wanted.isAfter(least) ? wanted : least));
    }

    private static LocalDate earlier(LocalDate one, LocalDate other) {
        return one.isBefore(other) ? one : other;
    }

    private static List<CourseModel.Spread> days(
            LocalDate from, LocalDate last, Function<LocalDate, AngleSpread> angle) {
        var between = last.isAfter(from) ? from.datesUntil(last, Period.ofMonths(STEP_MONTHS)) : Stream.<LocalDate>of();
        return Stream.concat(between, Stream.of(last.isAfter(from) ? last : from))
                .map(day -> spread(day, angle.apply(day)))
                .toList();
    }

    private static CourseModel.Spread spread(LocalDate day, AngleSpread angle) {
        return new CourseModel.Spread(
                day,
                angle.low90().degrees(),
                angle.low50().degrees(),
                angle.middle().degrees(),
                angle.high50().degrees(),
                angle.high90().degrees());
    }

    private static String words(Side side, Quantity quantity, Forecast forecast) {
        var name = Texts.text("course.fan.of", Texts.of(side), NumberText.label(quantity));
        Arrival arrival = forecast.arrival();
        var target = forecast.target().degrees();
        return arrival.middle()
                .map(day -> Texts.text(
                        "course.fan.arrival",
                        name,
                        target,
                        DateText.of(day),
                        orEnd(arrival.earliest()),
                        orEnd(arrival.latest()),
                        percent(arrival.never())))
                .orElseGet(() -> Texts.text("course.fan.unlikely", name, target, percent(arrival.never())));
    }

    private static String orEnd(Optional<LocalDate> day) {
        return day.map(DateText::of).orElseGet(() -> Texts.text("course.fan.not-while-growing"));
    }

    private static double percent(double chance) {
        return chance * 100;
    }

    private static String track(Quantity quantity, Side side) {
        return quantity.code() + "-" + side.letter();
    }
}
