package org.espalier.treatment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.espalier.access.SiteId;
import org.espalier.kit.Texts;
import org.espalier.platform.Ids;
import org.espalier.stock.Explant;
import org.espalier.stock.Lot;
import org.espalier.stock.LotId;
import org.espalier.stock.Movement;
import org.espalier.stock.ProductId;
import org.espalier.stock.UseService;
import org.springframework.stereotype.Component;

/** Keeps in the stock where went what came out of a child: disposed of, kept by the family, or for analysis. */
@Component
class ExplantBook {

    private final UseService uses;
    private final Ids ids;

    ExplantBook(UseService uses, Ids ids) {
        this.uses = uses;
        this.ids = ids;
    }

    /** Puts what came out where it was said to go, and takes back what was said before and is said no more. */
    void settle(SiteId site, TreatmentRecord before, TreatmentRecord after) {
        var was = new ArrayList<>(gone(before));
        var is = new ArrayList<>(gone(after));
        gone(before).stream().filter(is::remove).forEach(was::remove);
        was.forEach(one -> standing(one).ifPresent(this::takeBack));
        is.forEach(one -> StockRefused.telling(one.what(), () -> {
            var explant = new Explant(
                    ids.next(), site, one.product(), one.lots(), 1, one.first().value(), one.fate());
            uses.explant(explant);
            return explant;
        }));
    }

    /** What came out and where it went, as far as the stock keeps it. */
    private record Gone(ProcedureId first, ProductId product, List<LotId> lots, Explant.Fate fate, String what) {}

    private static List<Gone> gone(TreatmentRecord record) {
        return PieceLedger.of(record.deeds()).out().stream()
                .filter(out -> !out.elsewhere())
                .flatMap(out -> gone(record, out).stream())
                .toList();
    }

    private static Optional<Gone> gone(TreatmentRecord record, PieceOut out) {
        var product = out.piece().product();
        var fate = out.fate();
        return product == null || fate == null
                ? Optional.empty()
                : Optional.of(new Gone(
                        Procedure.first(record.procedures(), out.by()),
                        product,
                        out.piece().lots().stream()
                                .sorted(Comparator.comparing(LotId::value))
                                .toList(),
                        fate,
                        out.piece().what()));
    }

    private Optional<Movement> standing(Gone gone) {
        return uses.takenOutBy(gone.first().value()).stream()
                .filter(movement -> movement.product().id().equals(gone.product())
                        && movement.to().kind().name().equals(gone.fate().name())
                        && new HashSet<>(movement.lots().stream().map(Lot::id).toList())
                                .equals(new HashSet<>(gone.lots())))
                .findFirst();
    }

    private void takeBack(Movement movement) {
        StockRefused.telling(movement.product().data().name(), () -> {
            uses.takeBack(movement.id(), ids.next(), Texts.text("treatment.stock.corrected"));
            return movement;
        });
    }
}
