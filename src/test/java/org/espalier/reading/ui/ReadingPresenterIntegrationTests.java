package org.espalier.reading.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.film.FilmId;
import org.espalier.film.TestDoor.Sender;
import org.espalier.reading.ReadingId;
import org.espalier.reading.SignOutcome;
import org.espalier.reading.TestReader;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@IntegrationTest
class ReadingPresenterIntegrationTests {

    @Autowired
    ReadingPresenter presenter;

    @Autowired
    TestReader reader;

    @Autowired
    TestNetwork network;

    Sender surgeon;
    FilmId film;

    @BeforeEach
    void film() {
        surgeon = reader.surgeon();
        film = reader.film(surgeon, reader.child(surgeon, LocalDate.of(2016, 5, 20)), LocalDate.of(2025, 5, 20));
    }

    @Test
    void beginsAReadingOfAFilmThatNobodyHasRead() {
        var room = open(surgeon);
        assertThat(room.draft()).isPresent();
        assertThat(room.shown()).isEmpty();
        assertThat(open(surgeon).draft().orElseThrow().id())
                .isEqualTo(room.draft().orElseThrow().id());
    }

    @Test
    void showsTheSignedReadingAndLetsItBeSuperseded() {
        var signed = reader.signed(surgeon, film);
        var room = open(surgeon);
        assertThat(room.draft()).isEmpty();
        assertThat(room.shown().orElseThrow().id()).isEqualTo(signed);
        assertThat(room.mayCorrect()).isTrue();
        var again = surgeon.does(() -> presenter.correct(signed));
        assertThat(open(surgeon).draft().orElseThrow().id()).isEqualTo(again.id());
        var asked =
                surgeon.does(() -> presenter.open(film, Optional.of(signed))).orElseThrow();
        assertThat(asked.draft()).isEmpty();
        assertThat(asked.shown().orElseThrow().id()).isEqualTo(signed);
    }

    @Test
    void signsWhatTheSummaryShowed() {
        var first = reader.signed(surgeon, film);
        surgeon.does(() -> presenter.correct(first));
        var summary = surgeon.does(() -> presenter.summary(film)).orElseThrow();
        assertThat(summary.isSuperseding()).isTrue();
        assertThat(summary.rows()).contains(new SignSummary.Row("HKA", "22.0° varus", "22.0° varus"));
        assertThat(surgeon.does(() -> presenter.sign(summary, "Read anew")))
                .isEqualTo(new SignOutcome.Signed(summary.draft().id()));
        assertThat(open(surgeon).signed()).hasSize(2);
    }

    @Test
    void keepsWhatIsChosenBesideTheLandmarks() {
        open(surgeon);
        surgeon.does(() -> presenter.choose(film, settings -> settings.withLimbs(List.of(Side.LEFT))));
        assertThat(open(surgeon).draft().orElseThrow().settings().limbs()).containsExactly(Side.LEFT);
    }

    @Test
    void letsOthersLookWithoutADraftOfTheirOwn() {
        var nurse = new Sender(network.staff(surgeon.site().value(), "NURSE"), surgeon.site());
        var unread = open(nurse);
        assertThat(unread.draft()).isEmpty();
        assertThat(unread.mayCorrect()).isFalse();
        var signed = reader.signed(surgeon, film);
        assertThat(open(nurse).shown().orElseThrow().id()).isEqualTo(signed);
        assertThat(open(nurse).mayCorrect()).isFalse();
    }

    @Test
    void hasNoRoomForAFilmOfAnotherSite() {
        var stranger = reader.surgeon();
        assertThat(stranger.does(() -> presenter.open(film, Optional.empty()))).isEmpty();
        assertThat(stranger.does(() -> presenter.open(film, Optional.of(new ReadingId(UUID.randomUUID())))))
                .isEmpty();
    }

    private FilmRoomState open(Sender who) {
        return who.does(() -> presenter.open(film, Optional.empty())).orElseThrow();
    }
}
