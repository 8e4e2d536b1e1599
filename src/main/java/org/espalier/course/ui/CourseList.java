package org.espalier.course.ui;

import com.vaadin.flow.component.Composite;
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
import org.espalier.course.CourseSheet;
import org.espalier.kit.Texts;
import org.espalier.science.quantity.Side;

/** The facts of a course as a list, the newest film first. */
class CourseList extends Composite<Section> {

    CourseList(CourseSheet sheet) {
        getContent().addClassName("course-list");
        getContent().add(new H2(Texts.text("course.list")));
        if (sheet.films().isEmpty()) {
            getContent().add(new Paragraph(Texts.text("course.no-films")));
        }
        sheet.films().forEach(film -> getContent().add(entry(film)));
    }

    private static Div entry(CourseSheet.FilmEntry film) {
        var entry = new Div();
        entry.addClassName("course-film");
        film.picture().ifPresent(picture -> entry.add(new Image(picture, "")));
        var facts = new Div(new H3(new Anchor(film.href(), film.text())));
        facts.addClassName("facts");
        if (!film.isRead()) {
            facts.add(new Anchor(film.href(), Texts.text("course.unread")));
        }
        if (!film.rows().isEmpty()) {
            facts.add(table(film));
        }
        facts.add(readings(film));
        entry.add(facts);
        return entry;
    }

    private static NativeTable table(CourseSheet.FilmEntry film) {
        var table = new NativeTable();
        film.rows().forEach(row -> table.add(row(row)));
        return table;
    }

    private static NativeTableRow row(CourseSheet.Row row) {
        var side = new NativeTableCell(Texts.of(row.side()));
        side.addClassName(row.side() == Side.RIGHT ? "limb-right" : "limb-left");
        var name = new NativeTableHeaderCell(row.label());
        name.getElement().setAttribute("scope", "row");
        var since = new NativeTableCell(row.since().orElse(""));
        since.addClassNames("since", row.unchanged() ? "unchanged" : "changed");
        return new NativeTableRow(side, name, new NativeTableCell(row.value()), since);
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
