package org.espalier.cost;

import java.time.Instant;
import java.util.Optional;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;

/**
 * What something cost; never changed.
 *
 * @param site the hospital where it arose, and whose it stays
 * @param reverses the charge that this one takes back
 * @param reversed whether another took this one back
 * @param adjusts the charge in whose place this one stands by somebody's word
 * @param reason why it was reversed, adjusted or written by hand; of a reversal by the house, a constant of
 *     {@link Reversal}
 * @param by who wrote it down; empty for a job of the house
 */
public record Charge(
        ChargeId id,
        SiteId site,
        ChildId child,
        ChargeLine line,
        Optional<ChargeId> reverses,
        boolean reversed,
        Optional<ChargeId> adjusts,
        Optional<String> reason,
        Optional<String> by,
        Instant at) {

    /** Why the house took a charge back. */
    public enum Reversal {
        /** What it followed from was corrected or withdrawn, or is somebody else's. */
        FACT_CHANGED,
        /** Another price, share or agreement holds for the day. */
        PRICE_CHANGED
    }

    /** Whether it counts: neither taken back nor a taking back. Both together count nothing. */
    public boolean stands() {
        return !reversed && reverses.isEmpty();
    }

    boolean isByHand() {
        return line.source() == ChargeSource.HAND;
    }

    /** Whether it stands by somebody's word, so that the rules leave it alone while its fact stands. */
    boolean isAdjusted() {
        return adjusts.isPresent();
    }
}
