package org.espalier.stock;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.espalier.access.CurrentStaff;
import org.espalier.platform.Ids;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The network's products and their lots. */
@Service
@Transactional
public class CatalogueService {

    private static final int SHOWN = 100;

    private final JdbcProductRepository products;
    private final JdbcLotRepository lots;
    private final CurrentStaff currentStaff;
    private final Ids ids;
    private final Clock clock;

    CatalogueService(
            JdbcProductRepository products, JdbcLotRepository lots, CurrentStaff currentStaff, Ids ids, Clock clock) {
        this.products = products;
        this.lots = lots;
        this.currentStaff = currentStaff;
        this.ids = ids;
        this.clock = clock;
    }

    /** The first hundred of which the text is a part of name, reference or code, of one kind or of all. */
    public List<Product> search(String text, Optional<ProductKind> kind) {
        return products.search(text, kind, SHOWN);
    }

    public Optional<Product> product(ProductId id) {
        return products.find(id);
    }

    /** The product with the code on its label. */
    public Optional<Product> byCode(ProductCode code) {
        return products.find(code);
    }

    /**
     * Adds a product to the catalogue.
     *
     * @throws StockRefusal when the network has its reference already
     */
    public Product add(ProductData data) {
        var id = new ProductId(ids.next());
        try {
            products.add(id, data, currentStaff.find().orElse(null), clock.instant());
        } catch (DuplicateKeyException taken) {
            throw new StockRefusal(StockRefusal.Reason.TAKEN_REFERENCE);
        }
        return new Product(id, 1, data);
    }

    /**
     * Changes what is said of a product.
     *
     * @throws StockRefusal when somebody else changed it meanwhile
     */
    public void change(Product old, ProductData data) {
        if (!products.change(old, data, currentStaff.id(), clock.instant())) {
            throw new StockRefusal(StockRefusal.Reason.CHANGED_MEANWHILE);
        }
    }

    public List<ProductCode> codes(ProductId product) {
        return products.codes(product);
    }

    /** Learns a code of the product, and says which product has it: another one when it was taken. */
    public Optional<Product> addCode(ProductId product, ProductCode code) {
        products.addCode(product, code);
        return products.find(code);
    }

    public void removeCode(ProductId product, ProductCode code) {
        products.removeCode(product, code);
    }

    public Optional<Lot> lot(LotId id) {
        return lots.find(id);
    }

    /** The lots of a product, the first to expire first. */
    public List<Lot> lots(ProductId product) {
        return lots.of(product);
    }

    /** Lots whose number begins so. */
    public List<Lot> searchLots(String begins) {
        return begins.isBlank() ? List.of() : lots.search(begins, SHOWN);
    }

    /**
     * The lot of a product by the number on the label, made known to the network when it is new.
     *
     * @param expires the last day of use on the label; null when there is none
     * @throws StockRefusal when the lot is known with another day
     */
    public Lot lotOf(ProductId product, String number, @Nullable LocalDate expires) {
        var known = lots.find(product, number).orElseGet(() -> {
            lots.add(ids.next(), product, number, expires, currentStaff.find().orElse(null), clock.instant());
            return lots.find(product, number).orElseThrow();
        });
        if (expires != null && !expires.equals(known.expires())) {
            throw new StockRefusal(StockRefusal.Reason.EXPIRY_DIFFERS);
        }
        return known;
    }
}
