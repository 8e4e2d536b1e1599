package org.espalier.plan;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.prognosis.Ahead;
import org.espalier.prognosis.Forecast;
import org.espalier.prognosis.GrowthOf;
import org.espalier.prognosis.LimbAhead;
import org.espalier.prognosis.PhysisAhead;
import org.espalier.prognosis.PhysisPrognosis;
import org.espalier.prognosis.PhysisStep;
import org.espalier.science.growth.CorrectionGeometry;
import org.espalier.science.growth.PhysisWidth;
import org.espalier.science.growth.PlateWindow;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Side;

/** Growth left against degrees needed: until when, where, how long a screw, and month by month. */
final class GrowthSheet {

    private static final double SHARE_OF_WIDTH = 0.413;

    /** So many months are shown at least and at most. */
    private static final int LEAST_MONTHS = 6;

    private static final int MOST_MONTHS = 24;

    /** So many months beyond its target in the middle a plate is not left in. */
    private static final int MONTHS_PAST_TARGET = 3;

    private final Ahead ahead;
    private final Side side;
    private final SheetInputs inputs;
    private final LimbMeasures measures;

    GrowthSheet(Ahead ahead, Side side, SheetInputs inputs) {
        this.ahead = ahead;
        this.side = side;
        this.inputs = inputs;
        measures = new LimbMeasures(ahead, side);
    }

    Sheet sheet() {
        var parts = new ArrayList<Sheet.Part>();
        ahead.limb(side).ifPresent(limb -> {
            physes(limb).forEach(physis -> parts.add(needed(physis)));
            parts.add(months(limb));
        });
        parts.add(together());
        parts.addAll(new LoadPart(measures, inputs).parts());
        return new Sheet(
                SheetKind.GROWTH,
                ahead.prognosis().child().who(),
                ahead.today(),
                side,
                Texts.text("plan.growth.title", Texts.of(side)),
                parts,
                IntStream.rangeClosed(1, 6)
                        .mapToObj(i -> Texts.text("plan.growth.caution." + i))
                        .toList());
    }

    private static Stream<PhysisAhead> physes(LimbAhead limb) {
        return Stream.of(limb.femur(), limb.tibia());
    }

    /** What is in goes on; what is free is asked what a plate today would do. */
    static Optional<Forecast> forecast(PhysisAhead physis) {
        return physis.forecast(PhysisStep.AS_IT_IS).or(() -> physis.forecast(PhysisStep.PLATE_TODAY));
    }

    private Sheet.Part needed(PhysisAhead physis) {
        var facts = new Sheet.Gathered();
        physis.last()
                .ifPresent(film -> facts.with(
                        "plan.growth.last",
                        Texts.text(
                                "plan.growth.on-day",
                                PlanText.quantity(physis.site()),
                                PlanText.angle(new Angle(film.value())),
                                DateText.of(film.on()),
                                PlanText.angle(physis.target()))));
        physis.left()
                .ifPresent(bend -> facts.with(
                        "plan.growth.plate",
                        Texts.text("plan.growth.plate.side", PlanText.plateSide(bend), Texts.of(bend))));
        measures.width(physis.site()).ifPresent(width -> width(facts, width, degreesLeft(physis)));
        prognosis(physis).ifPresent(known -> {
            known.growth().forEach(growth -> facts.with("plan.growth.left", growth(growth)));
            known.window()
                    .ifPresent(window -> facts.with("plan.growth.window", PlanText.window(window, ahead.today())));
        });
        forecast(physis).ifPresent(forecast -> facts.with("plan.growth.arrival", PlanText.arrival(forecast.arrival())));
        return facts.under("plan.growth.site." + physis.site().name());
    }

    /** Empty where the last film lies within reader error of the target. */
    private static Optional<Angle> degreesLeft(PhysisAhead physis) {
        return physis.left()
                .flatMap(bend -> physis.last()
                        .map(film -> bend.degreesLeft(physis.site(), new Angle(film.value()), physis.target())))
                .map(degrees -> new Angle(Math.max(0, degrees)));
    }

    private static void width(Sheet.Gathered facts, PhysisWidth width, Optional<Angle> left) {
        facts.with(
                "plan.growth.width",
                Texts.text(
                        width.isAssumed() ? "plan.growth.width.assumed" : "plan.growth.width.measured",
                        width.length().millimetres()));
        facts.with(
                "plan.growth.needed",
                left.map(angle -> needed(angle, width)).orElseGet(() -> Texts.text("plan.growth.needed.none")));
        facts.with(
                "plan.growth.screw",
                Texts.text(
                        "plan.growth.screw.length",
                        SHARE_OF_WIDTH * width.length().millimetres(),
                        width.length().millimetres() / 2));
    }

    private static String needed(Angle left, PhysisWidth width) {
        var full = CorrectionGeometry.growthFor(left, width.length());
        return Texts.text(
                "plan.growth.needed.mm",
                left.degrees(),
                full.millimetres(),
                full.millimetres() / CorrectionGeometry.EFFICIENCY,
                full.millimetres() / CorrectionGeometry.LEAST_EFFICIENCY);
    }

    private static String growth(GrowthOf growth) {
        return Texts.text(
                "plan.growth.left.mm",
                Texts.text("plan.method." + growth.method().name()),
                growth.left().millimetres(),
                growth.low().millimetres(),
                growth.high().millimetres());
    }

    private Optional<PhysisPrognosis> prognosis(PhysisAhead physis) {
        return ahead.prognosis().physis(physis.physis());
    }

    private Sheet.Part months(LimbAhead limb) {
        var turned = physes(limb).filter(physis -> forecast(physis).isPresent()).toList();
        if (turned.isEmpty()) {
            return new Sheet.Note(Texts.text("plan.growth.none-turned"));
        }
        var rows = IntStream.rangeClosed(0, monthsShown(turned))
                .mapToObj(month -> ahead.today().plusMonths(month))
                .map(day -> row(DateText.of(day), turned.stream().map(physis -> onDay(physis, day)), hka(limb, day)))
                .toList();
        var head = row(
                Texts.text("plan.growth.day"),
                turned.stream().map(GrowthSheet::keptIn),
                Texts.text("plan.growth.bony-hka"));
        return new Sheet.Table(Texts.text("plan.growth.months"), head, rows);
    }

    private static List<String> row(String first, Stream<String> between, String last) {
        return Stream.of(Stream.of(first), between, Stream.of(last))
                .flatMap(cells -> cells)
                .toList();
    }

    /** Until a while after the last target; as long as may be where one more likely never comes. */
    private int monthsShown(List<PhysisAhead> turned) {
        return turned.stream()
                .map(physis -> forecast(physis)
                        .flatMap(one -> one.arrival().middle())
                        .map(day -> (int) ChronoUnit.MONTHS.between(ahead.today(), day) + 1 + MONTHS_PAST_TARGET)
                        .orElse(MOST_MONTHS))
                .max(Comparator.naturalOrder())
                .map(months -> Math.clamp(months, LEAST_MONTHS, MOST_MONTHS))
                .orElse(LEAST_MONTHS);
    }

    private static String keptIn(PhysisAhead physis) {
        return Texts.text("plan.growth.kept-in", PlanText.quantity(physis.site()), PlanText.angle(physis.target()));
    }

    private static String onDay(PhysisAhead physis, LocalDate day) {
        return PlanText.angle(forecast(physis).orElseThrow().angle(day));
    }

    private static String hka(LimbAhead limb, LocalDate day) {
        return limb.bonyHka(step(limb.femur()), step(limb.tibia()), day)
                .map(PlanText::deviation)
                .orElseGet(() -> Texts.text("plan.growth.no-course"));
    }

    private static PhysisStep step(PhysisAhead physis) {
        return physis.forecast(PhysisStep.PLATE_TODAY).isPresent() ? PhysisStep.PLATE_TODAY : PhysisStep.AS_IT_IS;
    }

    /** Both physes of both limbs: one day for all plates, and what waiting for the slowest would cost the others. */
    private Sheet.Part together() {
        List<PhysisAhead> all = ahead.limbs().stream()
                .flatMap(GrowthSheet::physes)
                .filter(physis -> forecast(physis).isPresent())
                .toList();
        var last = all.stream()
                .flatMap(physis -> forecast(physis).flatMap(one -> one.arrival().middle()).stream())
                .map(day -> day.isBefore(ahead.today()) ? ahead.today() : day)
                .max(Comparator.naturalOrder());
        var rows = all.stream().map(physis -> together(physis, last)).toList();
        return new Sheet.Table(
                Texts.text("plan.growth.together"),
                List.of(
                        Texts.text("plan.growth.physis"),
                        Texts.text("plan.growth.window"),
                        Texts.text("plan.growth.arrival"),
                        Texts.text(
                                "plan.growth.if-last",
                                last.map(DateText::of).orElseGet(() -> Texts.text("plan.after-growth")))),
                rows);
    }

    private List<String> together(PhysisAhead physis, Optional<LocalDate> last) {
        var forecast = forecast(physis).orElseThrow();
        var window = prognosis(physis).flatMap(PhysisPrognosis::window);
        return List.of(
                Texts.text("plan.growth.physis.of", Texts.of(physis.physis().side()), PlanText.site(physis.site())),
                forecast.isPlaced()
                        ? Texts.text("plan.growth.in", DateText.of(forecast.plateOn()))
                        : window.map(this::days).orElse(""),
                PlanText.arrival(forecast.arrival()),
                last.map(day -> Texts.text(
                                "plan.growth.past", forecast.past(day).degrees()))
                        .orElse(""));
    }

    private String days(PlateWindow window) {
        return PlanText.window(window, ahead.today());
    }
}
