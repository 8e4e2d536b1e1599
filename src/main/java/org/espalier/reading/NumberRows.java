package org.espalier.reading;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.kit.Texts;
import org.espalier.reading.MeasureAnswer.ShownNumber;
import org.espalier.reading.MeasureAnswer.State;
import org.espalier.reading.ReadNumber.Absence;
import org.espalier.science.alignment.Landmark;
import org.espalier.science.alignment.NormalRange;
import org.espalier.science.exposure.Effect;
import org.jspecify.annotations.Nullable;

/**
 * Numbers as the film room lists them: those whose landmarks are there, with or without a value; of further landmarks
 * that were asked for also those not read.
 */
final class NumberRows {

    private final ReadingSettings settings;
    private final Norms norms;

    NumberRows(ReadingSettings settings, Norms norms) {
        this.settings = settings;
        this.norms = norms;
    }

    List<ShownNumber> of(List<ReadNumber> numbers) {
        return numbers.stream().filter(this::isListed).map(this::row).toList();
    }

    private boolean isListed(ReadNumber number) {
        return number.reasonOfAbsence().orElse(null) != Absence.LANDMARKS_MISSING || isAskedBeyondTheFrontal(number);
    }

    private boolean isAskedBeyondTheFrontal(ReadNumber number) {
        return number.quantity().family() != Landmark.Family.FRONTAL && settings.asks(number.side(), number.quantity());
    }

    private ShownNumber row(ReadNumber number) {
        var quantity = number.quantity();
        var range = norms.range(quantity);
        return new ShownNumber(
                quantity.code(),
                number.side(),
                NumberText.label(quantity),
                number.value().isPresent()
                        ? NumberText.of(quantity, number.value().getAsDouble(), range)
                        : Texts.text("reading.text.none"),
                range.map(NumberRows::range).orElse(null),
                norms.words(quantity).orElse(null),
                note(number),
                number.value().isPresent() ? state(number.value().getAsDouble(), range) : State.NONE,
                number.doubtful());
    }

    private static State state(double value, Optional<NormalRange> range) {
        return range.map(normal -> normal.contains(value) ? State.IN : State.OUT)
                .orElse(State.NONE);
    }

    private static String range(NormalRange range) {
        var words = NumberText.of(range);
        return range.checking().isUnverified() ? Texts.text("reading.range.unverified", words) : words;
    }

    private @Nullable String note(ReadNumber number) {
        if (number.reasonOfAbsence().isPresent()) {
            return Texts.of(number.reasonOfAbsence().get());
        }
        var first = number.doubtful() ? Optional.of(doubt(number)) : NumberText.error(number.quantity());
        var z = norms.z(number.quantity(), number.value().orElseThrow());
        var note = Stream.of(first, z).flatMap(Optional::stream).collect(Collectors.joining(" · "));
        return note.isEmpty() ? null : note;
    }

    /** Why, and by how much in the quantity's own unit where that can be reckoned. */
    private static String doubt(ReadNumber number) {
        return number.reasonOfDoubt()
                .map(greyed -> doubt(number, greyed))
                .orElseGet(() -> Texts.text("reading.note.doubtful"));
    }

    private static String doubt(ReadNumber number, Effect.Greyed greyed) {
        var why = Texts.text("reading.doubt." + greyed.reason().name());
        return greyed.error().isPresent()
                ? Texts.text(
                        "reading.doubt.sized",
                        why,
                        NumberText.brief(number.quantity(), greyed.error().getAsDouble()))
                : why;
    }
}
