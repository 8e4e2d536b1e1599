package org.espalier.course.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.H3;
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
import java.util.Optional;
import org.espalier.course.CourseSheet;
import org.espalier.kit.Texts;
import org.espalier.science.quantity.Side;

/** The facts of a course as a list, the newest film first. */
class CourseList extends Composite<Section> {

    CourseList(CourseSheet sheet) {
        getContent().addClassName("course-list");
        getContent().add(new H2(Texts.text("course.list")));
        sheet.films().forEach(film -> getContent().add(entry(film)));
    }

    private static Div entry(CourseSheet.FilmEntry film) {
        var entry = new Div();
        entry.addClassName("course-film");
        film.picture().ifPresent(picture -> entry.add(new Image(picture, "")));
        var facts = new Div(new H3(new Anchor(film.href(), film.text())));
        facts.addClassName("facts");
        if (!film.isRead()) {
            facts.add(new Paragraph(new Anchor(film.href(), Texts.text("course.unread"))));
        }
        film.compare().ifPresent(link -> facts.add(new Paragraph(new Anchor(link.href(), link.text()))));
        addTables(facts, film.rows());
        facts.add(readings(film));
        entry.add(facts);
        return entry;
    }

    /** What a limb is judged by at a glance, and folded beneath it all else that was read. */
    private static void addTables(Div facts, List<CourseSheet.Row> rows) {
        var leading = rows.stream().filter(CourseSheet.Row::isLeading).toList();
        var others = rows.stream().filter(row -> !row.isLeading()).toList();
        if (!leading.isEmpty()) {
            facts.add(table(leading));
        }
        if (!others.isEmpty()) {
            facts.add(new Details(Texts.text("course.others", others.size()), table(others)));
        }
    }

    private static NativeTable table(List<CourseSheet.Row> rows) {
        var head = new NativeTableRow(new NativeTableCell(), side(Side.RIGHT), side(Side.LEFT));
        var table = new NativeTable(head);
        rows.forEach(row -> table.add(row(row)));
        return table;
    }

    private static NativeTableHeaderCell side(Side side) {
        var header = new NativeTableHeaderCell(Texts.of(side));
        header.getElement().setAttribute("scope", "col");
        header.addClassName(side == Side.RIGHT ? "limb-right" : "limb-left");
        return header;
    }

    private static NativeTableRow row(CourseSheet.Row row) {
        var name = new NativeTableHeaderCell(row.label());
        name.getElement().setAttribute("scope", "row");
        return new NativeTableRow(name, value(row.right()), value(row.left()));
    }

    private static NativeTableCell value(Optional<CourseSheet.Value> value) {
        var cell = new NativeTableCell();
        value.ifPresent(read -> {
            cell.add(new Span(read.text()));
            read.since().ifPresent(since -> {
                var words = new Span(since);
                words.addClassNames("since", read.unchanged() ? "unchanged" : "changed");
                cell.add(words);
            });
        });
        return cell;
    }

    private static UnorderedList readings(CourseSheet.FilmEntry film) {
        var list = new UnorderedList();
        film.readings().forEach(reading -> list.add(reading(reading)));
        return list;
    }

    private static ListItem reading(CourseSheet.ReadingEntry reading) {
        var item = new ListItem(new Anchor(reading.href(), reading.text()));
        reading.superseded().ifPresent(why -> {
            item.addClassName("superseded");
            item.add(new Span(why));
        });
        return item;
    }
}
