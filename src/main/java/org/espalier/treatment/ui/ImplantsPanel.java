package org.espalier.treatment.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.treatment.Tether;
import org.espalier.treatment.Treatment;
import org.espalier.treatment.TreatmentText;

/** What is in place, where, since when, how it holds and how it was last seen; and what has come out. */
final class ImplantsPanel extends Composite<Section> {

    private static final List<String> HEADINGS = List.of(
            "treatment.implants.where",
            "treatment.implants.what",
            "treatment.implants.since",
            "treatment.implants.hold",
            "treatment.implants.seen");

    ImplantsPanel(Treatment treatment, Desk desk, Runnable again) {
        getContent().addClassName("sheet");
        getContent().add(new H2(Texts.text("treatment.implants.in-place")));
        if (treatment.tethers().isEmpty()) {
            getContent().add(Choices.paragraph("empty", Texts.text("treatment.implants.none")));
            return;
        }
        var table = new NativeTable();
        table.addClassNames("facts", "stacking");
        var head = new NativeTableRow();
        HEADINGS.forEach(heading -> head.add(new NativeTableHeaderCell(Texts.text(heading))));
        head.add(new NativeTableHeaderCell());
        table.getHead().add(head);
        boolean writes = desk.mayWriteAt(treatment);
        treatment.tethers().reversed().stream()
                .sorted(Comparator.comparing(tether -> !tether.isIn()))
                .forEach(tether -> table.getBody().add(row(tether, writes, () -> tether.implant()
                        .ifPresent(implant -> new FindingDialog(implant, desk, treatment, again).open()))));
        getContent().add(table);
    }

    private static NativeTableRow row(Tether tether, boolean writes, Runnable seen) {
        var where = TreatmentText.place(
                tether.physis().side(),
                Optional.of(tether.physis()),
                tether.side().orElse(null));
        var row = new NativeTableRow();
        row.add(cell(0, Choices.limb(tether.physis().side(), where)));
        row.add(cell(
                1,
                text(tether.elsewhere() ? Texts.text("treatment.implants.elsewhere", tether.what()) : tether.what())));
        row.add(cell(
                2,
                text(tether.to()
                        .map(to -> Texts.text("treatment.from-to", DateText.of(tether.from()), DateText.of(to)))
                        .orElseGet(() -> DateText.of(tether.from())))));
        row.add(cell(3, text(tether.isIn() ? Texts.of(tether.hold()) : Texts.text("treatment.implants.out"))));
        row.add(cell(4, text(TreatmentText.seen(tether))));
        var actions = new NativeTableCell();
        if (writes && tether.implant().isPresent()) {
            actions.add(Choices.link(Texts.text("treatment.seen.new"), seen));
        }
        row.add(actions);
        return row;
    }

    private static Component text(String text) {
        return new Span(text);
    }

    private static NativeTableCell cell(int heading, Component content) {
        var cell = new NativeTableCell(content);
        cell.getElement().setAttribute("data-heading", Texts.text(HEADINGS.get(heading)));
        return cell;
    }
}
