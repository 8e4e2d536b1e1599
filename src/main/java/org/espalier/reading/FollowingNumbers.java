package org.espalier.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.espalier.kit.Texts;
import org.espalier.reading.MeasureAnswer.Comparison;
import org.espalier.science.alignment.AxisZone;
import org.espalier.science.alignment.FemoralTibialRatio;
import org.espalier.science.alignment.MetaphysealAngleGroups;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.alignment.TibialShare;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Side;

/**
 * What follows from the numbers of one limb, each with its source: conventions and published groups, none of them
 * decides.
 */
final class FollowingNumbers {

    private final FilmMeasurement measurement;
    private final Side side;
    private final List<Comparison> found = new ArrayList<>();

    private FollowingNumbers(FilmMeasurement measurement, Side side) {
        this.measurement = measurement;
        this.side = side;
    }

    static List<Comparison> of(FilmMeasurement measurement) {
        return measurement.limbs().keySet().stream()
                .flatMap(side -> new FollowingNumbers(measurement, side).all().stream())
                .toList();
    }

    private List<Comparison> all() {
        value(Quantity.WBL).ifPresent(this::zone);
        angle(Quantity.MLDFA).ifPresent(femur -> angle(Quantity.MMPTA).ifPresent(tibia -> shares(femur, tibia)));
        angle(Quantity.FMDA).ifPresent(femur -> angle(Quantity.MDA).ifPresent(tibia -> ratio(femur, tibia)));
        value(Quantity.MDA).ifPresent(this::group);
        return found;
    }

    private void zone(double percent) {
        int zone = AxisZone.of(percent).number();
        add(
                "reading.zone",
                Texts.text(zone < 0 ? "reading.zone.medial" : "reading.zone.lateral", Math.abs(zone)),
                AxisZone.SOURCE);
    }

    /** Both zeros, since the choice moves the share across the line of half. */
    private void shares(Angle femur, Angle tibia) {
        var byRightAngles = TibialShare.percent(femur, tibia, TibialShare.Zero.RIGHT_ANGLES);
        var byMeans = TibialShare.percent(femur, tibia, TibialShare.Zero.ADULT_MEANS);
        if (byRightAngles.isPresent() || byMeans.isPresent()) {
            add(
                    "reading.tibial-share",
                    Texts.text("reading.tibial-share.both", share(byRightAngles), share(byMeans)),
                    Texts.text("reading.tibial-share.source"));
        }
    }

    private static String share(OptionalDouble percent) {
        return percent.isPresent()
                ? Texts.text("reading.tibial-share.percent", percent.getAsDouble())
                : Texts.text("reading.tibial-share.none");
    }

    private void ratio(Angle femur, Angle tibia) {
        FemoralTibialRatio.of(femur, tibia)
                .ifPresent(ratio -> add(
                        "reading.mda-ratio",
                        Texts.text(ratio < 1 ? "reading.mda-ratio.below" : "reading.mda-ratio.above", ratio),
                        Texts.text("reading.mda-ratio.source")));
    }

    private void group(double degrees) {
        if (degrees > 0) {
            add(
                    "reading.mda-group",
                    Texts.text("reading.mda-group."
                            + MetaphysealAngleGroups.zone(degrees).name()),
                    Texts.text("reading.mda-group.source"));
        }
    }

    private void add(String label, String text, String source) {
        found.add(new Comparison(Texts.text("reading.follows", Texts.of(side), Texts.text(label)), text, source));
    }

    private Optional<Angle> angle(Quantity quantity) {
        var value = value(quantity);
        return value.isPresent() ? Optional.of(new Angle(value.getAsDouble())) : Optional.empty();
    }

    private OptionalDouble value(Quantity quantity) {
        return measurement.numbers().stream()
                .filter(number -> number.side() == side && number.quantity() == quantity && !number.doubtful())
                .findFirst()
                .map(ReadNumber::value)
                .orElse(OptionalDouble.empty());
    }
}
