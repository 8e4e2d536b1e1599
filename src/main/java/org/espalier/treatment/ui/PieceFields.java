package org.espalier.treatment.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.kit.Texts;
import org.espalier.stock.Label;
import org.espalier.stock.Product;
import org.espalier.stock.ProductText;
import org.espalier.stock.Proposal;
import org.espalier.treatment.Piece;
import org.espalier.treatment.ProcedureKind;
import org.jspecify.annotations.Nullable;

/** What goes in, piece by piece: scanned, chosen from the shelves, or named because it lay on none. */
final class PieceFields extends Composite<Div> {

    private final TextField scan = new TextField(Texts.text("treatment.scan"));
    private final ComboBox<Proposal> shelves = new ComboBox<>(Texts.text("treatment.from-shelves"));
    private final UnorderedList list = new UnorderedList();
    private final List<PieceRow> rows = new ArrayList<>();
    private final PieceSource source;
    private final Runnable changed;
    private @Nullable ProcedureKind procedure;

    PieceFields(PieceSource source, Runnable changed) {
        this.source = source;
        this.changed = changed;
        scan.setHelperText(Texts.text("treatment.scan.help"));
        scan.setValueChangeMode(ValueChangeMode.ON_CHANGE);
        scan.addValueChangeListener(change -> {
            if (change.isFromClient() && !change.getValue().isBlank()) {
                take(source.read(change.getValue()));
            }
        });
        shelves.setHelperText(Texts.text("treatment.from-shelves.help"));
        shelves.setItems(query ->
                matching(query.getFilter().orElse("")).skip(query.getOffset()).limit(query.getLimit()));
        shelves.setItemLabelGenerator(PieceFields::text);
        shelves.addValueChangeListener(change -> {
            if (change.isFromClient() && change.getValue() != null) {
                take(change.getValue());
            }
        });
        list.addClassName("pieces");
        var fields = new Div(scan, shelves);
        fields.addClassName("form-fields");
        getContent().addClassName("piece-fields");
        getContent().add(fields, list, Choices.link(Texts.text("treatment.piece.other"), this::nameOne));
    }

    /** For which procedure; the fields are there when something can go in with it. */
    void procedure(@Nullable ProcedureKind kind) {
        procedure = kind;
        setVisible(kind != null && kind.takesPieces());
    }

    /** A hand scanner types where the cursor stands. */
    void focus() {
        scan.focus();
    }

    void fill(List<TypedPiece> pieces) {
        rows.clear();
        list.removeAll();
        pieces.forEach(this::add);
    }

    /** What stands here; nothing when nothing can go in. */
    List<TypedPiece> typed() {
        return isVisible() ? rows.stream().map(PieceRow::typed).toList() : List.of();
    }

    List<Piece> pieces() {
        return typed().stream().map(TypedPiece::toPiece).toList();
    }

    void demand(Map<Component, String> missing) {
        if (isVisible()) {
            rows.forEach(row -> row.demand(missing));
        }
    }

    /** The pieces in words, like ones together. */
    String inWords() {
        return typed().stream()
                .filter(piece -> piece.role() != Piece.Role.USED_UP)
                .collect(Collectors.groupingBy(TypedPiece::what, LinkedHashMap::new, Collectors.counting()))
                .entrySet()
                .stream()
                .map(some -> some.getValue() == 1
                        ? some.getKey()
                        : Texts.text("treatment.piece.times", some.getValue(), some.getKey()))
                .collect(Collectors.joining("; "));
    }

    int count() {
        return (int) typed().stream()
                .filter(piece -> piece.role() != Piece.Role.USED_UP)
                .count();
    }

    private Stream<Proposal> matching(String filter) {
        var wanted = filter.toLowerCase(Locale.ROOT);
        return source.shelves().stream()
                .filter(one -> !one.expired())
                .filter(one -> text(one).toLowerCase(Locale.ROOT).contains(wanted));
    }

    private static String text(Proposal one) {
        return Texts.text(
                "treatment.piece.on-shelf",
                ProductText.inShort(one.line().product()),
                ProductText.of(one.shelf()),
                ProductText.lots(one.line()),
                one.line().quantity());
    }

    private void take(Label label) {
        var problem = label.problem().or(() -> problem(label));
        scan.setInvalid(problem.isPresent());
        scan.setErrorMessage(problem.orElse(""));
        if (problem.isEmpty()) {
            label.product().ifPresent(product -> take(product, label));
            scan.clear();
        }
        scan.focus();
    }

    private static Optional<String> problem(Label label) {
        if (label.product().isEmpty()) {
            return Optional.of(Texts.text("treatment.scan.not-in-catalogue"));
        }
        return label.product()
                .filter(product -> !product.data().kind().isUsed())
                .map(product -> Texts.text("treatment.scan.not-used", ProductText.of(product)));
    }

    private void take(Product product, Label label) {
        var piece = PieceSource.piece(Objects.requireNonNull(procedure), product, label);
        var from = source.shelvesFor(product, piece.lotNumbers()).stream()
                .filter(one -> !one.expired() && left(one) > 0)
                .findFirst();
        add(from.map(piece::from).orElse(piece));
        changed.run();
    }

    private void take(Proposal proposal) {
        var product = proposal.line().product();
        var label =
                new Label(Optional.empty(), Optional.of(product), Optional.empty(), Optional.empty(), Optional.empty());
        add(PieceSource.piece(Objects.requireNonNull(procedure), product, label).from(proposal));
        shelves.clear();
        changed.run();
    }

    /** How many lie there beside those that stand in the form already. */
    private long left(Proposal proposal) {
        var line = proposal.line();
        return line.quantity()
                - rows.stream()
                        .map(PieceRow::typed)
                        .filter(piece -> piece.movement() == null
                                && line.shelf().equals(piece.shelf())
                                && line.product().id().equals(piece.product()))
                        .filter(piece -> line.lot()
                                .map(lot -> piece.lots().contains(lot.id()))
                                .orElse(true))
                        .count();
    }

    private void nameOne() {
        add(new TypedPiece(Piece.Role.BODY, null, "", null, null, List.of(), null, null, null));
        changed.run();
    }

    private void add(TypedPiece piece) {
        var row = new PieceRow(piece, source, changed);
        var item = new ListItem(row);
        row.onRemove(() -> {
            rows.remove(row);
            list.remove(item);
            changed.run();
        });
        rows.add(row);
        list.add(item);
    }
}
