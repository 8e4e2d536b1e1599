package org.espalier.course.internal;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.stream.Stream;
import org.espalier.course.Course;
import org.espalier.course.CourseSheet;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.kit.paper.IdentityHead;
import org.espalier.kit.paper.Ink;
import org.espalier.kit.paper.Markup;
import org.espalier.kit.paper.PaperPrinter;
import org.espalier.science.quantity.Side;
import org.w3c.dom.Document;

/** Two pages, one for each limb: who it is, the lanes over time, the films as a table, sources and cautions. */
final class CoursePaper {

    /** Those that tell where a limb stands; the others are on the screen. */
    private static final List<String> LANES = List.of("HKA", "BONY_HKA", "mLDFA", "mMPTA");

    private static final List<String> COLUMNS = List.of("HKA", "BONY_HKA", "mLDFA", "mMPTA", "JLCA", "MAD");

    /** So many films have room on a page. */
    private static final int MOST_FILMS = 10;

    private final Course course;
    private final CourseSheet sheet;
    private final LocalDateTime now;

    private CoursePaper(Course course, LocalDateTime now) {
        this.course = course;
        this.sheet = CourseSheet.of(course);
        this.now = now;
    }

    static Document of(Course course, LocalDateTime now) {
        var paper = new CoursePaper(course, now);
        var root = Markup.document()
                .with("font-family", PaperPrinter.FACE)
                .with("font-size", "9pt")
                .with("color", Ink.INK);
        var master = root.fo("layout-master-set")
                .fo("simple-page-master")
                .with("master-name", "page")
                .with("page-width", "210mm")
                .with("page-height", "297mm")
                .with("margin", "12mm 12.7mm");
        master.fo("region-body").with("margin-bottom", "22mm");
        master.fo("region-after").with("extent", "20mm");
        Stream.of(Side.values()).forEach(side -> paper.page(root, side));
        return root.whole();
    }

    private void page(Markup root, Side side) {
        var sequence = root.fo("page-sequence").with("master-reference", "page");
        foot(sequence.fo("static-content").with("flow-name", "xsl-region-after"), side);
        var body = sequence.fo("flow").with("flow-name", "xsl-region-body");
        IdentityHead.begin(body, course.child().who(), course.today());
        body.block(Texts.text("course.paper.title", Texts.of(side)))
                .with("font-size", "13pt")
                .with("font-weight", "600")
                .with("color", Ink.of(side))
                .with("space-before", "3mm");
        var films = films(side);
        if (films.isEmpty()) {
            body.block(Texts.text("course.paper.none")).with("space-before", "4mm");
            return;
        }
        CourseDrawing.draw(
                sheet.chart(),
                side,
                LANES,
                body.fo("block").with("space-before", "2mm").fo("instream-foreign-object"));
        sheet.chart().fans().stream()
                .filter(fan -> fan.track().endsWith("-" + side.letter()))
                .forEach(fan -> body.block(fan.text()).with("font-size", "8pt"));
        table(body, films, side);
        body.block(Texts.text("course.paper.unchanged"))
                .with("space-before", "1.5mm")
                .with("font-size", "8pt");
    }

    /** The films read on the side, the newest first. */
    private List<CourseSheet.FilmEntry> films(Side side) {
        return sheet.films().stream()
                .filter(film ->
                        film.rows().stream().anyMatch(row -> row.of(side).isPresent()))
                .toList();
    }

    private void table(Markup body, List<CourseSheet.FilmEntry> films, Side side) {
        var all = films.size() <= MOST_FILMS;
        body.block(all ? Texts.text("course.paper.all") : Texts.text("course.paper.latest", MOST_FILMS, films.size()))
                .with("space-before", "3mm")
                .with("font-size", "8pt");
        var table = body.fo("table")
                .with("table-layout", "fixed")
                .with("width", "100%")
                .with("space-before", "1mm")
                .with("font-size", "7.5pt");
        var head = table.fo("table-header").fo("table-row");
        cell(head, Texts.text("course.paper.day")).with("font-weight", "600");
        COLUMNS.forEach(id -> cell(head, label(id)).with("font-weight", "600"));
        var rows = table.fo("table-body");
        films.stream().limit(MOST_FILMS).forEach(film -> line(rows.fo("table-row"), film, side));
    }

    private String label(String quantity) {
        return sheet.chart().quantities().stream()
                .filter(lane -> lane.id().equals(quantity))
                .map(lane -> lane.label())
                .findFirst()
                .orElse(quantity);
    }

    private void line(Markup row, CourseSheet.FilmEntry film, Side side) {
        cell(row, film.dayAndAge());
        for (var column : COLUMNS) {
            var value = film.rows().stream()
                    .filter(one -> one.quantity().equals(column))
                    .flatMap(one -> one.of(side).stream())
                    .findFirst();
            cell(
                    row,
                    value.map(one -> (one.unchanged() ? "\u2248 " : "") + one.text())
                            .orElse(""));
        }
    }

    private void foot(Markup area, Side side) {
        var foot = area.fo("block")
                .with("font-size", "7.5pt")
                .with("color", Ink.QUIET)
                .with("border-top", "0.5pt solid " + Ink.RULE)
                .with("padding-top", "1mm");
        foot.block(Texts.text("course.paper.units") + " " + sheet.radiation());
        foot.block(Texts.text("course.caution"));
        foot.fo("block")
                .text(Texts.text(
                                "course.paper.made",
                                DateText.of(now.toLocalDate()),
                                DateTimeFormatter.ofPattern("HH:mm", Texts.language())
                                        .format(now))
                        + "\u2003" + Texts.text("course.paper.page", side.ordinal() + 1));
    }

    private static Markup cell(Markup row, String text) {
        var cell = row.fo("table-cell")
                .with("padding", "0.5mm 1mm 0.5mm 0")
                .with("border-bottom", "0.4pt solid " + Ink.RULE);
        cell.block(text);
        return cell;
    }
}
