package org.espalier.plan.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.DescriptionList;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Image;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.List;
import java.util.function.Consumer;
import org.espalier.kit.Texts;
import org.espalier.kit.paper.Drawings;
import org.espalier.plan.Sheet;

/** A sheet on the screen. */
class SheetBody extends Composite<Div> {

    /** @param take what is done with a number that is taken over */
    SheetBody(Sheet sheet, Consumer<Sheet.Offered> take) {
        getContent().addClassName("plan-sheet");
        sheet.parts().stream().filter(part -> !(part instanceof Sheet.Paper)).forEach(part -> getContent()
                .add(part(part, take)));
        var cautions = new Section();
        cautions.addClassNames("caution");
        sheet.cautions().forEach(caution -> cautions.add(new Paragraph(caution)));
        getContent().add(cautions);
    }

    private static Component part(Sheet.Part part, Consumer<Sheet.Offered> take) {
        return switch (part) {
            case Sheet.Facts(var heading, var facts) -> {
                var list = new DescriptionList();
                facts.forEach(fact ->
                        list.add(new DescriptionList.Term(fact.name()), new DescriptionList.Description(fact.value())));
                yield facts.isEmpty() ? new H2(heading) : new Section(new H2(heading), list);
            }
            case Sheet.Table(var heading, var head, var rows) -> table(heading, head, rows);
            case Sheet.Choices(var heading, var options) -> new OptionsTable(heading, options);
            case Sheet.Note(var text) -> new Paragraph(text);
            case Sheet.Drawing drawing -> drawing(drawing);
            case Sheet.Paper(var drawing) -> drawing(drawing);
            case Sheet.Offer(var heading, var numbers) -> {
                var list = new UnorderedList();
                list.addClassName("plan-offer");
                numbers.forEach(number -> list.add(offered(number, take)));
                yield new Section(new H2(heading), list);
            }
        };
    }

    private static Component drawing(Sheet.Drawing drawing) {
        var picture = new Image(Drawings.address(drawing.draw()), drawing.inWords());
        picture.addClassName("plan-drawing");
        return new Section(
                new H2(drawing.heading()), scrolled(drawing.heading(), picture), new Paragraph(drawing.inWords()));
    }

    private static ListItem offered(Sheet.Offered number, Consumer<Sheet.Offered> take) {
        var use = new Button(Texts.text("plan.read.use", number.value()), click -> take.accept(number));
        use.setAriaLabel(Texts.text("plan.read.use.of", number.words()));
        return new ListItem(new Span(number.words()), use);
    }

    /** On a narrow screen each row is a card, its cells under the names of their columns. */
    private static Component table(String heading, List<String> head, List<List<String>> rows) {
        var table = new NativeTable();
        table.addClassName("plan-table");
        table.getElement().setAttribute("role", "table");
        if (!head.isEmpty()) {
            var row = role(new NativeTableRow(), "row");
            head.forEach(text -> row.add(header(text, "col")));
            table.add(row);
        }
        rows.forEach(cells -> table.add(row(head, cells)));
        return new Section(new H2(heading), scrolled(heading, table));
    }

    private static NativeTableRow row(List<String> head, List<String> cells) {
        var row = role(new NativeTableRow(), "row");
        row.add(
                cells.size() > 1
                        ? header(cells.getFirst(), "row")
                        : role(new NativeTableCell(cells.getFirst()), "cell"));
        for (int i = 1; i < cells.size(); i++) {
            var cell = role(new NativeTableCell(cells.get(i)), "cell");
            if (i < head.size() && !cells.get(i).isEmpty()) {
                cell.getElement().setAttribute("data-label", head.get(i));
            }
            row.add(cell);
        }
        return row;
    }

    private static <T extends Component> T role(T component, String role) {
        component.getElement().setAttribute("role", role);
        return component;
    }

    private static Component scrolled(String name, Component wide) {
        var scroll = new Div(wide);
        scroll.addClassName("plan-scroll");
        scroll.getElement().setAttribute("tabindex", "0");
        scroll.getElement().setAttribute("role", "group");
        scroll.getElement().setAttribute("aria-label", name);
        return scroll;
    }

    private static NativeTableHeaderCell header(String text, String scope) {
        var header = new NativeTableHeaderCell(text);
        header.getElement().setAttribute("scope", scope);
        return role(header, scope.equals("row") ? "rowheader" : "columnheader");
    }
}
