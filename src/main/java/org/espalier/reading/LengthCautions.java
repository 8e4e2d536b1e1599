package org.espalier.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.exposure.LengthCheck;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;

/**
 * The lengths of each limb held against age and the film before.
 *
 * @param numbers those given, lengths that must leave the trend in doubt; angles stay
 * @param cautions what does not fit
 */
record LengthCautions(List<ReadNumber> numbers, List<Caution> cautions) {

    static LengthCautions of(List<ReadNumber> numbers, ChildOnFilm child) {
        var cautions = new ArrayList<Caution>();
        var left = new ArrayList<Side>();
        for (Side side : Side.values()) {
            lengths(side, numbers).ifPresent(now -> {
                cautions.addAll(forAge(side, now, child));
                var since = since(side, now, child);
                cautions.addAll(since);
                if (!since.isEmpty()) {
                    left.add(side);
                }
            });
        }
        return new LengthCautions(
                numbers.stream()
                        .map(number -> left.contains(number.side()) && isLength(number) ? number.inDoubt() : number)
                        .toList(),
                cautions);
    }

    private static List<Caution> forAge(Side side, LengthCheck now, ChildOnFilm child) {
        return child.sex().flatMap(sex -> child.age().map(age -> now.forAge(sex, age))).orElse(List.of()).stream()
                .map(finding -> Caution.ofLimb(Caution.Kind.valueOf(finding.name()), side))
                .toList();
    }

    private static List<Caution> since(Side side, LengthCheck now, ChildOnFilm child) {
        var femur = child.last(side, Quantity.FEMUR_LENGTH);
        return femur.flatMap(before -> child.on(before, Quantity.TIBIA_LENGTH)
                        .map(tibia -> now.since(new LengthCheck(length(before), length(tibia))).stream()
                                .map(finding -> shrank(finding, side, now, before, tibia))
                                .toList()))
                .orElse(List.of());
    }

    private static Caution shrank(
            LengthCheck.Finding finding, Side side, LengthCheck now, EarlierNumber femur, EarlierNumber tibia) {
        var kind = Caution.Kind.valueOf(finding.name());
        return switch (finding) {
            case FEMUR_SHRANK ->
                Caution.ofLimb(kind, side, femur.value() - now.femur().millimetres(), femur.day());
            case TIBIA_SHRANK ->
                Caution.ofLimb(kind, side, tibia.value() - now.tibia().millimetres(), tibia.day());
            default -> Caution.ofLimb(kind, side, femur.day());
        };
    }

    private static Optional<LengthCheck> lengths(Side side, List<ReadNumber> numbers) {
        return value(side, Quantity.FEMUR_LENGTH, numbers).flatMap(femur -> value(side, Quantity.TIBIA_LENGTH, numbers)
                .map(tibia -> new LengthCheck(femur, tibia)));
    }

    private static Optional<Length> value(Side side, Quantity quantity, List<ReadNumber> numbers) {
        return numbers.stream()
                .filter(number -> number.side() == side && number.quantity() == quantity)
                .flatMap(number -> number.value().stream().boxed())
                .filter(millimetres -> millimetres > 0)
                .map(Length::ofMillimetres)
                .findFirst();
    }

    private static Length length(EarlierNumber earlier) {
        return Length.ofMillimetres(earlier.value());
    }

    private static boolean isLength(ReadNumber number) {
        return switch (number.quantity()) {
            case FEMUR_LENGTH, TIBIA_LENGTH, LIMB_LENGTH, FEMUR_FILM_LENGTH, TIBIA_FILM_LENGTH, LIMB_FILM_LENGTH ->
                true;
            default -> false;
        };
    }
}
