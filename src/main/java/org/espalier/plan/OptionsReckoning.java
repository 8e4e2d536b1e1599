package org.espalier.plan;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import org.espalier.prognosis.Ahead;
import org.espalier.prognosis.Forecast;
import org.espalier.prognosis.LimbAhead;
import org.espalier.prognosis.PhysisAhead;
import org.espalier.prognosis.PhysisPrognosis;
import org.espalier.prognosis.PhysisStep;
import org.espalier.science.growth.CorrectionGeometry;
import org.espalier.science.growth.PhysisWidth;
import org.espalier.science.growth.PlateWindow;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;

/** Puts the options of one limb side by side. */
final class OptionsReckoning {

    private static final List<Integer> MONTHS = List.of(0, 3, 6, 9, 12, 18, 24, 30, 36, 48, 60);

    private final Ahead ahead;
    private final LimbAhead limb;
    private final LimbMeasures measures;
    private final Applicability applicability;
    private final Flags flags;

    OptionsReckoning(Ahead ahead, LimbAhead limb) {
        this.ahead = ahead;
        this.limb = limb;
        measures = new LimbMeasures(ahead, limb.side());
        var facts = new LimbFacts(ahead, limb.side());
        applicability = new Applicability(facts, limb);
        flags = new Flags(facts);
    }

    Options options() {
        return new Options(
                ahead, limb, Arrays.stream(Option.values()).map(this::outlook).toList(), Map.of());
    }

    private OptionOutlook outlook(Option option) {
        var steps = Steps.of(option, limb);
        var notNow = applicability.notNow(option);
        if (notNow.isPresent()) {
            return new OptionOutlook(
                    option, notNow, List.of(), List.of(), new Takes(0, OptionalInt.empty()), Optional.empty(), flags());
        }
        var physes =
                !isForecast(option) && option != Option.DEROTATE_AT_REMOVAL ? List.<PhysisReach>of() : reaches(steps);
        return new OptionOutlook(
                option,
                notNow,
                physes,
                isForecast(option) ? course(steps) : List.of(),
                new Takes(anaesthetics(option), months(physes)),
                gained(),
                flags.of(option, physes, List.of(limb.femur(), limb.tibia())));
    }

    private List<PhysisReach> reaches(Steps steps) {
        return Stream.of(reach(limb.femur(), steps.femur()), reach(limb.tibia(), steps.tibia()))
                .flatMap(Optional::stream)
                .toList();
    }

    private static Set<Flag> flags() {
        return Set.of();
    }

    /** What is cut, elevated or treated otherwise follows no rate that is known here. */
    private static boolean isForecast(Option option) {
        return switch (option) {
            case MEDICAL_FIRST,
                    BRACE,
                    RESECT_BAR,
                    OSTEOTOMY,
                    PLATEAU_ELEVATION,
                    GRADUAL_CORRECTION,
                    DEROTATE_AT_REMOVAL -> false;
            default -> true;
        };
    }

    private Optional<PhysisReach> reach(PhysisAhead physis, PhysisStep step) {
        return physis.outlook(step)
                .map(outlook -> new PhysisReach(
                        physis.site(),
                        step,
                        outlook,
                        step == PhysisStep.PLATE_TODAY ? window(physis) : Optional.empty(),
                        outlook instanceof Forecast forecast ? lost(physis, forecast) : Optional.empty()));
    }

    private Optional<PlateWindow> window(PhysisAhead physis) {
        return ahead.prognosis().physis(physis.physis()).flatMap(PhysisPrognosis::window);
    }

    private Optional<Length> lost(PhysisAhead physis, Forecast forecast) {
        double left = physis.last()
                .map(film -> forecast.corrects().degreesLeft(physis.site(), new Angle(film.value()), physis.target()))
                .orElse(0.0);
        return measures.width(physis.site())
                .map(PhysisWidth::length)
                .map(width -> CorrectionGeometry.lengthLost(new Angle(Math.max(0, left)), width));
    }

    private Optional<Length> gained() {
        return measures.hka().flatMap(hka -> measures.femur().flatMap(femur -> measures.tibia()
                .map(tibia -> CorrectionGeometry.straighteningGain(hka.abs(), femur, tibia))));
    }

    private List<CourseDay> course(Steps steps) {
        return days().flatMap(day ->
                        limb
                                .bonyHka(steps.femur(), steps.tibia(), day)
                                .map(spread -> new CourseDay(day, spread))
                                .stream())
                .toList();
    }

    /** From today until growth has ended in most children, at most five years. */
    private Stream<LocalDate> days() {
        var end = ahead.prognosis()
                .maturity()
                .map(maturity -> maturity.latest())
                .filter(day -> day.isAfter(ahead.today().plusMonths(3)))
                .orElse(ahead.today().plusYears(5));
        return MONTHS.stream().map(ahead.today()::plusMonths).filter(day -> !day.isAfter(end));
    }

    private OptionalInt months(List<PhysisReach> physes) {
        return physes.stream()
                .map(PhysisReach::outlook)
                .filter(Forecast.class::isInstance)
                .map(Forecast.class::cast)
                .flatMap(forecast -> forecast.arrival().middle().stream())
                .max(Comparator.naturalOrder())
                .map(day -> (int) Math.max(0, ChronoUnit.MONTHS.between(ahead.today(), day) + 1))
                .map(OptionalInt::of)
                .orElse(OptionalInt.empty());
    }

    private static int anaesthetics(Option option) {
        return switch (option) {
            case WATCH, MEDICAL_FIRST, BRACE -> 0;
            case TAKE_OUT_NOW, TAKE_OUT_AT_TARGET, RELEASE_AND_WAIT, OSTEOTOMY, DEROTATE_AT_REMOVAL -> 1;
            default -> 2;
        };
    }
}
