package org.espalier.safety.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.espalier.access.SiteId;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.safety.Carrier;
import org.espalier.safety.SiteProgress;

/** The lines of a notice: hospitals in numbers, children by name. */
final class NoticeTables {

    private NoticeTables() {}

    static Component progress(List<SiteProgress> lines, Function<SiteId, String> site) {
        Map<String, Function<SiteProgress, Component>> columns = new LinkedHashMap<>();
        columns.put("safety.hospital", one -> new Text(site.apply(one.site())));
        columns.put("safety.quarantined", one -> number(one.quarantined()));
        columns.put("safety.elsewhere", one -> number(one.elsewhere()));
        columns.put("safety.certain", one -> number(one.certain()));
        columns.put("safety.possible", one -> number(one.possible()));
        columns.put("safety.former", one -> number(one.former()));
        columns.put("safety.untold", one -> number(one.untold()));
        return table(columns, lines, "safety.progress.none");
    }

    static Component carriers(
            List<Carrier> lines, Function<Carrier, Component> name, Function<Carrier, Component> telling) {
        Map<String, Function<Carrier, Component>> columns = new LinkedHashMap<>();
        columns.put("safety.child", name);
        columns.put("safety.carries", one -> new Text(Texts.of(one.certainty())));
        columns.put("safety.since", one -> new Text(DateText.of(one.since())));
        columns.put("safety.surgeon", one -> new Text(one.surgeon()));
        columns.put("safety.telling", telling);
        return table(columns, lines, "safety.carriers.none");
    }

    private static Component number(int number) {
        return new Text(String.valueOf(number));
    }

    private static <T> Component table(Map<String, Function<T, Component>> columns, List<T> lines, String nothing) {
        if (lines.isEmpty()) {
            var empty = new Div(Texts.text(nothing));
            empty.addClassName("empty");
            return empty;
        }
        var table = new NativeTable();
        table.addClassName("facts");
        var head = new NativeTableRow();
        columns.keySet().forEach(heading -> head.add(new NativeTableHeaderCell(Texts.text(heading))));
        table.getHead().add(head);
        for (var line : lines) {
            var row = new NativeTableRow();
            columns.forEach((heading, show) -> {
                var cell = new NativeTableCell(show.apply(line));
                cell.getElement().setAttribute("data-heading", Texts.text(heading));
                row.add(cell);
            });
            table.getBody().add(row);
        }
        return table;
    }
}
