package org.espalier.stock;

import java.util.List;
import java.util.Optional;

/**
 * So many pieces of a product on a shelf.
 *
 * @param lot their lot; empty where the lots are mixed, or none is kept
 * @param possible the lots they may be of where these are mixed
 */
public record ShelfLine(ShelfId shelf, Product product, Optional<Lot> lot, List<Lot> possible, int quantity) {

    public ShelfLine {
        possible = List.copyOf(possible);
    }
}
