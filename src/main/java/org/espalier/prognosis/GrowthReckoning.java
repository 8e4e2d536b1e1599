package org.espalier.prognosis;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.espalier.science.forecast.PhysisSite;
import org.espalier.science.growth.GrowthAge;
import org.espalier.science.growth.GrowthCurve;
import org.espalier.science.growth.GrowthPlate;
import org.espalier.science.growth.PhysisWidth;
import org.espalier.science.growth.PlateWindow;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;
import org.espalier.treatment.PhysisKey;

/** What each physis of a child has left to grow, and until when a plate there can still do its work. */
final class GrowthReckoning {

    private static final double DAYS_IN_A_YEAR = 365.25;

    private final ChildFacts facts;
    private final GrowthAge age;

    GrowthReckoning(ChildFacts facts, GrowthAge age) {
        this.facts = facts;
        this.age = age;
    }

    List<GrowthOf> left(PhysisKey physis) {
        return Plates.plate(physis).stream()
                .flatMap(plate -> curves(physis.side(), plate).stream())
                .flatMap(curve -> curve.left(age.age()).map(left -> growthOf(curve, left)).stream())
                .toList();
    }

    /** @param left degrees left to the target */
    PlateWindow window(PhysisSite site, PhysisKey physis, Angle left) {
        var plate = Plates.plate(physis).orElseThrow();
        var reckoned = curves(physis.side(), plate).stream()
                .filter(curve -> curve.left(age.age()).isPresent())
                .toList();
        return PlateWindow.of(
                age, reckoned.isEmpty() ? curves(physis.side(), plate) : reckoned, width(site, physis), left);
    }

    /** Both ways that bear a date; the yearly rule is shown beside them at the knee's end of growth. */
    private List<GrowthCurve> curves(Side side, GrowthPlate plate) {
        var curves = new ArrayList<GrowthCurve>();
        curves.add(GrowthCurve.byLengths(plate, age.sex()));
        byMultiplier(side, plate).ifPresent(curves::add);
        GrowthCurve.byYear(plate, age.sex()).ifPresent(curves::add);
        return curves;
    }

    private Optional<GrowthCurve> byMultiplier(Side side, GrowthPlate plate) {
        return facts.films()
                .latest(side, Plates.length(plate))
                .map(film -> GrowthCurve.byMultiplier(plate, age.sex(), ageOn(film), new Length(film.value())));
    }

    private Age ageOn(FilmAngle film) {
        double ago = ChronoUnit.DAYS.between(film.on(), facts.today()) / DAYS_IN_A_YEAR;
        return Age.ofDecimalYears(Math.max(0, age.age().decimalYears() - ago));
    }

    private Optional<PhysisWidth> width(PhysisSite site, PhysisKey physis) {
        return facts.films()
                .latest(physis.side(), Plates.width(site))
                .map(film -> PhysisWidth.measured(new Length(film.value())))
                .or(() -> PhysisWidth.assumed(Plates.plate(physis).orElseThrow(), age.sex(), age.age()));
    }

    private static GrowthOf growthOf(GrowthCurve curve, Length left) {
        double most = left.millimetres() * GrowthCurve.MODEL_ERROR;
        return new GrowthOf(
                curve.method(), left, new Length(left.millimetres() - most), new Length(left.millimetres() + most));
    }
}
