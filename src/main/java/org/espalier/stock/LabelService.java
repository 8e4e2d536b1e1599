package org.espalier.stock;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.espalier.kit.Texts;
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
        return byReference(typed.strip()).orElseGet(() -> label(parsed(typed)));
    }

    /**
     * Reads the codes of one label as a photo shows them: those that belong together say more together.
     *
     * @param codes what the codes say; none when no code was found
     */
    public Label readTogether(List<String> codes) {
        var read = codes.stream().map(this::parsed).toList();
        var labels = Arrays.stream(ReadCode.Issuer.values())
                .flatMap(issuer -> together(read, issuer).stream())
                .map(this::label)
                .toList();
        return labels.stream()
                .filter(label -> label.product().isPresent())
                .findFirst()
                .or(() -> labels.stream().findFirst())
                .or(() -> read.stream().findFirst().map(this::label))
                .orElseGet(() -> Label.unread(Texts.text("stock.photo.no-code")));
    }

    private static Optional<ScannedCode> together(List<ScannedCode> codes, ReadCode.Issuer issuer) {
        return codes.stream()
                .filter(code -> code instanceof ReadCode read && read.issuer() == issuer)
                .reduce((one, other) ->
                        one instanceof ReadCode first && other instanceof ReadCode second ? first.joined(second) : one);
    }

    private Optional<Label> byReference(String text) {
        return catalogue.search(text, Optional.empty()).stream()
                .filter(product -> product.data().reference().equalsIgnoreCase(text))
                .findFirst()
                .map(Label::of);
    }

    private ScannedCode parsed(String text) {
        return ScannedCode.parse(text, LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC));
    }

    private Label label(ScannedCode code) {
        return switch (code) {
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
