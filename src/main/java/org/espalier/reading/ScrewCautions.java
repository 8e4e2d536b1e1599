package org.espalier.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.alignment.ScrewLag;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Side;

/** What is to be said of a plate's screws before signing. */
final class ScrewCautions {

    private ScrewCautions() {}

    static List<Caution> of(ReadingSettings settings, List<ReadNumber> numbers, ChildOnFilm child) {
        var cautions = new ArrayList<Caution>();
        for (Side side : settings.limbs()) {
            if (isNotAsked(side, settings, numbers)) {
                cautions.add(Caution.ofLimb(Caution.Kind.SCREW_NOT_ASKED, side));
            }
            behind(side, Quantity.MLDFA, Quantity.FEMUR_SCREW_ANGLE, numbers, child)
                    .ifPresent(cautions::add);
            behind(side, Quantity.MMPTA, Quantity.TIBIA_SCREW_ANGLE, numbers, child)
                    .ifPresent(cautions::add);
        }
        return cautions;
    }

    private static boolean isNotAsked(Side side, ReadingSettings settings, List<ReadNumber> numbers) {
        var asked =
                settings.screws().stream().filter(screw -> screw.side() == side).toList();
        boolean measured = value(side, Quantity.FEMUR_SCREW_ANGLE, numbers).isPresent()
                || value(side, Quantity.TIBIA_SCREW_ANGLE, numbers).isPresent();
        return asked.stream().anyMatch(ScrewSeen::hasOpenQuestion) || (measured && asked.isEmpty());
    }

    /** Both angles since the first film that tells them; how far the heads turn in the plate is not known here. */
    private static Optional<Caution> behind(
            Side side, Quantity joint, Quantity screws, List<ReadNumber> numbers, ChildOnFilm child) {
        var jointNow = value(side, joint, numbers);
        var screwsNow = value(side, screws, numbers);
        if (jointNow.isEmpty() || screwsNow.isEmpty()) {
            return Optional.empty();
        }
        return child.firstWith(side, joint, screws).flatMap(before -> child.on(before, screws)
                .map(heads -> ScrewLag.between(
                        joint,
                        new Angle(before.value()),
                        new Angle(jointNow.getAsDouble()),
                        new Angle(heads.value()),
                        new Angle(screwsNow.getAsDouble())))
                .filter(lag -> lag.verdict(Angle.ZERO) == ScrewLag.Verdict.BEHIND)
                .map(lag -> Caution.ofLimb(
                        Caution.Kind.SCREWS_BEHIND,
                        side,
                        lag.lag().degrees(),
                        lag.limit().degrees(),
                        before.day())));
    }

    private static OptionalDouble value(Side side, Quantity quantity, List<ReadNumber> numbers) {
        return numbers.stream()
                .filter(number -> number.side() == side && number.quantity() == quantity)
                .findFirst()
                .map(ReadNumber::value)
                .orElse(OptionalDouble.empty());
    }
}
