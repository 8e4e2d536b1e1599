package org.espalier.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.prognosis.Ahead;
import org.espalier.prognosis.LengthOutlook;
import org.espalier.science.growth.Arrest;
import org.espalier.science.growth.CorrectionGeometry;
import org.espalier.science.growth.DifferenceAtMaturity;
import org.espalier.science.growth.GrowthMethod;
import org.espalier.science.growth.GrowthPlate;
import org.espalier.science.growth.LegMultiplier;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;

/**
 * Length and torsion: the difference now and at maturity, what straightening gains and tethers cost, and signs over
 * time.
 */
final class LengthSheet {

    private static final int YEARS = 8;

    private final Ahead ahead;
    private final Side side;
    private final LimbMeasures measures;

    LengthSheet(Ahead ahead, Side side) {
        this.ahead = ahead;
        this.side = side;
        measures = new LimbMeasures(ahead, side);
    }

    Sheet sheet() {
        var parts = new ArrayList<Sheet.Part>();
        parts.add(difference());
        parts.add(new ArrestTiming(ahead, side, measures).part());
        parts.add(arrest());
        parts.addAll(new TimePart(ahead, side).parts());
        return new Sheet(
                SheetKind.LENGTH,
                ahead.prognosis().child().who(),
                ahead.today(),
                side,
                Texts.text("plan.length.title", Texts.of(side)),
                parts,
                IntStream.rangeClosed(1, 4)
                        .mapToObj(i -> Texts.text("plan.length.caution." + i))
                        .toList());
    }

    private Sheet.Part difference() {
        var facts = new Sheet.Gathered();
        ahead.prognosis()
                .lengths()
                .ifPresentOrElse(
                        lengths -> differences(facts, lengths),
                        () -> facts.with("plan.length.now", Texts.text("plan.length.unread")));
        gained().ifPresent(
                        gain -> facts.with("plan.length.gain", Texts.text("plan.length.gain.mm", gain.millimetres())));
        ahead.limb(side).stream()
                .flatMap(limb -> Stream.of(limb.femur(), limb.tibia()))
                .forEach(physis -> physis.left()
                        .flatMap(bend -> physis.last()
                                .map(film -> bend.degreesLeft(physis.site(), new Angle(film.value()), physis.target())))
                        .flatMap(left -> measures.width(physis.site())
                                .map(width ->
                                        CorrectionGeometry.lengthLost(new Angle(Math.max(0, left)), width.length())))
                        .ifPresent(lost -> facts.with(
                                "plan.length.tether",
                                Texts.text(
                                        "plan.length.tether.mm", PlanText.site(physis.site()), lost.millimetres()))));
        return facts.under("plan.length.difference");
    }

    private static void differences(Sheet.Gathered facts, LengthOutlook lengths) {
        facts.with(
                "plan.length.now",
                Texts.text(
                        "plan.length.on",
                        difference(lengths.now().difference(), lengths.now().halfWidth95()),
                        DateText.of(lengths.on())));
        lengths.ways().forEach(way -> {
            facts.with("plan.length.kept", difference(way.sinceBirth(), way.method()));
            way.acquired().ifPresent(one -> facts.with("plan.length.acquired", difference(one, way.method())));
        });
    }

    private static String difference(DifferenceAtMaturity.Expected expected, GrowthMethod method) {
        return Texts.text(
                "plan.length.way",
                difference(expected.difference(), expected.halfWidth95()),
                Texts.text("plan.method." + method.name()));
    }

    /** @param difference right less left */
    private static String difference(Length difference, Length halfWidth) {
        double millimetres = difference.millimetres();
        if (Math.round(millimetres) == 0) {
            return Texts.text("plan.length.equal", halfWidth.millimetres());
        }
        return Texts.text(
                millimetres >= 0 ? "plan.length.right-longer" : "plan.length.left-longer",
                Math.abs(millimetres),
                halfWidth.millimetres());
    }

    private Optional<Length> gained() {
        return measures.hka().flatMap(hka -> measures.femur().flatMap(femur -> measures.tibia()
                .map(tibia -> CorrectionGeometry.straighteningGain(hka.abs(), femur, tibia))));
    }

    /** What closing growth plates of the other, longer leg would take off it, by the day it is done. */
    private Sheet.Part arrest() {
        List<List<String>> rows = ahead.prognosis().age().stream()
                .flatMap(age -> legLength().stream().flatMap(leg -> IntStream.rangeClosed(0, 2 * YEARS)
                        .mapToObj(half -> ahead.today().plusMonths(6L * half))
                        .flatMap(day -> arrest(day, leg).stream())))
                .toList();
        return new Sheet.Table(
                Texts.text("plan.length.arrest"),
                List.of(
                        Texts.text("plan.growth.day"),
                        Texts.text("plan.site.DISTAL_FEMUR"),
                        Texts.text("plan.site.PROXIMAL_TIBIA"),
                        Texts.text("plan.length.both")),
                rows);
    }

    private Optional<Length> legLength() {
        return measures.femur().flatMap(femur -> measures.tibia().map(femur::plus));
    }

    private Optional<List<String>> arrest(LocalDate day, Length leg) {
        return ahead.prognosis().age().flatMap(age -> {
            double now = LegMultiplier.at(age.sex(), age.age());
            double years =
                    age.age().decimalYears() + java.time.temporal.ChronoUnit.DAYS.between(ahead.today(), day) / 365.25;
            double then = LegMultiplier.at(age.sex(), org.espalier.science.quantity.Age.ofDecimalYears(years));
            double atMaturity = leg.millimetres() * now;
            var left = new Length(atMaturity * (1 - 1 / then));
            return left.millimetres() < 1
                    ? Optional.empty()
                    : Optional.of(List.of(
                            DateText.of(day),
                            shortening(left, EnumSet.of(GrowthPlate.DISTAL_FEMUR)),
                            shortening(left, EnumSet.of(GrowthPlate.PROXIMAL_TIBIA)),
                            shortening(left, EnumSet.of(GrowthPlate.DISTAL_FEMUR, GrowthPlate.PROXIMAL_TIBIA))));
        });
    }

    private static String shortening(Length left, Set<GrowthPlate> plates) {
        return Texts.text(
                "plan.length.shortening", Arrest.shortening(left, plates).millimetres());
    }
}
