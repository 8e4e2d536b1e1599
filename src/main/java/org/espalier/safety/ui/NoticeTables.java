package org.espalier.safety.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Paragraph;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.espalier.access.SiteId;
import org.espalier.kit.DateText;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.safety.Carrier;
import org.espalier.safety.SiteProgress;

/** The lines of safety: hospitals in numbers, children by name, reports without one. */
final class NoticeTables {

    private NoticeTables() {}

    /** Lines under headings, in an order that is said. */
    static final class Lines<T> {

        private final Map<String, Function<T, Component>> columns = new LinkedHashMap<>();
        private final String nothing;
        private final String order;

        /**
         * @param nothing the text that says why there are no lines
         * @param order the text that says in which order they stand
         */
        Lines(String nothing, String order) {
            this.nothing = nothing;
            this.order = order;
        }

        Lines<T> show(String heading, Function<T, Component> show) {
            columns.put(heading, show);
            return this;
        }

        Lines<T> text(String heading, Function<T, String> text) {
            return show(heading, one -> new Text(text.apply(one)));
        }

        Lines<T> number(String heading, Function<T, Integer> number) {
            return text(heading, one -> String.valueOf(number.apply(one)));
        }

        Component with(List<T> lines) {
            if (lines.isEmpty()) {
                return PageParts.empty(nothing);
            }
            var said = new Paragraph(Texts.text(order));
            said.addClassName("small");
            said.setVisible(lines.size() > 1);
            var table = new NativeTable();
            table.addClassName("facts");
            var head = new NativeTableRow();
            columns.keySet().forEach(heading -> head.add(new NativeTableHeaderCell(Texts.text(heading))));
            table.getHead().add(head);
            lines.forEach(line -> table.getBody().add(row(line)));
            var parts = new Div(said, table);
            parts.addClassName("parts");
            return parts;
        }

        private NativeTableRow row(T line) {
            var row = new NativeTableRow();
            columns.forEach((heading, show) -> {
                var cell = new NativeTableCell(show.apply(line));
                cell.getElement().setAttribute("data-heading", Texts.text(heading));
                row.add(cell);
            });
            return row;
        }
    }

    static Component progress(List<SiteProgress> lines, Function<SiteId, String> site) {
        return new Lines<SiteProgress>("safety.progress.none", "safety.ordered.hospitals")
                .text("safety.hospital", one -> site.apply(one.site()))
                .number("safety.quarantined", SiteProgress::quarantined)
                .number("safety.elsewhere", SiteProgress::elsewhere)
                .number("safety.certain", SiteProgress::certain)
                .number("safety.possible", SiteProgress::possible)
                .number("safety.former", SiteProgress::former)
                .number("safety.untold", SiteProgress::untold)
                .with(lines);
    }

    static Component carriers(
            List<Carrier> lines,
            Function<Carrier, Component> name,
            Function<SiteId, String> site,
            Function<Carrier, Component> telling) {
        return new Lines<Carrier>("safety.carriers.none", "safety.ordered.carriers")
                .show("safety.child", name)
                .text("safety.carries", one -> Texts.of(one.certainty()))
                .text("safety.since", one -> DateText.of(one.since()))
                .text("safety.surgeon", Carrier::surgeon)
                .text("safety.hospital", one -> site.apply(one.site()))
                .show("safety.telling", telling)
                .with(lines);
    }
}
