package org.espalier.science.forecast;

import java.util.Optional;

/**
 * What is known of a centre's rates beforehand and learnt from its own limbs. Values, spreads and sources stand in the
 * table {@code published-rates.csv} beside this class.
 */
public enum Rate {
    /** Rate at the distal femur when the plate bites, as a part of the turn if one side were held entirely. */
    FEMUR,
    /** Rate at the proximal tibia, as a part of the same. */
    TIBIA,
    /** What idiopathic varus makes of the rate. */
    FACTOR_IDIOPATHIC_VARUS(Cause.IDIOPATHIC_VARUS),
    /** What infantile tibia vara makes of it. */
    FACTOR_INFANTILE_TIBIA_VARA(Cause.INFANTILE_TIBIA_VARA),
    /** What late-onset tibia vara makes of it. */
    FACTOR_LATE_ONSET_TIBIA_VARA(Cause.LATE_ONSET_TIBIA_VARA),
    /** What skeletal dysplasia makes of it. */
    FACTOR_SKELETAL_DYSPLASIA(Cause.SKELETAL_DYSPLASIA),
    /** What rickets makes of it at the femur. */
    FACTOR_RICKETS(Cause.RICKETS),
    /** What rickets further makes of it at the tibia. */
    FACTOR_RICKETS_TIBIA(Cause.RICKETS),
    /** Standard deviation of the logarithm of the rate between limbs. */
    BETWEEN_LIMBS,
    /** How much wider it is in idiopathic varus. */
    WIDER_IDIOPATHIC_VARUS(Cause.IDIOPATHIC_VARUS),
    /** How much wider it is in infantile tibia vara. */
    WIDER_INFANTILE_TIBIA_VARA(Cause.INFANTILE_TIBIA_VARA),
    /** How much wider it is in late-onset tibia vara. */
    WIDER_LATE_ONSET_TIBIA_VARA(Cause.LATE_ONSET_TIBIA_VARA),
    /** How much wider it is in skeletal dysplasia. */
    WIDER_SKELETAL_DYSPLASIA(Cause.SKELETAL_DYSPLASIA),
    /** How much wider it is in rickets. */
    WIDER_RICKETS(Cause.RICKETS),
    /** Standard deviation of a film of the femur in idiopathic deformity: reader and positioning, in degrees. */
    FILM_ERROR,
    /** How much larger it is at the tibia. */
    FILM_ERROR_TIBIA,
    /** How much larger it is in infantile tibia vara. */
    FILM_ERROR_INFANTILE_TIBIA_VARA(Cause.INFANTILE_TIBIA_VARA),
    /** How much larger it is in late-onset tibia vara. */
    FILM_ERROR_LATE_ONSET_TIBIA_VARA(Cause.LATE_ONSET_TIBIA_VARA),
    /** How much larger it is in skeletal dysplasia. */
    FILM_ERROR_SKELETAL_DYSPLASIA(Cause.SKELETAL_DYSPLASIA),
    /** How much larger it is in rickets. */
    FILM_ERROR_RICKETS(Cause.RICKETS),
    /** Share of films that lie off by far more. */
    OUTLYING_FILMS,
    /** Months until the plate bites. */
    LAG,
    /** Part of the rate lost a month in place, beyond what growth loses. */
    SLOWING,
    /** How far a limb's rate wanders in a month, as a part of itself. */
    WANDERING,
    /** Share of broken screws noticed on a film. */
    NOTICED,
    /** Share without response. */
    NO_RESPONSE_IDIOPATHIC_VALGUS(Cause.IDIOPATHIC_VALGUS),
    /** Share without response. */
    NO_RESPONSE_IDIOPATHIC_VARUS(Cause.IDIOPATHIC_VARUS),
    /** Share without response. */
    NO_RESPONSE_INFANTILE_TIBIA_VARA(Cause.INFANTILE_TIBIA_VARA),
    /** Share without response. */
    NO_RESPONSE_LATE_ONSET_TIBIA_VARA(Cause.LATE_ONSET_TIBIA_VARA),
    /** Share without response. */
    NO_RESPONSE_SKELETAL_DYSPLASIA(Cause.SKELETAL_DYSPLASIA),
    /** Share without response. */
    NO_RESPONSE_RICKETS(Cause.RICKETS),
    /** Hardware failures a month. */
    FAILURE_IDIOPATHIC_VALGUS(Cause.IDIOPATHIC_VALGUS),
    /** Hardware failures a month. */
    FAILURE_IDIOPATHIC_VARUS(Cause.IDIOPATHIC_VARUS),
    /** Hardware failures a month. */
    FAILURE_INFANTILE_TIBIA_VARA(Cause.INFANTILE_TIBIA_VARA),
    /** Hardware failures a month. */
    FAILURE_LATE_ONSET_TIBIA_VARA(Cause.LATE_ONSET_TIBIA_VARA),
    /** Hardware failures a month. */
    FAILURE_SKELETAL_DYSPLASIA(Cause.SKELETAL_DYSPLASIA),
    /** Hardware failures a month. */
    FAILURE_RICKETS(Cause.RICKETS);

    private final Optional<Cause> cause;

    Rate() {
        cause = Optional.empty();
    }

    Rate(Cause cause) {
        this.cause = Optional.of(cause);
    }

    /** The cause whose limbs alone it concerns; empty if it concerns all. */
    public Optional<Cause> cause() {
        return cause;
    }

    /** Of any cause but idiopathic valgus. */
    static Rate wider(Cause cause) {
        return values()[WIDER_IDIOPATHIC_VARUS.ordinal() + cause.ordinal() - 1];
    }

    static Rate noResponse(Cause cause) {
        return values()[NO_RESPONSE_IDIOPATHIC_VALGUS.ordinal() + cause.ordinal()];
    }

    static Rate failure(Cause cause) {
        return values()[FAILURE_IDIOPATHIC_VALGUS.ordinal() + cause.ordinal()];
    }
}
