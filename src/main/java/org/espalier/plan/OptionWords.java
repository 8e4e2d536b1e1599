package org.espalier.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.kit.DateText;
import org.espalier.kit.QuantityText;
import org.espalier.kit.Texts;
import org.espalier.plan.OptionCells.Column;
import org.espalier.prognosis.Forecast;
import org.espalier.prognosis.PhysisStep;
import org.espalier.prognosis.Resting;

/** Says one option. */
final class OptionWords {

    private final Options options;
    private final OptionOutlook option;

    private OptionWords(Options options, OptionOutlook option) {
        this.options = options;
        this.option = option;
    }

    static OptionCells of(Options options, OptionOutlook option) {
        var words = new OptionWords(options, option);
        Map<Column, List<String>> lines = new EnumMap<>(Column.class);
        lines.put(Column.COURSE, words.course());
        lines.put(Column.TARGET, words.target());
        lines.put(Column.WINDOW, words.window());
        lines.put(Column.TAKES, words.takes());
        lines.put(Column.REBOUND, words.rebound());
        lines.put(Column.COMPLICATIONS, claims(option.option(), Claim.Aspect.COMPLICATION));
        lines.put(Column.COST, words.cost());
        lines.put(Column.LENGTH, words.length());
        lines.put(Column.FLAGS, option.flags().stream().map(Texts::of).toList());
        lines.put(Column.EVIDENCE, claims(option.option(), Claim.Aspect.COURSE));
        return new OptionCells(option.option(), lines);
    }

    private List<String> course() {
        var days = option.course();
        if (days.isEmpty()) {
            return List.of(Texts.text(isCut() ? "plan.course.at-operation" : "plan.course.none"));
        }
        var shown = new ArrayList<CourseDay>();
        shown.add(days.getFirst());
        days.stream().filter(day -> day.day().equals(today().plusYears(1))).forEach(shown::add);
        shown.add(days.getLast());
        return Stream.concat(shown.stream().distinct().map(this::onDay), natural())
                .toList();
    }

    private String onDay(CourseDay day) {
        return Texts.text(
                day.day().equals(today()) ? "plan.course.today" : "plan.course.day",
                PlanText.deviation(day.bonyHka()),
                DateText.of(day.day()));
    }

    private Stream<String> natural() {
        return option.option() == Option.WATCH
                ? options.ahead().prognosis().natural(options.side()).stream().map(OptionWords::natural)
                : Stream.empty();
    }

    private static String natural(org.espalier.prognosis.NaturalOutlook natural) {
        var later = natural.lastOn().plusYears(1);
        return Texts.text(
                "plan.course.natural",
                QuantityText.ofDeviation(natural.lastAngle()),
                DateText.of(natural.lastOn()),
                PlanText.deviation(natural.angle(later)),
                DateText.of(later));
    }

    private boolean isCut() {
        return switch (option.option()) {
            case OSTEOTOMY, PLATEAU_ELEVATION, GRADUAL_CORRECTION -> true;
            default -> false;
        };
    }

    private List<String> target() {
        List<String> lines =
                option.physes().stream().flatMap(OptionWords::target).toList();
        return lines.isEmpty() ? List.of(Texts.text(isCut() ? "plan.target.at-operation" : "plan.target.none")) : lines;
    }

    private static Stream<String> target(PhysisReach physis) {
        return switch (physis.outlook()) {
            case Forecast forecast -> Stream.of(arrival(physis, forecast));
            case Resting resting
            when physis.step() == PhysisStep.OUT_AT_TARGET ->
                Stream.of(Texts.text("plan.target.out", PlanText.site(physis.site()), DateText.of(resting.from())));
            default -> Stream.empty();
        };
    }

    private static String arrival(PhysisReach physis, Forecast forecast) {
        return Texts.text(
                "plan.target",
                PlanText.quantity(physis.site()),
                forecast.target().degrees(),
                PlanText.plateSide(forecast.corrects()),
                PlanText.arrival(forecast.arrival()));
    }

    /** Until when it works: the window of each plate, else what is known of a last day. */
    private List<String> window() {
        var plates = option.physes().stream()
                .flatMap(physis ->
                        physis.window().stream().map(window -> PlanText.window(physis.site(), window, today())))
                .toList();
        return plates.isEmpty() ? new LastDay(options, option.option()).words() : plates;
    }

    private LocalDate today() {
        return options.ahead().today();
    }

    private List<String> takes() {
        var takes = option.takes();
        var lines = new ArrayList<String>();
        lines.add(Texts.text("plan.takes.anaesthetics", takes.anaesthetics()));
        takes.months()
                .ifPresentOrElse(
                        months -> lines.add(Texts.text(
                                "plan.takes.visits",
                                takes.visits().orElseThrow(),
                                takes.films().orElseThrow(),
                                months)),
                        () -> looks().ifPresent(lines::add));
        if (takes.anaesthetics() > 0) {
            lines.add(Texts.text("plan.takes.after", takes.visitsAfter()));
        }
        return lines;
    }

    /** How often it is looked at where no target day sets the number. */
    private Optional<String> looks() {
        return switch (option.option()) {
            case WATCH, MEDICAL_FIRST -> Optional.of(Texts.text("plan.takes.watched"));
            case BRACE -> Optional.of(Texts.text("plan.takes.braced"));
            case OSTEOTOMY, PLATEAU_ELEVATION -> Optional.of(Texts.text("plan.takes.cut"));
            case GRADUAL_CORRECTION -> Optional.of(Texts.text("plan.takes.frame"));
            default -> Optional.empty();
        };
    }

    private List<String> rebound() {
        var chances = option.physes().stream()
                .filter(physis -> physis.outlook() instanceof Resting)
                .map(physis -> resting(physis, (Resting) physis.outlook()));
        return Stream.concat(chances, claims(option.option(), Claim.Aspect.REBOUND).stream())
                .toList();
    }

    private static String resting(PhysisReach physis, Resting resting) {
        var returns = Texts.text(
                "plan.rebound",
                PlanText.site(physis.site()),
                Texts.of(resting.corrected()),
                QuantityText.ofChance(resting.chanceOfReturn()));
        return resting.isParked()
                ? Texts.text("plan.rebound.parked", returns, QuantityText.ofChance(resting.chanceOfGoingOn()))
                : returns;
    }

    private List<String> cost() {
        var estimate = options.costs().get(option.option());
        if (estimate == null) {
            return List.of(Texts.text("plan.cost.not-told"));
        }
        var total = estimate.total()
                .filter(money -> money.amount().signum() != 0)
                .map(money -> Texts.text(
                        "plan.cost.total", money.amount(), money.currency().getCurrencyCode()))
                .orElseGet(() -> Texts.text(estimate.total().isPresent() ? "plan.cost.open" : "plan.cost.none"));
        var missing = estimate.missing().stream()
                .map(item -> Texts.text("plan.cost.item." + item.name()))
                .sorted()
                .collect(Collectors.joining(", "));
        return missing.isEmpty() ? List.of(total) : List.of(total, Texts.text("plan.cost.missing", missing));
    }

    private List<String> length() {
        var lost = option.physes().stream().flatMap(physis -> physis.lost().stream()
                .map(length -> Texts.text("plan.length.lost", PlanText.site(physis.site()), length.millimetres())));
        boolean straightens =
                isCut() || option.physes().stream().anyMatch(physis -> physis.outlook() instanceof Forecast);
        var gained = option.gained().filter(_ -> straightens).stream()
                .map(length -> Texts.text("plan.length.gained", length.millimetres()));
        var cut = isCut() ? Stream.of(Texts.text("plan.length.cut")) : Stream.<String>empty();
        var lines = Stream.of(lost, gained, cut).flatMap(some -> some).toList();
        return lines.isEmpty() ? List.of(Texts.text("plan.length.none")) : lines;
    }

    private static List<String> claims(Option option, Claim.Aspect aspect) {
        var claims = Claim.on(option, aspect);
        return claims.isEmpty()
                ? List.of(Texts.text("plan.evidence.none"))
                : claims.stream().map(OptionWords::claim).toList();
    }

    private static String claim(Claim claim) {
        var said = Texts.text("plan.claim", Texts.of(claim.stands()), claim.claim(), claim.range());
        return claim.checked() == Claim.Checked.PRACTICE
                ? Texts.text("plan.claim.practice", said)
                : Texts.text(
                        "plan.claim.source",
                        said,
                        claim.study(),
                        claim.n(),
                        claim.design(),
                        claim.level(),
                        Texts.of(claim.checked()));
    }
}
