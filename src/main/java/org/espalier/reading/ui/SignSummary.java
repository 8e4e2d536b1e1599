package org.espalier.reading.ui;

import java.util.List;
import org.espalier.reading.Caution;
import org.espalier.reading.FilmMeasurement;
import org.espalier.reading.ReadNumber;
import org.espalier.reading.ReadingDraft;

/** What a reader sees before signing: exactly what will be signed. */
record SignSummary(ReadingDraft draft, List<ReadNumber> numbers, List<Caution> cautions) {

    static SignSummary of(ReadingDraft draft, FilmMeasurement measurement) {
        return new SignSummary(draft, measurement.values(), measurement.cautions());
    }

    boolean isSuperseding() {
        return draft.supersedes().isPresent();
    }
}
