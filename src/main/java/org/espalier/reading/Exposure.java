package org.espalier.reading;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.espalier.science.alignment.LimbNumbers;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.exposure.Effect;
import org.espalier.science.exposure.Effects;
import org.espalier.science.exposure.Warning;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;

/** What the way a film was taken does to the numbers of each limb read, and what is to be said of it. */
record Exposure(Map<Side, Effects> limbs) {

    /** The lengths reckoned with where none is measured: a child of eight; angles depend on their ratio alone. */
    private static final Length FEMUR = new Length(330);

    private static final Length TIBIA = new Length(265);

    static Exposure of(ReadingSettings settings, Map<Side, LimbNumbers> measured) {
        Map<Side, Effects> limbs = new EnumMap<>(Side.class);
        measured.forEach((side, numbers) -> limbs.put(
                side,
                Effects.of(
                        settings.taken().conditions(side, settings.limbs()),
                        numbers.length(Quantity.FEMUR_LENGTH).orElse(FEMUR),
                        numbers.length(Quantity.TIBIA_LENGTH).orElse(TIBIA))));
        return new Exposure(limbs);
    }

    Effect on(Side side, Quantity quantity) {
        return limbs.containsKey(side) ? limbs.get(side).of(quantity) : new Effect.Shown();
    }

    boolean comparesSides() {
        return limbs.values().stream().allMatch(Effects::comparesSides);
    }

    /** What is warned of: once for the film where it is alike for each limb; what was not recorded in one line. */
    List<Caution> cautions() {
        var cautions = new ArrayList<Caution>();
        var missing = new ArrayList<Object>();
        limbs.forEach((side, effects) -> effects.warnings().forEach(warning -> {
            if (warning.kind().name().endsWith("NOT_RECORDED")) {
                missing.add(warning.kind().name());
            } else {
                var about = isAlike(warning) ? Optional.<Side>empty() : Optional.of(side);
                var caution = Caution.of(Caution.Kind.valueOf(warning.kind().name()), about, sizeOf(warning));
                if (!cautions.contains(caution)) {
                    cautions.add(caution);
                }
            }
        }));
        if (!missing.isEmpty()) {
            cautions.add(new Caution(
                    Caution.Kind.NOT_RECORDED, null, missing.stream().distinct().toList()));
        }
        return cautions;
    }

    /** Whether each limb is warned of the same, whatever its own size of it. */
    private boolean isAlike(Warning warning) {
        return limbs.values().stream().allMatch(effects -> effects.warnings().contains(warning));
    }

    private static Object[] sizeOf(Warning warning) {
        return warning.size().stream().boxed().toArray();
    }
}
