package org.espalier.interchange;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.espalier.stock.CatalogueService;
import org.espalier.stock.Lot;
import org.espalier.stock.LotId;
import org.espalier.stock.Product;
import org.espalier.stock.ProductData;
import org.espalier.stock.ProductId;
import org.espalier.stock.ProductKind;
import org.espalier.stock.StockRefusal;
import org.espalier.treatment.Act;
import org.espalier.treatment.Piece;
import org.espalier.treatment.ProcedureKind;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * The pieces of an act with their lots, each on a line of the cell: part, what it is, reference, lot, last day of use,
 * and of which kind the product is, which may be left out where the part tells. One of several lots has as many days.
 * They lay on no shelf of this house, so none is touched; product and lot are put into the catalogue where they are not
 * there yet, for a lot is traced to whoever carries it.
 */
@Component
class PieceCells {

    private static final Map<String, Piece.Role> ROLES = Words.all(Piece.Role.class);
    private static final String BETWEEN = " | ";
    private static final String LOTS_BETWEEN = ", ";
    private static final String NONE = "none";
    private static final Map<String, ProductKind> KINDS = Words.all(ProductKind.class);
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
            var read = line(line);
            if (read.isEmpty()) {
                row.cells().refuse("lots", FileReason.NOT_A_PIECE, line.strip());
                return Optional.empty();
            }
            pieces.add(piece(kind, read.get()));
        }
        return Optional.of(pieces);
    }

    /** Whether lines say what is on record; the kind of a product may be left out. */
    boolean areThose(List<String> said, List<String> known) {
        return said.size() == known.size()
                && IntStream.range(0, said.size())
                        .allMatch(i -> known.get(i).equals(said.get(i))
                                || (known.get(i).startsWith(said.get(i) + BETWEEN)
                                        && said.get(i).split("\\|", -1).length == PARTS));
    }

    /** One line, read. */
    private record Line(
            Piece.Role role,
            String what,
            String reference,
            List<String> lots,
            List<Optional<LocalDate>> days,
            Optional<ProductKind> kind) {

        private @Nullable LocalDate first() {
            return days.stream()
                    .flatMap(Optional::stream)
                    .min(Comparator.naturalOrder())
                    .orElse(null);
        }

        private @Nullable LocalDate day(int lot) {
            return days.isEmpty() ? null : days.get(lot).orElse(null);
        }
    }

    private static Optional<Line> line(String line) {
        var parts = Arrays.stream(line.split("\\|", -1)).map(String::strip).toList();
        if (parts.size() != PARTS && parts.size() != PARTS + 1) {
            return Optional.empty();
        }
        var role = ROLES.get(parts.getFirst());
        var lots = several(parts.get(3));
        var days = several(parts.get(4)).stream().map(PieceCells::day).toList();
        boolean read = days.stream().allMatch(Optional::isPresent)
                && (days.isEmpty() || (lots.isEmpty() && days.size() == 1) || days.size() == lots.size());
        var kind = parts.size() > PARTS && !parts.getLast().isEmpty()
                ? Optional.ofNullable(KINDS.get(parts.getLast()))
                : Optional.<ProductKind>empty();
        boolean kindRead = parts.size() == PARTS || parts.getLast().isEmpty() || kind.isPresent();
        return role == null || parts.get(1).isEmpty() || !read || !kindRead
                ? Optional.empty()
                : Optional.of(new Line(
                        role,
                        parts.get(1),
                        parts.get(2),
                        lots,
                        days.stream().map(Optional::orElseThrow).toList(),
                        kind));
    }

    private static List<String> several(String text) {
        return text.isEmpty()
                ? List.of()
                : Arrays.stream(text.split(",")).map(String::strip).toList();
    }

    /** The day, {@code none} where there is none; empty where it is no day. */
    private static Optional<Optional<LocalDate>> day(String text) {
        try {
            return Optional.of(text.equals(NONE) ? Optional.empty() : Optional.of(LocalDate.parse(text)));
        } catch (DateTimeException _) {
            return Optional.empty();
        }
    }

    private Piece piece(ProcedureKind kind, Line line) {
        @Nullable ProductId product = product(kind, line).map(Product::id).orElse(null);
        @Nullable String numbers = line.lots.isEmpty() ? null : String.join(LOTS_BETWEEN, line.lots);
        var plain = Piece.ofOutside(line.role, product, line.what, numbers, line.first(), Piece.Outside.OTHER);
        if (product == null || line.lots.size() < 2) {
            return plain;
        }
        return plain.ofLots(IntStream.range(0, line.lots.size())
                .mapToObj(i -> lot(product, line.lots.get(i), line.day(i)))
                .toList());
    }

    private LotId lot(ProductId product, String number, @Nullable LocalDate expires) {
        try {
            return catalogue.lotOf(product, number, expires).id();
        } catch (StockRefusal refused) {
            throw new RowRefused("lots", FileReason.OTHER_LAST_DAY, number);
        }
    }

    private Optional<Product> product(ProcedureKind kind, Line line) {
        if (line.reference.isEmpty()) {
            return Optional.empty();
        }
        return catalogue.search(line.reference, Optional.empty()).stream()
                .filter(known -> known.data().reference().equalsIgnoreCase(line.reference))
                .findFirst()
                .or(() -> line.kind
                        .or(() -> kindOf(kind, line.role))
                        .map(one -> catalogue.add(ProductData.of(one, line.what, line.reference))));
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
        var product =
                Optional.ofNullable(piece.product()).flatMap(catalogue::product).map(Product::data);
        return Stream.of(
                        Words.of(piece.role()),
                        piece.what(),
                        product.map(ProductData::reference).orElse(""),
                        Words.text(piece.lotNumbers()),
                        days(piece),
                        product.map(ProductData::kind).map(Words::of).orElse(""))
                .map(part -> part.replace('|', '/').replaceAll("\\s+", " ").strip())
                .collect(Collectors.joining(BETWEEN));
    }

    /** The last day of use; of one of several lots that of each. */
    private String days(Piece piece) {
        if (piece.lots().size() < 2) {
            return piece.isOfOneLot() ? Words.text(piece.expires()) : "";
        }
        return piece.lots().stream()
                .map(lot -> catalogue
                        .lot(lot)
                        .map(Lot::expires)
                        .map(LocalDate::toString)
                        .orElse(NONE))
                .collect(Collectors.joining(LOTS_BETWEEN));
    }
}
