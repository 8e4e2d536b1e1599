package org.espalier.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.espalier.IntegrationTest;
import org.espalier.film.FilmId;
import org.espalier.film.TestDoor.Sender;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@IntegrationTest
class DraftServiceIntegrationTests {

    @Autowired
    TestReader reader;

    @Autowired
    DraftService drafts;

    Sender surgeon;
    FilmId film;

    @BeforeEach
    void film() {
        surgeon = reader.surgeon();
        film = reader.film(surgeon, reader.child(surgeon, LocalDate.of(2016, 5, 20)), LocalDate.of(2025, 5, 20));
    }

    @Test
    void keepsADraftAtEveryChange() {
        var draft = surgeon.does(() -> drafts.begin(film));
        var answer = measured(draft, TestReader.commit(1, TestReader.bothLimbs()));
        assertThat(answer.revision()).isEqualTo(2);
        assertThat(answer.numbers())
                .filteredOn(number -> number.id().equals("mMPTA") && number.side() == Side.LEFT)
                .singleElement()
                .satisfies(number -> {
                    assertThat(number.text()).isEqualTo("72.0° varus");
                    assertThat(number.state()).isEqualTo(MeasureAnswer.State.OUT);
                    assertThat(number.range()).isEqualTo("85 to 90°");
                });
        var kept = surgeon.does(() -> drafts.begin(film));
        assertThat(kept.id()).isEqualTo(draft.id());
        assertThat(kept.marks()).isEqualTo(TestReader.bothLimbs());
        assertThat(surgeon.does(() -> drafts.answer(kept)).numbers()).isEqualTo(answer.numbers());
    }

    @Test
    void keepsNothingWhileTheHandMoves() {
        var draft = surgeon.does(() -> drafts.begin(film));
        assertThat(measured(draft, TestReader.ask(1, TestReader.bothLimbs())).revision())
                .isEqualTo(1);
        assertThat(surgeon.does(() -> drafts.find(film)).orElseThrow().marks()).isEqualTo(Marks.NONE);
    }

    @Test
    void showsTheNewerDraftWhenAnOlderOneArrives() {
        var draft = surgeon.does(() -> drafts.begin(film));
        measured(draft, TestReader.commit(1, TestReader.bothLimbs()));
        var late = surgeon.does(() -> drafts.measure(draft.id(), TestReader.commit(1, Marks.NONE)));
        assertThat(late).isInstanceOfSatisfying(MeasureOutcome.Conflict.class, conflict -> {
            assertThat(conflict.revision()).isEqualTo(2);
            assertThat(conflict.points()).isEqualTo(TestReader.bothLimbs().points());
        });
        assertThat(surgeon.does(() -> drafts.find(film)).orElseThrow().marks()).isEqualTo(TestReader.bothLimbs());
    }

    @Test
    void letsPointsFollowAChangeOfSettingsThatTheyDoNotKnow() {
        var draft = surgeon.does(() -> drafts.begin(film));
        surgeon.does(() -> drafts.choose(draft.id(), draft.settings().withCalibration(CalibrationChoice.NONE)));
        var answer = measured(draft, TestReader.commit(1, TestReader.bothLimbs()));
        assertThat(answer.revision()).isEqualTo(3);
        var kept = surgeon.does(() -> drafts.find(film)).orElseThrow();
        assertThat(kept.settings().calibration()).isEqualTo(CalibrationChoice.NONE);
        assertThat(kept.marks()).isEqualTo(TestReader.bothLimbs());
    }

    private MeasureAnswer measured(ReadingDraft draft, MeasureRequest request) {
        var outcome = surgeon.does(() -> drafts.measure(draft.id(), request));
        assertThat(outcome).isInstanceOf(MeasureOutcome.Answered.class);
        return ((MeasureOutcome.Answered) outcome).answer();
    }
}
