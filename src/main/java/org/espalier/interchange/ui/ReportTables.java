package org.espalier.interchange.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Paragraph;
import java.util.List;
import org.espalier.interchange.FileCount;
import org.espalier.interchange.FileProblem;
import org.espalier.interchange.ImportReport;
import org.espalier.kit.Texts;

/** What a folder would do or did: a line a file, then every bad row with its place and its reason. */
final class ReportTables extends Composite<Div> {

    private static final int MOST_SHOWN = 500;

    private static final List<String> COUNTS = List.of(
            "interchange.report.file",
            "interchange.report.new",
            "interchange.report.known",
            "interchange.report.changed",
            "interchange.report.bad");
    private static final List<String> NUMBERS = List.of(
            "interchange.report.line",
            "interchange.report.new",
            "interchange.report.known",
            "interchange.report.changed",
            "interchange.report.bad");
    private static final List<String> PROBLEMS = List.of(
            "interchange.report.file",
            "interchange.report.line",
            "interchange.report.column",
            "interchange.report.reason");

    void show(ImportReport report) {
        getContent().removeAll();
        var counts = table(COUNTS, "interchange.report.counts");
        report.counts().forEach(count -> counts.add(row(count)));
        getContent().add(group(counts, "interchange.report.counts"));
        if (!report.isGood()) {
            var problems = table(PROBLEMS, "interchange.report.problems");
            report.problems().stream().limit(MOST_SHOWN).forEach(problem -> problems.add(row(problem)));
            getContent()
                    .add(
                            new H2(Texts.text("interchange.report.problems")),
                            new Paragraph(Texts.text("interchange.report.order", MOST_SHOWN)),
                            group(problems, "interchange.report.problems"));
        }
    }

    void clear() {
        getContent().removeAll();
    }

    private static NativeTable table(List<String> headings, String name) {
        var table = new NativeTable();
        table.getElement().setAttribute("aria-label", Texts.text(name));
        var row = new NativeTableRow();
        headings.forEach(key -> {
            var heading = new NativeTableHeaderCell(Texts.text(key));
            heading.getElement().setAttribute("scope", "col");
            if (NUMBERS.contains(key)) {
                heading.addClassName("number");
            }
            row.add(heading);
        });
        table.add(row);
        return table;
    }

    private static Div group(NativeTable table, String name) {
        var group = new Div(table);
        group.addClassName("report");
        group.getElement().setAttribute("tabindex", "0");
        group.getElement().setAttribute("role", "group");
        group.getElement().setAttribute("aria-label", Texts.text(name));
        return group;
    }

    private static NativeTableRow row(FileCount count) {
        var row = new NativeTableRow(head(count.file().fileName()));
        row.add(cell(count.fresh()), cell(count.known()), cell(count.changed()), bad(count.bad()));
        return row;
    }

    private static NativeTableRow row(FileProblem problem) {
        var row = new NativeTableRow(head(problem.file()));
        var column = problem.isOfWholeRow() ? Texts.text("interchange.report.whole-row") : problem.column();
        row.add(cell(problem.line()), new NativeTableCell(column), new NativeTableCell(problem.why()));
        return row;
    }

    private static NativeTableHeaderCell head(String text) {
        var head = new NativeTableHeaderCell(text);
        head.getElement().setAttribute("scope", "row");
        return head;
    }

    private static NativeTableCell cell(long number) {
        var cell = new NativeTableCell(Long.toString(number));
        cell.addClassName("number");
        return cell;
    }

    private static NativeTableCell bad(int number) {
        var cell = cell(number);
        if (number > 0) {
            cell.addClassName("harm");
        }
        return cell;
    }
}
