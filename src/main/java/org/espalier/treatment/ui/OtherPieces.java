package org.espalier.treatment.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.espalier.kit.DateText;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.treatment.PieceIn;
import org.espalier.treatment.PieceLedger;
import org.espalier.treatment.PieceOut;
import org.espalier.treatment.TreatmentText;

/**
 * What belongs to no implant of a physis: frames, what holds a cut bone, whatever else was left in; and what came out
 * of it.
 */
final class OtherPieces extends Composite<Div> {

    OtherPieces(PieceLedger pieces) {
        list("treatment.implants.others", pieces.in().stream().filter(one -> one.implant() == null), OtherPieces::line);
        list(
                "treatment.implants.others-out",
                pieces.out().stream().filter(one -> one.implant() == null),
                OtherPieces::line);
    }

    private <T> void list(String heading, Stream<T> pieces, Function<T, Component> line) {
        var lines = pieces.map(line).toList();
        if (!lines.isEmpty()) {
            getContent().add(new H3(Texts.text(heading)));
            lines.forEach(getContent()::add);
        }
    }

    private static Component line(PieceIn one) {
        var line = new Div(
                Choices.limb(one.side(), TreatmentText.place(one.side(), Optional.ofNullable(one.physis()), null)),
                PageParts.paragraph(
                        "small",
                        Texts.text("treatment.piece.since", TreatmentText.of(one.piece()), DateText.of(one.on()))));
        if (one.maybeOut()) {
            line.add(PageParts.paragraph("soon", Texts.text("treatment.piece.maybe-out-fixation")));
        }
        return line;
    }

    private static Component line(PieceOut one) {
        return new Div(
                Choices.limb(one.side(), TreatmentText.place(one.side(), Optional.ofNullable(one.physis()), null)),
                PageParts.paragraph("small", ImplantsPanel.out(one)));
    }
}
