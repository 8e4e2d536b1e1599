package org.espalier.stock.ui;

import java.time.LocalDate;
import java.util.Optional;
import org.espalier.stock.CatalogueService;
import org.espalier.stock.Product;
import org.espalier.stock.ProductCode;
import org.springframework.stereotype.Component;

/** What a scanner types, or a person from a label: a code on the package, or the maker's reference. */
@Component
class Labels {

    private final CatalogueService catalogue;

    Labels(CatalogueService catalogue) {
        this.catalogue = catalogue;
    }

    /**
     * What a label says.
     *
     * @param product empty when the catalogue has none of this code
     */
    record Label(
            Optional<ProductCode> code, Optional<Product> product, Optional<String> lot, Optional<LocalDate> expires) {}

    /** Empty when it is neither a code nor a reference of the catalogue. */
    Optional<Label> read(String typed) {
        var text = typed.strip();
        if (text.matches("\\d{8}|\\d{12,14}")) {
            var code = new ProductCode(ProductCode.Scheme.GTIN, text);
            return Optional.of(
                    new Label(Optional.of(code), catalogue.byCode(code), Optional.empty(), Optional.empty()));
        }
        return catalogue.search(text, Optional.empty()).stream()
                .filter(product -> product.data().reference().equalsIgnoreCase(text))
                .findFirst()
                .map(product -> new Label(Optional.empty(), Optional.of(product), Optional.empty(), Optional.empty()));
    }
}
