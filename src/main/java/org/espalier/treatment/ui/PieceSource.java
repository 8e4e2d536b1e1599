package org.espalier.treatment.ui;

import java.util.List;
import java.util.Optional;
import org.espalier.access.SiteId;
import org.espalier.stock.CatalogueService;
import org.espalier.stock.Label;
import org.espalier.stock.LabelService;
import org.espalier.stock.Lot;
import org.espalier.stock.Product;
import org.espalier.stock.ProductText;
import org.espalier.stock.Proposal;
import org.espalier.stock.UseService;
import org.espalier.treatment.Piece;
import org.espalier.treatment.ProcedureKind;
import org.jspecify.annotations.Nullable;

/** Where pieces come from: labels that are scanned, and the shelves of the hospital. */
record PieceSource(LabelService labels, UseService uses, CatalogueService catalogue, SiteId site) {

    /** All that may be taken, trays first and then what expires first. */
    List<Proposal> shelves() {
        return uses.implants(site);
    }

    Label read(String scanned) {
        return labels.read(scanned);
    }

    /** Where the product, of the lot when one alone is known, may be taken from; the best first. */
    List<Proposal> shelvesFor(Product product, @Nullable String lots) {
        return uses.proposals(site, product.id()).stream()
                .filter(one -> lots == null || lots.contains(", ") || holds(one, lots))
                .sorted(Proposal.AT_HAND)
                .toList();
    }

    private static boolean holds(Proposal proposal, String lot) {
        var line = proposal.line();
        return line.lot().map(List::of).orElseGet(line::possible).stream()
                .anyMatch(one -> one.number().equals(lot));
    }

    /** Whether a safety notice holds the lot. */
    boolean isHeld(Product product, @Nullable String lot) {
        return lot != null
                && catalogue.lots(product.id()).stream()
                        .filter(one -> one.number().equals(lot))
                        .anyMatch(Lot::held);
    }

    Optional<Product> product(TypedPiece piece) {
        return Optional.ofNullable(piece.product()).flatMap(catalogue::product);
    }

    /** What was read, before it is known from which shelf it comes. */
    static TypedPiece piece(ProcedureKind procedure, Product product, Label label) {
        return new TypedPiece(
                Piece.Role.of(procedure, product.data().kind()),
                product.id(),
                ProductText.inShort(product),
                label.lot().orElse(null),
                label.expires().orElse(null),
                List.of(),
                null,
                null,
                null);
    }
}
