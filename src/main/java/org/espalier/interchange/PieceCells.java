package org.espalier.interchange;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.stock.CatalogueService;
import org.espalier.stock.Lot;
import org.espalier.stock.LotId;
import org.espalier.stock.Product;
import org.espalier.stock.ProductData;
import org.espalier.stock.ProductId;
import org.espalier.stock.ProductKind;
import org.espalier.treatment.Act;
import org.espalier.treatment.Piece;
import org.espalier.treatment.ProcedureKind;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * The pieces of an act with their lots, each on a line of the cell: part, what it is, reference, lot, last day of use.
 * They lay on no shelf of this house, so none is touched; product and lot are put into the catalogue where they are not
 * there yet, for a lot is traced to whoever carries it.
 */
@Component
class PieceCells {

    private static final Map<String, Piece.Role> ROLES = Words.all(Piece.Role.class);
    private static final String BETWEEN = " | ";
    private static final String LOTS_BETWEEN = ", ";
    private static final int PARTS = 5;

    private final CatalogueService catalogue;

    PieceCells(CatalogueService catalogue) {
        this.catalogue = catalogue;
    }

    /** What the cell says; empty, with the reason written down, when a line cannot be read. */
    Optional<List<Piece>> read(ClinicRow row, ProcedureKind kind) {
        List<Piece> pieces = new ArrayList<>();
        for (var line : row.text("lots").split("\\R")) {
            if (line.isBlank()) {
                continue;
            }
            var parts = Arrays.stream(line.split("\\|", -1)).map(String::strip).toList();
            var role = ROLES.get(parts.getFirst());
            var expires = parts.size() == PARTS ? day(parts.getLast()) : Optional.<LocalDate>empty();
            boolean dayBad = parts.size() == PARTS
                    && expires.isEmpty()
                    && !parts.getLast().isEmpty();
            if (parts.size() != PARTS || role == null || parts.get(1).isEmpty() || dayBad) {
                row.cells().refuse("lots", FileReason.NOT_A_PIECE, line.strip());
                return Optional.empty();
            }
            pieces.add(piece(kind, role, parts, expires.orElse(null)));
        }
        return Optional.of(pieces);
    }

    private static Optional<LocalDate> day(String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeException _) {
            return Optional.empty();
        }
    }

    private Piece piece(ProcedureKind kind, Piece.Role role, List<String> parts, @Nullable LocalDate expires) {
        var numbers = parts.get(3).isEmpty() ? null : parts.get(3);
        @Nullable
        ProductId product = product(kind, role, parts).map(Product::id).orElse(null);
        var plain = Piece.ofOutside(role, product, parts.get(1), numbers, expires, Piece.Outside.OTHER);
        if (product == null || plain.isOfOneLot() || numbers == null) {
            return plain;
        }
        var lots = Stream.of(numbers.split(LOTS_BETWEEN))
                .map(one -> lot(product, one))
                .toList();
        return plain.ofLots(lots);
    }

    private LotId lot(ProductId product, String number) {
        Lot lot = catalogue.lotOf(product, number.strip(), null);
        return lot.id();
    }

    private Optional<Product> product(ProcedureKind kind, Piece.Role role, List<String> parts) {
        var reference = parts.get(2);
        if (reference.isEmpty()) {
            return Optional.empty();
        }
        return catalogue.search(reference, Optional.empty()).stream()
                .filter(known -> known.data().reference().equalsIgnoreCase(reference))
                .findFirst()
                .or(() -> kindOf(kind, role).map(one -> catalogue.add(ProductData.of(one, parts.get(1), reference))));
    }

    /** What a piece must be by where it went; empty where that does not tell. */
    private static Optional<ProductKind> kindOf(ProcedureKind kind, Piece.Role role) {
        return switch (role) {
            case USED_UP -> Optional.empty();
            case METAPHYSEAL_SCREW, EPIPHYSEAL_SCREW, SCREW -> Optional.of(ProductKind.SCREW);
            case BODY ->
                switch (kind) {
                    case PLATE_PLACED, PLATE_MOVED -> Optional.of(ProductKind.PLATE);
                    case STAPLE_PLACED -> Optional.of(ProductKind.STAPLE);
                    case TRANSPHYSEAL_SCREW_PLACED -> Optional.of(ProductKind.SCREW);
                    case FRAME_ON, FRAME_ADJUSTED -> Optional.of(ProductKind.FRAME);
                    default -> Optional.empty();
                };
        };
    }

    /** The cell of an act. */
    String of(Act act) {
        return act.pieces().stream().map(this::line).collect(Collectors.joining("\n"));
    }

    private String line(Piece piece) {
        var reference = Optional.ofNullable(piece.product())
                .flatMap(catalogue::product)
                .map(product -> product.data().reference())
                .orElse("");
        return Stream.of(
                        Words.of(piece.role()),
                        piece.what(),
                        reference,
                        Words.text(piece.lotNumbers()),
                        piece.isOfOneLot() ? Words.text(piece.expires()) : "")
                .map(part -> part.replace('|', '/').replaceAll("\\s+", " ").strip())
                .collect(Collectors.joining(BETWEEN));
    }
}
