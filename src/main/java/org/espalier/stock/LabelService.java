package org.espalier.stock;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import org.espalier.stock.code.ReadCode;
import org.espalier.stock.code.ScannedCode;
import org.espalier.stock.code.UnreadCode;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What a scanner types from a label, or a person: a code of GS1 or HIBC, or the maker's reference. */
@Service
@Transactional
public class LabelService {

    private final CatalogueService catalogue;
    private final Clock clock;

    LabelService(CatalogueService catalogue, Clock clock) {
        this.catalogue = catalogue;
        this.clock = clock;
    }

    /** Reads what was scanned or typed, and finds the product in the catalogue. */
    public Label read(String typed) {
        return byReference(typed.strip()).orElseGet(() -> byCode(typed));
    }

    private Optional<Label> byReference(String text) {
        return catalogue.search(text, Optional.empty()).stream()
                .filter(product -> product.data().reference().equalsIgnoreCase(text))
                .findFirst()
                .map(Label::of);
    }

    private Label byCode(String typed) {
        return switch (ScannedCode.parse(typed, LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC))) {
            case UnreadCode unread -> Label.unread(unread.explained());
            case ReadCode read -> label(read);
        };
    }

    private Label label(ReadCode read) {
        var scheme = read.issuer() == ReadCode.Issuer.GS1 ? ProductCode.Scheme.GTIN : ProductCode.Scheme.HIBC;
        var code = read.product().map(text -> new ProductCode(scheme, text));
        return new Label(code, code.flatMap(catalogue::byCode), read.lot(), read.expiry(), Optional.empty());
    }
}
