package org.espalier.cost;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.espalier.science.quantity.Side;
import org.espalier.treatment.Act;
import org.espalier.treatment.Procedure;
import org.espalier.treatment.ProcedureData;
import org.espalier.treatment.ProcedureKind;
import org.jspecify.annotations.Nullable;

/**
 * What a procedure costs by rule. What was done at another hospital costs this one nothing. Minutes are those measured,
 * or else those agreed on for what was done; implants are those the stock says were taken, or else the pieces counted.
 *
 * @param standing all procedures of the child that stand, by day
 */
record ProcedureRules(List<Procedure> standing, AllowanceBook agreed) {

    ProcedureRules {
        standing = List.copyOf(standing);
    }

    /** One procedure with what the stock says it took. */
    record Done(UUID id, LocalDate on, ProcedureData data, List<Piece> pieces) {

        /** The one limb it was about; null when it was about both. */
        @Nullable
        Side side() {
            var sides = data.acts().stream().map(Act::side).distinct().toList();
            return sides.size() == 1 ? sides.getFirst() : null;
        }

        boolean isOperation() {
            return data.acts().stream().anyMatch(act -> !act.kind().isOutsideTheatre());
        }

        /** The minutes by the clock, as far as they were recorded. */
        Optional<BigDecimal> measured(TariffItem item) {
            var minutes =
                    switch (item) {
                        case THEATRE_MINUTE -> data.measured().theatre();
                        case ANAESTHESIA_MINUTE -> data.measured().anaesthesia();
                        default -> null;
                    };
            return isOperation() ? Optional.ofNullable(minutes).map(BigDecimal::valueOf) : Optional.empty();
        }

        Claim claim(ChargeRule rule, TariffItem item, @Nullable Side side, BigDecimal quantity) {
            return Claim.of(ChargeSource.PROCEDURE, id, rule, item, side, on, quantity);
        }
    }

    List<Claim> of(Done done) {
        if (done.data().elsewhere()) {
            return List.of();
        }
        var claims = new ArrayList<Claim>();
        if (done.isOperation()) {
            claims.addAll(operation(done));
        }
        claims.addAll(acts(done));
        claims.addAll(implants(done));
        return claims;
    }

    private List<Claim> operation(Done done) {
        var kinds = done.data().acts().stream().map(Act::kind).toList();
        return TariffItem.allowed().stream()
                .flatMap(item -> done.measured(item).isPresent() ? measured(done, item) : agreed(done, kinds, item))
                .toList();
    }

    private static Stream<Claim> measured(Done done, TariffItem item) {
        return claim(
                done,
                ChargeRule.MEASURED,
                item,
                done.side(),
                done.measured(item).orElseThrow());
    }

    private Stream<Claim> agreed(Done done, List<ProcedureKind> kinds, TariffItem item) {
        return AllowanceBook.isShared(item)
                ? claim(done, ChargeRule.LONGEST, item, done.side(), agreed.most(kinds, item, done.on()))
                : claim(
                        done,
                        ChargeRule.EACH_OPERATION,
                        item,
                        done.side(),
                        agreed.find(Optional.empty(), item, done.on()));
    }

    private List<Claim> acts(Done done) {
        return Stream.of(Side.RIGHT, Side.LEFT)
                .flatMap(side -> ofSide(done, side))
                .toList();
    }

    private Stream<Claim> ofSide(Done done, Side side) {
        var kinds = done.data().acts().stream()
                .filter(act -> act.side() == side)
                .map(Act::kind)
                .toList();
        var agreedOn = TariffItem.allowed().stream()
                .filter(item ->
                        !AllowanceBook.isShared(item) && done.measured(item).isEmpty())
                .flatMap(item -> claim(done, ChargeRule.EACH_ACT, item, side, sum(kinds, item, done.on())));
        return Stream.of(
                        agreedOn,
                        each(done, side, kinds, ProcedureKind.CAST_ON, ChargeRule.CAST_PUT_ON, TariffItem.CAST),
                        each(done, side, kinds, ProcedureKind.BRACE_ON, ChargeRule.BRACE_PUT_ON, TariffItem.BRACE),
                        frame(done, side, kinds))
                .flatMap(claims -> claims);
    }

    private BigDecimal sum(List<ProcedureKind> kinds, TariffItem item, LocalDate on) {
        return kinds.stream()
                .map(kind -> agreed.find(Optional.of(kind), item, on))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static Stream<Claim> each(
            Done done, Side side, List<ProcedureKind> kinds, ProcedureKind kind, ChargeRule rule, TariffItem item) {
        long count = kinds.stream().filter(kind::equals).count();
        return claim(done, rule, item, side, BigDecimal.valueOf(count));
    }

    /** The day the frame comes off is not paid for. */
    private Stream<Claim> frame(Done done, Side side, List<ProcedureKind> kinds) {
        if (!kinds.contains(ProcedureKind.FRAME_OFF)) {
            return Stream.empty();
        }
        return putOn(done, side).stream().flatMap(on -> {
            var days = BigDecimal.valueOf(ChronoUnit.DAYS.between(on, done.on()));
            return days.signum() == 0
                    ? Stream.empty()
                    : Stream.of(Claim.of(
                            ChargeSource.PROCEDURE,
                            done.id(),
                            ChargeRule.FRAME_DAYS,
                            TariffItem.FRAME_DAY,
                            side,
                            on,
                            days));
        });
    }

    private Optional<LocalDate> putOn(Done done, Side side) {
        return standing.stream()
                .filter(one -> !one.on().isAfter(done.on()))
                .filter(one ->
                        one.data().filter(data -> putsFrameOn(data, side)).isPresent())
                .map(Procedure::on)
                .max(Comparator.naturalOrder());
    }

    private static boolean putsFrameOn(ProcedureData data, Side side) {
        return !data.elsewhere()
                && data.acts().stream().anyMatch(act -> act.side() == side && act.kind() == ProcedureKind.FRAME_ON);
    }

    private static List<Claim> implants(Done done) {
        if (!done.pieces().isEmpty()) {
            return done.pieces().stream().map(piece -> lot(done, piece)).toList();
        }
        return Stream.of(Side.RIGHT, Side.LEFT)
                .flatMap(side -> claim(
                        done,
                        ChargeRule.PIECES_COUNTED,
                        TariffItem.IMPLANT,
                        side,
                        BigDecimal.valueOf(counted(done, side))))
                .toList();
    }

    private static Claim lot(Done done, Piece piece) {
        return new Claim(
                ChargeSource.PROCEDURE,
                done.id(),
                ChargeRule.LOT_COST,
                TariffItem.IMPLANT,
                done.side(),
                done.on(),
                BigDecimal.valueOf(piece.quantity()),
                piece.cost(),
                Optional.of(piece.movement()));
    }

    private static int counted(Done done, Side side) {
        return done.data().acts().stream()
                .filter(act -> act.side() == side && putsPiecesIn(act.kind()))
                .mapToInt(Act::count)
                .sum();
    }

    private static boolean putsPiecesIn(ProcedureKind kind) {
        return kind.putsIn()
                || kind == ProcedureKind.METAPHYSEAL_SCREW_IN
                || kind == ProcedureKind.EPIPHYSEAL_SCREW_IN
                || kind == ProcedureKind.METAPHYSEAL_SCREW_EXCHANGED
                || kind == ProcedureKind.EPIPHYSEAL_SCREW_EXCHANGED;
    }

    private static Stream<Claim> claim(
            Done done, ChargeRule rule, TariffItem item, @Nullable Side side, BigDecimal quantity) {
        return quantity.signum() == 0 ? Stream.empty() : Stream.of(done.claim(rule, item, side, quantity));
    }
}
