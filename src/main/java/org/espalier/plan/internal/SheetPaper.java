package org.espalier.plan.internal;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.espalier.kit.DateText;
import org.espalier.kit.IdentityBanner;
import org.espalier.kit.Texts;
import org.espalier.kit.paper.IdentityHead;
import org.espalier.kit.paper.Ink;
import org.espalier.kit.paper.Markup;
import org.espalier.kit.paper.PaperPrinter;
import org.espalier.plan.Sheet;
import org.espalier.plan.SheetKind;
import org.w3c.dom.Document;

/** A sheet of the desk on paper; its cautions stand on every page. */
final class SheetPaper {

    private static final int NARROW = 14;
    private static final int WIDE = 70;
    private static final List<String> NAMES_AND_FACTS = List.of("28%", "72%");

    /** A table of so few rows is not torn apart. */
    private static final int SHORT = 12;

    private final Sheet sheet;
    private final LocalDateTime now;

    private SheetPaper(Sheet sheet, LocalDateTime now) {
        this.sheet = sheet;
        this.now = now;
    }

    static Document of(Sheet sheet, PaperSize size, LocalDateTime now) {
        var paper = new SheetPaper(sheet, now);
        var root = Markup.document()
                .with("font-family", PaperPrinter.FACE)
                .with("font-size", "9pt")
                .with("color", Ink.INK);
        var master = root.fo("layout-master-set")
                .fo("simple-page-master")
                .with("master-name", "page")
                .with("page-width", lies(sheet) ? size.height() : size.width())
                .with("page-height", lies(sheet) ? size.width() : size.height())
                .with("margin", "12mm 14mm");
        master.fo("region-body").with("margin-bottom", foot(sheet));
        master.fo("region-after").with("extent", foot(sheet));
        paper.page(root);
        return root.whole();
    }

    /** Five columns need the long side of the paper. */
    private static boolean lies(Sheet sheet) {
        return sheet.kind() == SheetKind.OPTIONS;
    }

    private static String foot(Sheet sheet) {
        return 12 + 4 * sheet.cautions().size() + "mm";
    }

    private void page(Markup root) {
        var sequence = root.fo("page-sequence").with("master-reference", "page");
        foot(sequence.fo("static-content").with("flow-name", "xsl-region-after"));
        var body = sequence.fo("flow").with("flow-name", "xsl-region-body");
        IdentityHead.begin(body, sheet.who(), sheet.today());
        body.block(sheet.title())
                .with("font-size", "13pt")
                .with("font-weight", "600")
                .with("space-before", "3mm");
        sheet.parts().forEach(part -> part(body, part));
    }

    private static void part(Markup body, Sheet.Part part) {
        switch (part) {
            case Sheet.Facts(var heading, var facts) -> {
                heading(body, heading);
                table(
                        body,
                        List.of(),
                        NAMES_AND_FACTS,
                        facts.stream()
                                .map(fact -> List.of(fact.name(), fact.value()))
                                .toList());
            }
            case Sheet.Table(var heading, var head, var rows) -> {
                heading(body, heading);
                table(body, head, List.of(), rows);
            }
            case Sheet.Choices(var heading, var options) -> {
                heading(body, heading);
                ChoicesPaper.table(body, options);
            }
            case Sheet.Note(var text) -> body.block(text).with("space-before", "1.5mm");
            case Sheet.Drawing drawing -> drawing(body, drawing);
            case Sheet.Paper(var drawing) -> drawing(body, drawing);
            case Sheet.Offer(var heading, var numbers) -> {
                heading(body, heading);
                numbers.forEach(number -> body.block(number.words()).with("space-before", "0.8mm"));
            }
        }
    }

    /** With its words on one page. */
    private static void drawing(Markup page, Sheet.Drawing drawing) {
        var body = page.fo("block").with("keep-together.within-page", "always");
        heading(body, drawing.heading());
        drawing.draw()
                .accept(body.fo("block")
                        .with("space-before", "1.5mm")
                        .fo("instream-foreign-object")
                        .with("content-width", "scale-down-to-fit")
                        .with("width", "100%"));
        body.block(drawing.inWords()).with("font-size", "8pt").with("color", Ink.QUIET);
    }

    private static void heading(Markup body, String heading) {
        body.block(heading)
                .with("font-size", "10.5pt")
                .with("font-weight", "600")
                .with("space-before", "3.5mm")
                .with("keep-with-next.within-page", "always");
    }

    /** @param widths of the columns; empty for as much as their texts ask for */
    private static void table(Markup body, List<String> head, List<String> widths, List<List<String>> rows) {
        if (rows.isEmpty()) {
            return;
        }
        var table = body.fo("table")
                .with("table-layout", "fixed")
                .with("width", "100%")
                .with("space-before", "1mm")
                .with("font-size", "8.5pt");
        if (rows.size() <= SHORT) {
            table.with("keep-together.within-page", "always");
        }
        (widths.isEmpty() ? shares(head, rows) : widths)
                .forEach(width -> table.fo("table-column").with("column-width", width));
        if (!head.isEmpty()) {
            var row = table.fo("table-header").fo("table-row");
            head.forEach(text -> cell(row, text).with("font-weight", "600"));
        }
        var lines = table.fo("table-body");
        rows.forEach(cells -> {
            var row = lines.fo("table-row").with("keep-together.within-page", "always");
            cells.forEach(text -> cell(row, text));
        });
    }

    /** Columns as wide as their longest texts ask for, none under a tenth of what the widest may take. */
    private static List<String> shares(List<String> head, List<List<String>> rows) {
        int columns = rows.stream().mapToInt(List::size).max().orElse(head.size());
        return IntStream.range(0, columns)
                .map(column -> Stream.concat(Stream.of(head), rows.stream())
                        .filter(row -> column < row.size())
                        .mapToInt(row -> row.get(column).length())
                        .max()
                        .orElse(0))
                .mapToObj(longest -> "proportional-column-width(" + Math.clamp(longest, NARROW, WIDE) + ")")
                .toList();
    }

    private static Markup cell(Markup row, String text) {
        var cell = row.fo("table-cell")
                .with("padding", "0.6mm 1.5mm 0.6mm 0")
                .with("border-bottom", "0.4pt solid " + Ink.RULE);
        cell.block(text);
        return cell;
    }

    private void foot(Markup area) {
        var foot = area.fo("block")
                .with("font-size", "7.5pt")
                .with("color", Ink.QUIET)
                .with("border-top", "0.5pt solid " + Ink.RULE)
                .with("padding-top", "1mm");
        sheet.cautions().forEach(foot::block);
        var time = DateTimeFormatter.ofPattern("HH:mm", Texts.language()).format(now);
        foot.block(Texts.text("plan.paper.made", DateText.of(now.toLocalDate()), time));
        var whose =
                foot.block(Texts.text("plan.paper.whose", IdentityBanner.name(sheet.who()), sheet.title()) + "\u2003");
        whose.with("font-weight", "600").fo("page-number");
    }
}
