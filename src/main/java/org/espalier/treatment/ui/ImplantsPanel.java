package org.espalier.treatment.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import java.util.List;
import java.util.Optional;
import org.espalier.kit.DateText;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.stock.Magnet;
import org.espalier.treatment.ImplantFinding;
import org.espalier.treatment.ImplantInPlace;
import org.espalier.treatment.PieceIn;
import org.espalier.treatment.PieceOut;
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
            "treatment.implants.seen",
            "treatment.implants.magnet");

    ImplantsPanel(Treatment treatment, Desk desk, Runnable again) {
        getContent().addClassName("sheet");
        getContent().add(new H2(Texts.text("treatment.implants.in-place")));
        if (treatment.tethers().isEmpty()) {
            getContent().add(PageParts.paragraph("empty", Texts.text("treatment.implants.none")));
            getContent().add(new OtherPieces(treatment.pieces()));
            return;
        }
        var table = new NativeTable();
        table.addClassNames("facts", "stacking");
        var head = new NativeTableRow();
        HEADINGS.forEach(heading -> head.add(new NativeTableHeaderCell(Texts.text(heading))));
        head.add(new NativeTableHeaderCell());
        table.getHead().add(head);
        boolean writes = desk.mayWriteAt(treatment);
        desk.implants().of(treatment.child()).forEach(implant -> table.getBody()
                .add(row(implant, writes, () -> implant.tether()
                        .implant()
                        .ifPresent(id -> new FindingDialog(id, desk, treatment, again).open()))));
        treatment.tethers().stream().filter(Tether::isPermanent).forEach(arrest -> table.getBody()
                .add(row(ofArrest(arrest), false, () -> {})));
        getContent().add(table, PageParts.caution("treatment.implants.magnet-caution"));
        var child = treatment.child().value();
        var links = new Div(new Anchor(Urls.visits(child), Texts.text("treatment.implants.card")));
        if (isBroken(treatment) && desk.mayWriteAt(treatment)) {
            links.add(new Anchor(Urls.incidents(child), Texts.text("treatment.implants.incidents")));
        }
        links.addClassName("links");
        getContent().add(links);
        getContent().add(new OtherPieces(treatment.pieces()));
    }

    /** What broke is reported, with its lot. */
    private static boolean isBroken(Treatment treatment) {
        return treatment.findings().facts().stream().anyMatch(one -> one.seen() == ImplantFinding.Seen.BROKEN);
    }

    private static ImplantInPlace ofArrest(Tether arrest) {
        return new ImplantInPlace(arrest, List.of(), List.of(), List.of(), false, Magnet.NOT_KNOWN);
    }

    private static NativeTableRow row(ImplantInPlace implant, boolean writes, Runnable seen) {
        var tether = implant.tether();
        var where = TreatmentText.place(
                tether.physis().side(),
                Optional.of(tether.physis()),
                tether.side().orElse(null));
        var row = new NativeTableRow();
        row.add(cell(0, Choices.limb(tether.physis().side(), where)));
        row.add(cell(1, what(implant)));
        row.add(cell(
                2,
                text(tether.to()
                        .map(to -> Texts.text("treatment.from-to", DateText.of(tether.from()), DateText.of(to)))
                        .orElseGet(() -> DateText.of(tether.from())))));
        row.add(cell(3, text(tether.isIn() ? Texts.of(tether.hold()) : Texts.text("treatment.implants.out"))));
        row.add(cell(4, seen(implant)));
        row.add(cell(
                5,
                text(
                        tether.isIn() && !tether.isPermanent()
                                ? Texts.of(implant.magnet())
                                : Texts.text("treatment.implants.nothing-in"))));
        var actions = new NativeTableCell();
        if (writes && tether.implant().isPresent()) {
            actions.add(Choices.link(Texts.text("treatment.seen.new"), seen));
        }
        row.add(actions);
        return row;
    }

    /** What it is in words, then its pieces with their lots, then what came out and where that went. */
    private static Component what(ImplantInPlace implant) {
        var tether = implant.tether();
        var what = new Div();
        if (implant.pieces().isEmpty() || tether.elsewhere()) {
            what.add(text(
                    tether.elsewhere() ? Texts.text("treatment.implants.elsewhere", tether.what()) : tether.what()));
        }
        TreatmentText.of(implant.pieces().stream().map(PieceIn::piece).toList())
                .forEach(line -> what.add(PageParts.paragraph("piece-in", line)));
        if (implant.pieces().stream().anyMatch(PieceIn::maybeOut)) {
            what.add(PageParts.paragraph("soon", Texts.text("treatment.piece.maybe-out")));
        }
        implant.removed().forEach(out -> what.add(PageParts.paragraph("small", out(out))));
        return what;
    }

    /** What came out, when, and where it went. */
    static String out(PieceOut out) {
        return Texts.text(
                "treatment.piece.out",
                TreatmentText.of(out.piece()),
                DateText.of(out.on()),
                out.fate() == null ? Choices.notRecorded() : Texts.of(out.fate()));
    }

    /** What was written down of it, and what readers said of its screws. */
    private static Component seen(ImplantInPlace implant) {
        var seen = new Div(text(TreatmentText.seen(implant.tether())));
        implant.sightings().forEach(one -> seen.add(PageParts.paragraph("small", TreatmentText.of(one))));
        if (implant.shared()) {
            seen.add(PageParts.paragraph("small", Texts.text("treatment.sighting.shared")));
        }
        if (implant.isBrokenByReadingAlone()) {
            seen.add(PageParts.paragraph("soon", Texts.text("treatment.sighting.broken")));
        }
        return seen;
    }

    private static Span text(String text) {
        return new Span(text);
    }

    private static NativeTableCell cell(int heading, Component content) {
        var cell = new NativeTableCell(content);
        cell.getElement().setAttribute("data-heading", Texts.text(HEADINGS.get(heading)));
        return cell;
    }
}
