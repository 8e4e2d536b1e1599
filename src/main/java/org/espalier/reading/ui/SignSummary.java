package org.espalier.reading.ui;

import java.util.List;
import org.espalier.reading.MeasureAnswer;
import org.espalier.reading.ReadingDraft;
import org.espalier.science.quantity.Side;

/**
 * What a reader sees before signing: exactly what will be signed.
 *
 * @param moved whether it supersedes a reading signed for another child
 * @param rows one a quantity, in listing order
 */
record SignSummary(ReadingDraft draft, List<Row> rows, List<MeasureAnswer.Warning> warnings, boolean moved) {

    /** One quantity of the limbs read; blank where a limb has no number. */
    record Row(String label, String right, String left) {

        static Row of(String id, List<MeasureAnswer.ShownNumber> numbers) {
            var first = numbers.stream()
                    .filter(number -> number.id().equals(id))
                    .findFirst()
                    .orElseThrow();
            return new Row(first.label(), text(id, Side.RIGHT, numbers), text(id, Side.LEFT, numbers));
        }

        private static String text(String id, Side side, List<MeasureAnswer.ShownNumber> numbers) {
            return numbers.stream()
                    .filter(number -> number.id().equals(id) && number.side() == side)
                    .findFirst()
                    .map(MeasureAnswer.ShownNumber::text)
                    .orElse("");
        }
    }

    static SignSummary of(ReadingDraft draft, MeasureAnswer answer, boolean moved) {
        var rows = answer.numbers().stream()
                .map(MeasureAnswer.ShownNumber::id)
                .distinct()
                .map(id -> Row.of(id, answer.numbers()))
                .toList();
        return new SignSummary(draft, rows, answer.warnings(), moved);
    }

    boolean isSuperseding() {
        return draft.supersedes().isPresent();
    }
}
