package org.espalier.demo;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.stock.CatalogueService;
import org.espalier.stock.Product;
import org.espalier.stock.ProductText;
import org.espalier.treatment.Piece;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/**
 * The pieces of the latest plates of the demonstration: their lots are known, though they were used before its books
 * began.
 */
@Component
@Profile("demo")
class DemoPieces {

    private static final int KNOWN_MONTHS = 9;

    private final CatalogueService catalogue;

    DemoPieces(CatalogueService catalogue) {
        this.catalogue = catalogue;
    }

    /** A plate and two screws placed on the day; none when that is long ago, or the catalogue is empty. */
    List<Piece> of(LocalDate day, LocalDate firstDay) {
        return day.isBefore(firstDay.minusMonths(KNOWN_MONTHS))
                ? List.of()
                : Stream.of(
                                piece("DEMO-PL-16", "P16-1", Piece.Role.BODY),
                                piece("DEMO-SC-24", "S24-1", Piece.Role.EPIPHYSEAL_SCREW),
                                piece("DEMO-SC-24", "S24-2", Piece.Role.METAPHYSEAL_SCREW))
                        .flatMap(Optional::stream)
                        .toList();
    }

    private Optional<Piece> piece(String reference, String lot, Piece.Role role) {
        return product(reference)
                .map(product -> Piece.ofOutside(
                        role, product.id(), ProductText.inShort(product), lot, null, Piece.Outside.OTHER));
    }

    private Optional<Product> product(String reference) {
        return catalogue.search(reference, Optional.empty()).stream()
                .filter(product -> product.data().reference().equals(reference))
                .findFirst();
    }
}
