package org.espalier.prognosis;

import org.springframework.stereotype.Component;

/** Does a night's work at once. */
@Component
public class TestNight {

    private final Nightly nightly;

    TestNight(Nightly nightly) {
        this.nightly = nightly;
    }

    public void run() {
        nightly.run();
    }
}
