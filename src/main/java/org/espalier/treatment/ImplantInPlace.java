package org.espalier.treatment;

import java.util.List;
import org.espalier.stock.Magnet;

/**
 * An implant, in or out again, with all that is known of it.
 *
 * @param pieces what of it is in; none when nobody recorded its pieces
 * @param removed what of it came out
 * @param sightings what the latest reading says of each of its screws
 * @param shared whether another plate lay on the same physis on the day of such a reading, so that either may be meant
 * @param magnet what the makers say of all that is in together: the least safe of its pieces
 */
public record ImplantInPlace(
        Tether tether,
        List<PieceIn> pieces,
        List<PieceOut> removed,
        List<ScrewSighting> sightings,
        boolean shared,
        Magnet magnet) {

    public ImplantInPlace {
        pieces = List.copyOf(pieces);
        removed = List.copyOf(removed);
        sightings = List.copyOf(sightings);
    }

    /** Whether a part was last found bent, broken or loose, by hand or by the latest reading of its screws. */
    public boolean isInDoubt() {
        return tether.isIn()
                && (tether.isInDoubt()
                        || sightings.stream().anyMatch(seen -> seen.isDoubtful() && !isFoundSince(seen)));
    }

    private boolean isFoundSince(ScrewSighting seen) {
        return tether.findings().stream()
                .filter(finding ->
                        finding.part().screw().filter(seen.screw()::equals).isPresent())
                .anyMatch(finding -> finding.on().isAfter(seen.filmOn()));
    }

    /** Whether a reader saw a screw broken and nobody wrote it down as a finding since. */
    public boolean isBrokenByReadingAlone() {
        return tether.isIn()
                && tether.hold() != Hold.BROKEN
                && sightings.stream().anyMatch(one -> one.signs().contains(ScrewSighting.Sign.BROKEN));
    }
}
