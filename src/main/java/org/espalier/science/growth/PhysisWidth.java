package org.espalier.science.growth;

import java.util.Optional;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Sex;

/**
 * How wide a growth plate of the knee is seen from the front.
 *
 * @param length the width
 * @param isAssumed whether it was assumed for the age, not measured: no table of it is published
 */
public record PhysisWidth(Length length, boolean isAssumed) {

    private static final double TIBIA_OF_FEMUR = 0.92;
    private static final BySex<AgeTable> TABLES =
            BySex.of(sex -> AgeTable.of("physis-width-assumed.csv", sex, row -> row.number("distal_femur")));

    /** Measured on a film with a scale. */
    public static PhysisWidth measured(Length length) {
        return new PhysisWidth(length, false);
    }

    /**
     * Assumed for the age (a judgement of this program).
     *
     * @return empty for plates away from the knee
     */
    public static Optional<PhysisWidth> assumed(GrowthPlate plate, Sex sex, Age age) {
        double femur = TABLES.get(sex).at(age.decimalYears());
        return switch (plate) {
            case DISTAL_FEMUR -> Optional.of(new PhysisWidth(new Length(femur), true));
            case PROXIMAL_TIBIA -> Optional.of(new PhysisWidth(new Length(TIBIA_OF_FEMUR * femur), true));
            case PROXIMAL_FEMUR, DISTAL_TIBIA -> Optional.empty();
        };
    }
}
