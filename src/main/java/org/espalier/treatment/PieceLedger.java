package org.espalier.treatment;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Every piece that went into a child, as it follows from what was done: what is in, and what came out by what.
 *
 * <p>A whole implant takes all its pieces with it. One screw of a plate takes the screws of its end, where the end of each
 * was recorded; else half of those whose end was not, one of their lots; and where they are not alike, it stays open which.
 */
public record PieceLedger(List<PieceIn> in, List<PieceOut> out) {

    public PieceLedger {
        in = List.copyOf(in);
        out = List.copyOf(out);
    }

    static PieceLedger of(List<Deed> deeds) {
        var going = new Going();
        deeds.forEach(going::take);
        return new PieceLedger(going.in, going.out);
    }

    /** What is in of one implant. */
    public List<PieceIn> of(ImplantId implant) {
        return in.stream().filter(one -> implant.equals(one.implant())).toList();
    }

    private static final class Going {

        private final List<PieceIn> in = new ArrayList<>();
        private final List<PieceOut> out = new ArrayList<>();

        private void take(Deed deed) {
            var act = deed.act();
            switch (act.kind().effect()) {
                case TAKES_OUT -> of(act.implant()).forEach(one -> takeOut(one, one.piece(), deed));
                case SCREW_OUT, SCREW_IN_PLACE -> takeScrewOut(deed);
                default -> {
                    // Nothing comes out.
                }
            }
            act.pieces().stream().filter(Piece::isLeftIn).forEach(piece -> in.add(placed(deed, piece)));
        }

        private static PieceIn placed(Deed deed, Piece piece) {
            var act = deed.act();
            return new PieceIn(act.implant(), act.side(), act.physis().orElse(null), deed.on(), piece, false);
        }

        private List<PieceIn> of(@Nullable ImplantId implant) {
            return in.stream()
                    .filter(one -> implant != null && implant.equals(one.implant()))
                    .toList();
        }

        private void takeScrewOut(Deed deed) {
            var role = deed.act().kind().screw() == Screw.METAPHYSEAL
                    ? Piece.Role.METAPHYSEAL_SCREW
                    : Piece.Role.EPIPHYSEAL_SCREW;
            var named = ofRole(deed, role);
            if (!named.isEmpty()) {
                named.forEach(one -> takeOut(one, one.piece(), deed));
                return;
            }
            var unsaid = ofRole(deed, Piece.Role.SCREW);
            boolean alike = unsaid.stream()
                            .map(one -> Objects.toString(
                                    one.piece().product(), one.piece().what()))
                            .distinct()
                            .count()
                    == 1;
            if (alike) {
                takeHalfOut(unsaid, deed);
            } else {
                unsaid.forEach(one -> in.set(in.indexOf(one), one.with(one.piece(), true)));
            }
        }

        private List<PieceIn> ofRole(Deed deed, Piece.Role role) {
            return of(deed.act().implant()).stream()
                    .filter(one -> one.piece().role() == role)
                    .toList();
        }

        /** Which of like screws came out is not known, so what is left may be of any of their lots too. */
        private void takeHalfOut(List<PieceIn> alike, Deed deed) {
            var pieces = alike.stream().map(PieceIn::piece).toList();
            int coming = Math.max(1, alike.size() / 2);
            for (int at = 0; at < alike.size(); at++) {
                var one = alike.get(at);
                var mixed = one.piece().orOneOf(pieces);
                if (at < coming) {
                    takeOut(one, mixed, deed);
                } else {
                    in.set(in.indexOf(one), one.with(mixed, false));
                }
            }
        }

        private void takeOut(PieceIn one, Piece as, Deed deed) {
            in.remove(one);
            out.add(new PieceOut(
                    deed.procedure(),
                    one.implant(),
                    deed.on(),
                    as,
                    deed.elsewhere(),
                    deed.act().fate()));
        }
    }
}
