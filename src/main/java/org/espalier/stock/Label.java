package org.espalier.stock;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What a label says, as far as it could be read.
 *
 * @param code of the product; empty when the label has none, or a reference was typed
 * @param product empty when the catalogue has none of this code
 * @param lot as printed
 * @param expires the last day of use
 * @param problem what is wrong with the code and what to do, in words; empty when it was read
 */
public record Label(
        Optional<ProductCode> code,
        Optional<Product> product,
        Optional<String> lot,
        Optional<LocalDate> expires,
        Optional<String> problem) {

    static Label of(Product product) {
        return new Label(Optional.empty(), Optional.of(product), Optional.empty(), Optional.empty(), Optional.empty());
    }

    static Label unread(String problem) {
        return new Label(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(problem));
    }
}
