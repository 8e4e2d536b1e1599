package org.espalier.reading;

import java.util.List;
import java.util.Optional;
import org.espalier.kit.Texts;
import org.espalier.reading.MeasureAnswer.ShownNumber;
import org.espalier.reading.MeasureAnswer.State;
import org.espalier.reading.ReadNumber.Absence;
import org.espalier.science.alignment.NormalRange;
import org.espalier.science.quantity.Age;
import org.jspecify.annotations.Nullable;

/** Numbers as the film room lists them: those whose landmarks are there, with or without a value. */
final class NumberRows {

    private NumberRows() {}

    static List<ShownNumber> of(List<ReadNumber> numbers, Optional<Age> age) {
        return numbers.stream()
                .filter(number -> number.reasonOfAbsence().orElse(null) != Absence.LANDMARKS_MISSING)
                .map(number -> row(number, age))
                .toList();
    }

    private static ShownNumber row(ReadNumber number, Optional<Age> age) {
        var quantity = number.quantity();
        var range = age.flatMap(years -> NormalRange.of(quantity, years));
        return new ShownNumber(
                quantity.code(),
                number.side(),
                NumberText.label(quantity),
                number.value().isPresent()
                        ? NumberText.of(quantity, number.value().getAsDouble(), range)
                        : Texts.text("reading.text.none"),
                range.map(NumberRows::range).orElse(null),
                note(number),
                number.value().isPresent() ? state(number.value().getAsDouble(), range) : State.NONE);
    }

    private static State state(double value, Optional<NormalRange> range) {
        return range.map(normal -> normal.contains(value) ? State.IN : State.OUT)
                .orElse(State.NONE);
    }

    private static String range(NormalRange range) {
        var words = NumberText.of(range);
        return range.checking().isUnverified() ? Texts.text("reading.range.unverified", words) : words;
    }

    private static @Nullable String note(ReadNumber number) {
        if (number.reasonOfAbsence().isPresent()) {
            return Texts.of(number.reasonOfAbsence().get());
        }
        return number.doubtful()
                ? Texts.text("reading.note.doubtful")
                : NumberText.error(number.quantity()).orElse(null);
    }
}
