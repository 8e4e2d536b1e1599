package org.espalier.treatment;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;

/**
 * Every piece that went into a child, as it follows from what was done: what is in, and what came out by what.
 *
 * <p>A whole implant takes all its pieces with it. One screw of a plate takes the screws of its end, where the end of
 * each was recorded; else half of those whose end was not, one of their lots; and where they are not alike, it stays
 * open which. With a frame, or with what holds a cut bone inside, come all its pieces on that limb, or at that physis
 * where one is named.
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

    /** What is in on a limb that comes out by that and belongs to no implant of a physis. */
    public List<PieceIn> fixation(ProcedureKind takingOut, Side side) {
        return fixation(in, takingOut, side);
    }

    private static List<PieceIn> fixation(List<PieceIn> in, ProcedureKind takingOut, Side side) {
        return in.stream()
                .filter(one -> one.implant() == null && one.side() == side)
                .filter(one -> one.by().fixationOut() == takingOut)
                .toList();
    }

    private static final class Going {

        private final List<PieceIn> in = new ArrayList<>();
        private final List<PieceOut> out = new ArrayList<>();

        private void take(Deed deed) {
            var act = deed.act();
            switch (act.kind().effect()) {
                case TAKES_OUT -> of(act.implant()).forEach(one -> takeOut(one, one.piece(), deed));
                case SCREW_OUT, SCREW_IN_PLACE -> takeScrewOut(deed);
                case FRAME_OFF, FIXATION_OUT -> takeFixationOut(deed);
                default -> {
                    // Nothing comes out.
                }
            }
            act.pieces().stream().filter(Piece::isLeftIn).forEach(piece -> in.add(placed(deed, piece)));
        }

        private static PieceIn placed(Deed deed, Piece piece) {
            var act = deed.act();
            return new PieceIn(
                    act.implant(), act.kind(), act.side(), act.physis().orElse(null), deed.on(), piece, false);
        }

        private List<PieceIn> of(@Nullable ImplantId implant) {
            return in.stream()
                    .filter(one -> implant != null && implant.equals(one.implant()))
                    .toList();
        }

        /** Of one physis, what lies there; what may lie there may be out. */
        private void takeFixationOut(Deed deed) {
            var act = deed.act();
            var where = act.physis().orElse(null);
            for (var one : fixation(in, act.kind(), act.side())) {
                if (where == null || where.equals(one.physis())) {
                    takeOut(one, one.piece(), deed);
                } else if (one.physis() == null) {
                    in.set(in.indexOf(one), one.with(one.piece(), true));
                }
            }
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
                    one.side(),
                    one.physis(),
                    deed.on(),
                    as,
                    deed.elsewhere(),
                    deed.act().fate()));
        }
    }
}
