package org.espalier.outcomes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.espalier.outcomes.TestOutcomes.PLATE;

import java.time.LocalDate;
import org.espalier.IntegrationTest;
import org.espalier.film.TestDoor.Sender;
import org.espalier.outcomes.TestOutcomes.Film;
import org.espalier.patient.ChildId;
import org.espalier.reading.TestReader;
import org.espalier.treatment.ImplantId;
import org.espalier.treatment.ProcedureKind;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** A growth plate that is let go and held again: what comes after belongs to the second time. */
@IntegrationTest
class HeldAgainIntegrationTests {

    private static final Span SPAN = new Span(2021, 2023);
    private static final LocalDate OUT = LocalDate.of(2022, 3, 1);
    private static final LocalDate AGAIN = LocalDate.of(2023, 1, 10);

    @Autowired
    TestReader reader;

    @Autowired
    TestOutcomes courses;

    @Autowired
    OutcomeService outcomes;

    private Results results(Sender surgeon) {
        courses.renew(surgeon.site());
        return surgeon.does(() -> outcomes.results(surgeon.site(), SPAN));
    }

    private ChildId child(Sender surgeon) {
        return courses.child(surgeon, Film.of(2022, 2, 14.5), Film.of(2024, 3, 6));
    }

    @Test
    void byAnotherPlateItIsNotSaidToHaveDrifted() {
        var surgeon = reader.surgeon();
        var child = child(surgeon);
        var first = courses.plate(surgeon, child, PLATE, false);
        courses.act(surgeon, child, OUT, ProcedureKind.PLATE_OUT, first, false);
        courses.plate(surgeon, child, AGAIN, false);
        var results = results(surgeon);
        assertThat(results.plates()).extracting(PlateCourse::after).containsExactly(After.HELD_AGAIN, After.NOT_DUE);
        assertThat(results.ended(Came.STRAIGHT)).isEqualTo(1);
        assertThat(results.running()).isEqualTo(1);
        assertThat(results.limbs()).isEqualTo(1);
    }

    @Test
    void byTheScrewThatWasOutItIsNotSaidToHaveDrifted() {
        var surgeon = reader.surgeon();
        var child = child(surgeon);
        var plate = courses.plate(surgeon, child, PLATE, false);
        courses.act(surgeon, child, OUT, ProcedureKind.METAPHYSEAL_SCREW_OUT, plate, false);
        courses.act(surgeon, child, AGAIN, ProcedureKind.METAPHYSEAL_SCREW_IN, plate, false);
        assertThat(results(surgeon).plates()).singleElement().satisfies(one -> {
            assertThat(one.came()).contains(Came.STRAIGHT);
            assertThat(one.to()).isEqualTo(OUT);
            assertThat(one.past().orElseThrow()).isEqualTo(-0.5, within(0.05));
            assertThat(one.after()).isEqualTo(After.HELD_AGAIN);
        });
    }

    @Test
    void onTheDayItCameOutItIsAnExchange() {
        var surgeon = reader.surgeon();
        var child = child(surgeon);
        ImplantId first = courses.plate(surgeon, child, PLATE, false);
        courses.act(surgeon, child, OUT, ProcedureKind.PLATE_OUT, first, false);
        courses.plate(surgeon, child, OUT, false);
        assertThat(results(surgeon).ended(Came.FAILED)).isEqualTo(1);
    }
}
