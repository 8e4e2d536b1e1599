package org.espalier.prognosis.ui;

import java.time.LocalDate;
import java.util.Optional;
import org.espalier.kit.DateText;
import org.espalier.kit.QuantityText;
import org.espalier.kit.Texts;
import org.espalier.patient.Bone;
import org.espalier.prognosis.AngleSpread;
import org.espalier.prognosis.Arrival;
import org.espalier.prognosis.FilmAngle;
import org.espalier.prognosis.Forecast;
import org.espalier.prognosis.GrowthOf;
import org.espalier.prognosis.LimbOutlook;
import org.espalier.prognosis.PhysisPrognosis;
import org.espalier.prognosis.Resting;
import org.espalier.science.forecast.Deformity;
import org.espalier.science.growth.GrowthAge;
import org.espalier.science.growth.GrowthMethod;
import org.espalier.science.growth.Maturity;
import org.espalier.science.growth.PlateWindow;
import org.espalier.science.quantity.Angle;
import org.espalier.treatment.PhysisKey;

/**
 * A prognosis in words: no date without its interval and the chance that it never comes, no angle without its
 * direction.
 */
final class PrognosisText {

    private PrognosisText() {}

    static String physis(PhysisKey physis) {
        return Texts.text(
                "prognosis.physis",
                Texts.of(physis.side()),
                Texts.text("prognosis.end." + physis.end().name()),
                Texts.text("prognosis.bone." + physis.bone().name()));
    }

    static String last(PhysisPrognosis physis, FilmAngle film) {
        return Texts.text(
                "prognosis.last", film.quantity().code(), film.value(), DateText.of(film.on()), toTarget(physis, film));
    }

    private static String toTarget(PhysisPrognosis physis, FilmAngle film) {
        double away = film.value() - physis.target().degrees();
        if (Math.round(away * 10) == 0) {
            return Texts.text("prognosis.on-target", physis.target().degrees());
        }
        boolean femur = physis.physis().bone() == Bone.FEMUR;
        return Texts.text(
                "prognosis.from-target",
                QuantityText.ofDeviation(Angle.ofDegrees(femur ? away : -away)),
                physis.target().degrees());
    }

    /** @param valgus degrees towards valgus in six months */
    static String turn(double valgus) {
        return Texts.text(
                "prognosis.turn",
                Math.abs(valgus),
                Texts.text(valgus >= 0 ? "kit.Deformity.VALGUS" : "kit.Deformity.VARUS"));
    }

    static String angle(Angle angle) {
        return Texts.text("prognosis.angle", angle.degrees());
    }

    static String half(AngleSpread spread) {
        return Texts.text(
                "prognosis.angles", spread.low50().degrees(), spread.high50().degrees());
    }

    static String most(AngleSpread spread) {
        return Texts.text(
                "prognosis.angles", spread.low90().degrees(), spread.high90().degrees());
    }

    static String halfDeviation(AngleSpread spread) {
        return deviations(spread.low50(), spread.high50());
    }

    static String mostDeviation(AngleSpread spread) {
        return deviations(spread.low90(), spread.high90());
    }

    private static String deviations(Angle low, Angle high) {
        return Texts.text("prognosis.from-to", QuantityText.ofDeviation(low), QuantityText.ofDeviation(high));
    }

    /** What is left to the target on a day in the middle. */
    static String left(Forecast forecast, LocalDate day) {
        return left(
                forecast.corrects(),
                forecast.corrects()
                        .degreesLeft(forecast.site(), forecast.angle(day).middle(), forecast.target()));
    }

    /** The same of a physis that nothing holds any more. */
    static String left(Resting resting, LocalDate day) {
        return left(
                resting.corrected(),
                resting.corrected()
                        .degreesLeft(resting.site(), resting.angle(day).middle(), resting.target()));
    }

    private static String left(Deformity corrected, double left) {
        double shown = Math.round(Math.abs(left) * 10) / 10.0;
        if (shown == 0) {
            return Texts.text("prognosis.at-target");
        }
        return Texts.text(
                left > 0 ? "prognosis.left" : "prognosis.past",
                shown,
                Texts.of(left > 0 ? corrected : corrected.opposite()));
    }

    /** The chances of what may come once nothing holds. */
    static String after(Resting resting) {
        var returning = Texts.text(
                "prognosis.released", Texts.of(resting.corrected()), QuantityText.ofChance(resting.chanceOfReturn()));
        return resting.isParked()
                ? Texts.text("prognosis.parked", QuantityText.ofChance(resting.chanceOfGoingOn()), returning)
                : returning;
    }

    static String arrival(Arrival arrival) {
        var never = QuantityText.ofChance(arrival.never());
        if (arrival.middle().isEmpty()) {
            return Texts.text("prognosis.arrival.unlikely", orEnd(arrival.earliest()), never);
        }
        return Texts.text(
                "prognosis.arrival",
                DateText.of(arrival.middle().get()),
                orEnd(arrival.earliest()),
                orEnd(arrival.latest()),
                never);
    }

    private static String orEnd(Optional<LocalDate> day) {
        return day.map(DateText::of).orElseGet(() -> Texts.text("prognosis.not-before-growth-ends"));
    }

    /** The chances of failing, with what they rest on. */
    static String failing(Forecast forecast) {
        var cause = Texts.text("prognosis.cause." + forecast.cause().name());
        var basis = forecast.isCauseStudied()
                ? Texts.text("prognosis.basis", cause, forecast.films().size())
                : Texts.text(
                        "prognosis.basis.unstudied", cause, forecast.films().size());
        var sentence = Texts.text(
                "prognosis.failing",
                QuantityText.ofChance(forecast.noResponse()),
                QuantityText.ofChance(forecast.hardwareFailed()),
                basis);
        return forecast.seenBroken()
                .map(day -> Texts.text("prognosis.broken", DateText.of(day), sentence))
                .orElse(sentence);
    }

    static String growth(GrowthOf growth) {
        return Texts.text(
                "prognosis.growth",
                method(growth.method()),
                growth.left().millimetres(),
                growth.low().millimetres(),
                growth.high().millimetres());
    }

    static String window(PlateWindow window, LocalDate today) {
        return switch (window) {
            case PlateWindow.None(var reason) -> Texts.text("prognosis.window.none." + reason.name());
            case PlateWindow.Dates dates -> window(dates, today);
        };
    }

    private static String window(PlateWindow.Dates dates, LocalDate today) {
        var words = dates.isClosed(today)
                ? Texts.text("prognosis.window.closed", DateText.of(dates.evenly()))
                : dates.notBefore()
                        .map(day -> Texts.text(
                                "prognosis.window.between",
                                DateText.of(day),
                                DateText.of(dates.by()),
                                DateText.of(dates.evenly())))
                        .orElseGet(() -> Texts.text(
                                "prognosis.window.by", DateText.of(dates.by()), DateText.of(dates.evenly())));
        var method = method(dates.decidedBy());
        return Texts.text(
                dates.isWidthAssumed() ? "prognosis.window.assumed" : "prognosis.window.measured", words, method);
    }

    static String age(GrowthAge age) {
        var words =
                Texts.text("prognosis.age." + age.basis().name(), DateText.of(age.age()), DateText.of(age.byBirth()));
        return age.isBoneAgeWanted() ? Texts.text("prognosis.age.wanted", words) : words;
    }

    static String maturity(Maturity maturity) {
        return Texts.text(
                "prognosis.maturity",
                DateText.of(maturity.day()),
                DateText.of(maturity.earliest()),
                DateText.of(maturity.latest()));
    }

    /** @param ledAway whether it is straight or past it already, and led further */
    static String straight(Optional<LimbOutlook.Straight> straight, boolean ledAway) {
        return straight.map(PrognosisText::straight)
                .orElseGet(() -> Texts.text(ledAway ? "prognosis.straight.past" : "prognosis.straight.never"));
    }

    private static String straight(LimbOutlook.Straight straight) {
        var words = Texts.text(
                "prognosis.straight",
                DateText.of(straight.day()),
                DateText.of(straight.earliest()),
                orEnd(straight.latest()),
                QuantityText.ofChance(straight.never()),
                straight.femur().degrees(),
                straight.tibia().degrees());
        return straight.isSlanted() ? Texts.text("prognosis.slanted", words) : words;
    }

    static String method(GrowthMethod method) {
        return Texts.text("prognosis.method." + method.name());
    }
}
