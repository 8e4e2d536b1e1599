package org.espalier.followup.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.Key;
import com.vaadin.flow.component.Shortcuts;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.OrderedList;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.espalier.access.Site;
import org.espalier.access.SiteId;
import org.espalier.followup.RecallLine;
import org.espalier.kit.Texts;
import org.espalier.platform.Drafts;

/** The recall, the worst harm of waiting first. The arrow keys go from child to child. */
final class RecallList extends Composite<Div> {

    private final OrderedList list = new OrderedList();
    private final Div empty = new Div(Texts.text("followup.recall.empty"));
    private final List<RecallRow> rows = new ArrayList<>();
    private final transient Drafts drafts;
    private final transient RecallRow.Deeds deeds;
    private int current = -1;

    RecallList(Drafts drafts, RecallRow.Deeds deeds) {
        this.drafts = drafts;
        this.deeds = deeds;
        list.addClassName("recall-lines");
        empty.addClassName("empty");
        getContent().add(empty, list);
        Shortcuts.addShortcutListener(list, () -> move(1), Key.ARROW_DOWN).listenOn(list);
        Shortcuts.addShortcutListener(list, () -> move(-1), Key.ARROW_UP).listenOn(list);
    }

    void show(List<RecallLine> lines, List<Site> sites) {
        list.removeAll();
        rows.clear();
        current = -1;
        append(lines, sites);
    }

    void append(List<RecallLine> lines, List<Site> sites) {
        Map<SiteId, Site> byId = sites.stream().collect(Collectors.toMap(Site::id, Function.identity()));
        for (var line : lines) {
            int place = rows.size();
            var row =
                    new RecallRow(line, sites.size() > 1 ? byId.get(line.visit().site()) : null, drafts, deeds, () -> {
                        current = place;
                    });
            rows.add(row);
            list.add(row);
        }
        list.setVisible(!rows.isEmpty());
        empty.setVisible(rows.isEmpty());
    }

    /** Puts the keyboard where it was before something was written down: the next child came up when one left. */
    void goOn(int place) {
        if (!rows.isEmpty()) {
            current = Math.clamp(place, 0, rows.size() - 1);
            rows.get(current).focus();
        }
    }

    /** The place of the child last looked at. */
    int place() {
        return current;
    }

    private void move(int by) {
        goOn(current + by);
    }
}
