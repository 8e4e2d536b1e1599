package org.espalier.reading;

import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How the child stood, as the reader sees it on the film. What is not recorded is never taken for good.
 *
 * @param kneeFlexion degrees of flexion judged or known, 0 to 90; absent when not recorded
 */
public record Positioning(
        Stance stance, Patella patella, @Nullable Integer kneeFlexion) {

    public static final Positioning NOT_RECORDED = new Positioning(Stance.NOT_RECORDED, Patella.NOT_RECORDED, null);

    private static final int FLEXION_THAT_SHORTENS = 10;

    public enum Stance {
        NOT_RECORDED,
        STANDING_ALONE,
        HELD,
        SUPINE
    }

    public enum Patella {
        NOT_RECORDED,
        FORWARD,
        TURNED_IN,
        TURNED_OUT,
        NOT_OSSIFIED,
        DISLOCATING
    }

    /**
     * @throws IllegalArgumentException for a flexion outside 0 to 90 degrees
     */
    public Positioning {
        if (kneeFlexion != null && (kneeFlexion < 0 || kneeFlexion > 90)) {
            throw new IllegalArgumentException("A knee on a film is flexed 0 to 90 degrees, not " + kneeFlexion);
        }
    }

    public Optional<Integer> flexion() {
        return Optional.ofNullable(kneeFlexion);
    }

    public Positioning withStance(Stance stance) {
        return new Positioning(stance, patella, kneeFlexion);
    }

    public Positioning withPatella(Patella patella) {
        return new Positioning(stance, patella, kneeFlexion);
    }

    public Positioning withKneeFlexion(@Nullable Integer kneeFlexion) {
        return new Positioning(stance, patella, kneeFlexion);
    }

    /** Whether the knee is so flexed that lengths are withheld and the whole limb's angles are doubtful. */
    @JsonIgnore
    public boolean isFlexed() {
        return kneeFlexion != null && kneeFlexion > FLEXION_THAT_SHORTENS;
    }

    @JsonIgnore
    public boolean isSupine() {
        return stance == Stance.SUPINE;
    }
}
