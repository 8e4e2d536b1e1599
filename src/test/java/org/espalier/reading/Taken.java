package org.espalier.reading;

import tools.jackson.databind.json.JsonMapper;

/** How a film was taken, in a line: what is left out was not recorded. */
final class Taken {

    private static final JsonMapper JSON = new JsonMapper();

    /** A standing film of both limbs from the front in one shot, straight, patellae forward, all of it recorded. */
    static final String GOOD = """
            "stance": "STANDING_ALONE", "view": "AP", "technique": "ONE_SHOT", "limbsShown": "BOTH",
            "patellaRight": "FORWARD", "patellaLeft": "FORWARD", "flexionRight": 0, "flexionLeft": 0,
            "marker": "READABLE", "ossification": "OSSIFIED"
            """;

    private Taken() {}

    /** A good film but for what is said, as in {@code "stance": "SUPINE"}. */
    static ReadingSettings but(String otherwise) {
        return ReadingSettings.ofFilm().withTaken(JSON.readValue("{" + GOOD + ", " + otherwise + "}", FilmTaken.class));
    }

    /** A good film. */
    static ReadingSettings good() {
        return ReadingSettings.ofFilm().withTaken(JSON.readValue("{" + GOOD + "}", FilmTaken.class));
    }
}
