package org.espalier.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.prognosis.Ahead;
import org.espalier.science.quantity.Side;

/** The options of one limb in one table and one chart, with what was meant and expected when they were last kept. */
record OptionsSheet(Ahead ahead, Side side, Optional<Options> options, List<SavedComparison> saved) {

    Sheet sheet() {
        var parts = new ArrayList<Sheet.Part>();
        options.ifPresentOrElse(
                found -> {
                    chart(found).ifPresent(parts::add);
                    parts.add(new Sheet.Choices(
                            Texts.text("plan.table"),
                            found.open().stream().map(found::inWords).toList()));
                    parts.add(closed(found));
                },
                () -> parts.add(new Sheet.Note(Texts.text("plan.none"))));
        kept().ifPresent(parts::add);
        return new Sheet(
                SheetKind.OPTIONS,
                ahead.prognosis().child().who(),
                ahead.today(),
                side,
                Texts.text("plan.heading", Texts.of(side)),
                parts,
                List.of(Texts.text("plan.caution")));
    }

    private static Optional<Sheet.Part> chart(Options found) {
        return OptionsDrawing.isPossible(found.open())
                ? Optional.of(new Sheet.Drawing(
                        Texts.text("plan.chart"),
                        Texts.text("plan.chart.note"),
                        page -> OptionsDrawing.draw(found.open(), page)))
                : Optional.empty();
    }

    private static Sheet.Part closed(Options found) {
        return new Sheet.Facts(
                Texts.text("plan.closed"),
                found.closed().stream()
                        .map(option -> new Sheet.Fact(
                                Texts.of(option.option()),
                                option.notNow().map(Texts::of).orElse("")))
                        .toList());
    }

    private Optional<Sheet.Part> kept() {
        return saved.stream()
                .filter(one -> one.side() == side)
                .flatMap(one -> one.intent().stream()
                        .map(intent -> new Sheet.Fact(
                                Texts.text("plan.saved.line", DateText.of(one.on()), Texts.of(side), one.by()),
                                intent.inWords())))
                .findFirst()
                .map(fact -> new Sheet.Facts(Texts.text("plan.saved.last"), List.of(fact)));
    }
}
