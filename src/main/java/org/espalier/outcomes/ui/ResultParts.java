package org.espalier.outcomes.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.kit.LineTable;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.outcomes.After;
import org.espalier.outcomes.Came;
import org.espalier.outcomes.LeftOut;
import org.espalier.outcomes.Looks;
import org.espalier.outcomes.Results;
import org.espalier.outcomes.internal.CurveDrawing;
import org.espalier.science.statistics.CumulativeIncidence;

/** The parts of a hospital's results. */
final class ResultParts {

    private static final List<Integer> MONTHS = List.of(12, 24, 36);

    private ResultParts() {}

    /** The answer before its parts. */
    static Section inShort(Results results) {
        var figures = new UnorderedList();
        Stream.of(
                        told("outcomes.short.straight", OutcomeText.of(results.letGo(Came.STRAIGHT))),
                        told("outcomes.short.overshot", OutcomeText.of(results.letGo(Came.OVERSHOT))),
                        told("outcomes.short.drifted", OutcomeText.of(results.drifted())),
                        told(
                                "outcomes.short.in-time",
                                OutcomeText.of(results.looks().inTime())))
                .map(ListItem::new)
                .forEach(figures::add);
        figures.addClassName("in-short");
        var span = results.span();
        return PageParts.part(
                Texts.text("outcomes.short", String.valueOf(span.from()), String.valueOf(span.to())),
                figures,
                PageParts.said(
                        Texts.text("outcomes.counted", results.plates().size(), results.limbs(), results.children())),
                PageParts.said(Texts.text("outcomes.followed")),
                PageParts.said(leftOut(results)));
    }

    private static String told(String what, String figure) {
        return Texts.text("outcomes.short.told", Texts.text(what), figure);
    }

    private static String leftOut(Results results) {
        var why = Arrays.stream(LeftOut.values())
                .map(one -> Texts.text(one, results.leftOut().getOrDefault(one, 0)))
                .collect(Collectors.joining(" "));
        return Texts.text("outcomes.left-out", why);
    }

    static Component curve(Results results) {
        return results.curve()
                .map(curve -> PageParts.part(
                        Texts.text("outcomes.curve"),
                        OutcomePage.drawing(page -> CurveDrawing.draw(results, page), Texts.text("outcomes.curve.alt")),
                        table(results, curve),
                        PageParts.said(Texts.text("outcomes.running", results.running())),
                        PageParts.said(Texts.text("outcomes.curve.how"))))
                .orElseThrow();
    }

    private static Component table(Results results, CumulativeIncidence<Came> curve) {
        var table = new LineTable<Came>("outcomes.results.none")
                .text("outcomes.end", Texts::of)
                .number("outcomes.ended", came -> String.valueOf(results.ended(came)));
        MONTHS.forEach(month ->
                table.under(Texts.text("outcomes.by-month", month, curve.atRisk(month)), came -> curve.at(came, month)
                        .map(OutcomeText::of)
                        .orElseGet(() -> Texts.text("outcomes.not-followed"))));
        return table.ordered("outcomes.ordered.ends").with(List.of(Came.values()));
    }

    static Component letGo(Results results) {
        var table = new LineTable<Came>("outcomes.results.none")
                .text("outcomes.stood", Texts::of)
                .number("outcomes.share-of", came -> OutcomeText.of(results.letGo(came)))
                .with(Stream.of(Came.values()).filter(Came::isMeasured).toList());
        var past = results.pastTarget();
        var far = results.medianPastTarget()
                .map(median -> Texts.text("outcomes.past", past.size(), median, past.getFirst(), past.getLast()))
                .orElseGet(() -> Texts.text("outcomes.past.none"));
        return PageParts.part(
                Texts.text("outcomes.let-go"),
                table,
                PageParts.said(far),
                PageParts.said(Texts.text("outcomes.let-go.how", results.ended(Came.NOT_FILMED))));
    }

    static Component after(Results results) {
        return Figure.part(
                "outcomes.after",
                new Figure("drifted", OutcomeText.of(results.drifted())),
                Figure.count("after.not-filmed", results.after(After.NOT_FILMED)),
                Figure.count("after.again", results.after(After.HELD_AGAIN)),
                Figure.count("after.not-due", results.after(After.NOT_DUE)));
    }

    static Component looks(Looks looks) {
        return Figure.part(
                "outcomes.looks",
                new Figure("in-time", OutcomeText.of(looks.inTime())),
                new Figure("late", OutcomeText.days(looks.medianLate())),
                new Figure("worst", OutcomeText.days(looks.worstTenthLate())),
                Figure.count("away", looks.away()),
                Figure.count("looks.left-out", looks.leftOut()));
    }

    static Component complications(Results results) {
        return Figure.part(
                "outcomes.harm",
                new Figure("complications", OutcomeText.of(results.complications())),
                new Figure("back", OutcomeText.of(results.back())));
    }
}
