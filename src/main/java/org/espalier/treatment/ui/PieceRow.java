package org.espalier.treatment.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.kit.DateText;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.stock.ProductText;
import org.espalier.stock.Proposal;
import org.espalier.treatment.Piece;

/** One piece: what it is, of which lot, from which shelf or why from none, and where it holds. */
final class PieceRow extends Composite<Div> {

    private static final int LOT_LENGTH = 40;

    private final Span what = new Span();
    private final Div notes = new Div();
    private final Select<Piece.Role> role;
    private final Select<Optional<Proposal>> from = new Select<>();
    private final Select<Piece.Outside> why =
            Choices.of("treatment.piece.outside", Arrays.asList(Piece.Outside.values()));
    private final TextField name = Choices.text("treatment.piece.name", 160);
    private final TextField lot = Choices.text("treatment.piece.lot", LOT_LENGTH);
    private final Div actions = new Div();
    private final PieceSource source;
    private TypedPiece typed;

    PieceRow(TypedPiece piece, PieceSource source, Runnable changed) {
        typed = piece;
        this.source = source;
        role = Choices.of("treatment.piece.role", roles(piece.role()));
        role.setValue(piece.role());
        role.addValueChangeListener(change -> set(typed.withRole(change.getValue()), changed));
        why.setValue(piece.outside());
        offerShelves();
        from.addValueChangeListener(change ->
                set(change.getValue().map(typed::from).orElseGet(() -> typed.because(why.getValue())), changed));
        why.addValueChangeListener(change -> set(typed.because(change.getValue()), changed));
        name.setValue(piece.what());
        lot.setValue(Optional.ofNullable(piece.lotNumbers()).orElse(""));
        Stream.of(name, lot)
                .forEach(field -> field.addValueChangeListener(change ->
                        set(typed.called(name.getValue(), lot.getValue().isBlank() ? null : lot.getValue()), changed)));
        name.setVisible(piece.product() == null);
        lot.setVisible(piece.product() == null);
        var fields = new Div(name, lot, role, from, why);
        fields.addClassName("piece-choices");
        actions.addClassName("links");
        getContent().addClassName("piece");
        getContent().add(what, notes, fields, actions);
        show();
    }

    void onRemove(Runnable remove) {
        actions.add(Choices.link(Texts.text("treatment.piece.remove"), remove));
    }

    TypedPiece typed() {
        return typed;
    }

    void demand(Map<Component, String> missing) {
        Problems.demand(missing, name, !name.isVisible() || !name.getValue().isBlank(), "treatment.piece.name.missing");
        Problems.demand(missing, why, !why.isVisible() || why.getValue() != null, "treatment.piece.outside.missing");
    }

    private static List<Piece.Role> roles(Piece.Role role) {
        return switch (role) {
            case METAPHYSEAL_SCREW, EPIPHYSEAL_SCREW, SCREW ->
                List.of(
                        Piece.Role.SCREW,
                        Piece.Role.EPIPHYSEAL_SCREW,
                        Piece.Role.METAPHYSEAL_SCREW,
                        Piece.Role.USED_UP);
            case BODY, USED_UP -> List.of(Piece.Role.BODY, Piece.Role.SCREW, Piece.Role.USED_UP);
        };
    }

    private void offerShelves() {
        var product = source.product(typed);
        from.setLabel(Texts.text("treatment.piece.from"));
        var shelves =
                product.map(one -> source.shelvesFor(one, typed.lotNumbers())).orElse(List.of());
        from.setItems(Stream.concat(shelves.stream().map(Optional::of), Stream.of(Optional.<Proposal>empty()))
                .toList());
        from.setItemLabelGenerator(PieceRow::text);
        var taken = shelves.stream()
                .filter(one -> one.shelf().id().equals(typed.shelf()))
                .findFirst();
        from.setValue(taken);
        from.setVisible(product.isPresent() && typed.movement() == null);
        if (from.isVisible() && taken.isEmpty()) {
            typed = typed.because(why.getValue());
        }
    }

    private static String text(Optional<Proposal> proposal) {
        return proposal.map(one -> Texts.text(
                        one.expired() ? "treatment.piece.shelf-expired" : "treatment.piece.shelf",
                        ProductText.of(one.shelf()),
                        ProductText.lots(one.line()),
                        one.line().quantity()))
                .orElseGet(() -> Texts.text("treatment.piece.no-shelf"));
    }

    private void set(TypedPiece piece, Runnable changed) {
        typed = piece;
        show();
        changed.run();
    }

    private void show() {
        what.setText(typed.product() == null ? "" : typed.what());
        why.setVisible(typed.shelf() == null);
        notes.removeAll();
        if (typed.product() != null) {
            notes.add(PageParts.paragraph("small", lots()));
        }
        if (typed.movement() != null) {
            notes.add(PageParts.paragraph("small", Texts.text("treatment.piece.taken")));
        }
        source.product(typed)
                .filter(product -> source.isHeld(product, typed.lotNumbers()))
                .ifPresent(held -> notes.add(PageParts.paragraph("harm", Texts.text("treatment.piece.held"))));
    }

    private String lots() {
        var numbers = typed.lotNumbers();
        if (numbers == null) {
            return Texts.text("treatment.lot.unknown");
        }
        var lots = Texts.text(numbers.contains(", ") ? "treatment.lot.one-of" : "treatment.lot", numbers);
        return typed.expires() == null ? lots : Texts.text("treatment.lot.until", lots, DateText.of(typed.expires()));
    }
}
