package org.espalier.plan;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.espalier.kit.DateText;
import org.espalier.kit.QuantityText;
import org.espalier.kit.Texts;
import org.espalier.patient.StagePair;
import org.espalier.prognosis.Ahead;
import org.espalier.prognosis.FilmAngle;
import org.espalier.prognosis.NaturalOutlook;
import org.espalier.reading.NumberText;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Side;

/** Is it physiological? What each study says of this limb, each by its own method, and what they leave open. */
final class BowSheet {

    private static final int OPEN = 5;
    private static final double DAYS_OF_HALF_A_YEAR = 182.625;

    /** Degrees in six months by which MDA fell in bows that straightened (Medicine 2019;98:e15349). */
    private static final double PHYSIOLOGICAL_FALL = 3;

    private final Ahead ahead;
    private final Side side;
    private final SheetInputs inputs;
    private final List<StagePair> pairs;
    private final LimbMeasures measures;

    BowSheet(Ahead ahead, Side side, SheetInputs inputs, List<StagePair> pairs) {
        this.ahead = ahead;
        this.side = side;
        this.inputs = inputs;
        this.pairs = pairs;
        measures = new LimbMeasures(ahead, side);
    }

    Sheet sheet() {
        var parts = new ArrayList<Sheet.Part>();
        parts.addAll(new NormPart(ahead, measures, inputs).parts());
        parts.addAll(new TibialIndices(ahead, measures).parts());
        parts.add(trend());
        parts.add(new WarningSigns(ahead, measures).part());
        parts.add(new KnockKnees(ahead, measures).part());
        parts.addAll(new FractureValgus(ahead, measures).parts());
        parts.add(list("plan.bow.open", "plan.bow.open.", OPEN));
        parts.addAll(new StagePart(ahead, side, pairs).parts());
        return new Sheet(
                SheetKind.BOW,
                ahead.prognosis().child().who(),
                ahead.today(),
                side,
                Texts.text("plan.bow.title", Texts.of(side)),
                parts,
                List.of(Texts.text("plan.bow.caution.1"), Texts.text("plan.bow.caution.2")));
    }

    private static Sheet.Part list(String heading, String key, int count) {
        return new Sheet.Table(
                Texts.text(heading),
                List.of(),
                IntStream.rangeClosed(1, count)
                        .mapToObj(i -> List.of(Texts.text(key + i)))
                        .toList());
    }

    private Sheet.Part trend() {
        var facts = new Sheet.Gathered();
        fallOfMda()
                .ifPresentOrElse(
                        fall -> facts.with("plan.bow.trend.mda", fall),
                        () -> facts.with("plan.bow.trend.mda", Texts.text("plan.bow.trend.one-film")));
        ahead.prognosis()
                .natural(side)
                .flatMap(NaturalOutlook::trend)
                .ifPresent(trend -> facts.with(
                        "plan.bow.trend.shafts",
                        Texts.text(
                                "plan.bow.trend.turn",
                                DateText.of(trend.from()),
                                QuantityText.ofDeviation(Angle.ofDegrees(-trend.seen())),
                                QuantityText.ofDeviation(Angle.ofDegrees(-trend.expected())))));
        return facts.under("plan.bow.trend");
    }

    /** Per six months between the last two films that lie three months and more apart. */
    private Optional<String> fallOfMda() {
        List<FilmAngle> films = ahead.films().of(side, Quantity.MDA);
        return films.isEmpty()
                ? Optional.empty()
                : films.stream()
                        .filter(film -> !film.on().isAfter(films.getLast().on().minusMonths(3)))
                        .reduce((earlier, later) -> later)
                        .map(earlier -> fall(earlier, films.getLast()));
    }

    private static String fall(FilmAngle earlier, FilmAngle last) {
        double halfYears = ChronoUnit.DAYS.between(earlier.on(), last.on()) / DAYS_OF_HALF_A_YEAR;
        double fall = (earlier.value() - last.value()) / halfYears;
        return Texts.text(
                "plan.bow.trend.fall",
                NumberText.of(last.quantity(), earlier.value()),
                DateText.of(earlier.on()),
                NumberText.of(last.quantity(), last.value()),
                DateText.of(last.on()),
                Texts.text(fall < 0 ? "plan.bow.trend.rises" : "plan.bow.trend.falls", Math.abs(fall)),
                Texts.text(fall < PHYSIOLOGICAL_FALL ? "plan.bow.trend.less" : "plan.bow.trend.as-much"));
    }
}
