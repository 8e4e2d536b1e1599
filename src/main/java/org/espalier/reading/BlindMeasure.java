package org.espalier.reading;

import org.espalier.science.quantity.Calibration;

/** Measures a film of which nothing is known but its pixels and its scale, as a colleague elsewhere reads it. */
public final class BlindMeasure {

    private BlindMeasure() {}

    /** The numbers of the marks, each with its value. */
    public static FilmMeasurement measure(Marks marks, Calibration scale) {
        return FilmMeasurement.of(marks, ReadingSettings.ofFilm(), scale);
    }

    /** What the film room draws. */
    public static MeasureAnswer answer(FilmMeasurement measured, long seq, long revision) {
        return MeasureAnswer.of(measured, ReadingSettings.ofFilm(), ChildOnFilm.UNKNOWN, seq, revision);
    }
}
