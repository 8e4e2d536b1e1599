package org.espalier.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.film.FilmId;
import org.espalier.film.TestDoor.Sender;
import org.espalier.patient.ChildId;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Calibration;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.test.context.event.ApplicationEvents;
import org.springframework.test.context.event.RecordApplicationEvents;

@IntegrationTest
@RecordApplicationEvents
class ReadingIntegrationTests {

    private static final LocalDate BIRTH = LocalDate.of(2016, 5, 20);
    private static final LocalDate TAKEN = LocalDate.of(2025, 5, 20);

    @Autowired
    TestReader reader;

    @Autowired
    TestNetwork network;

    @Autowired
    DraftService drafts;

    @Autowired
    ReadingService readings;

    @Autowired
    JdbcClient jdbc;

    Sender surgeon;
    ChildId child;
    FilmId film;

    @BeforeEach
    void film() {
        surgeon = reader.surgeon();
        child = reader.child(surgeon, BIRTH);
        film = reader.film(surgeon, child, TAKEN);
    }

    @Test
    void signsReadingAndNumbersAndForgetsTheDraft(@Autowired ApplicationEvents events) {
        var signed = reader.signed(surgeon, film);
        var kept = surgeon.does(() -> readings.ofFilm(film));
        assertThat(kept).singleElement().satisfies(reading -> {
            assertThat(reading.id()).isEqualTo(signed);
            assertThat(reading.child()).isEqualTo(child);
            assertThat(reading.limbs()).containsExactly(Side.RIGHT, Side.LEFT);
            assertThat(reading.calibration().origin()).isEqualTo(Calibration.Origin.DETECTOR_PLANE);
            assertThat(value(reading, Side.RIGHT, Quantity.HKA)).isCloseTo(ReferenceLimb.HKA, within(0.02));
            assertThat(value(reading, Side.LEFT, Quantity.MAD)).isCloseTo(ReferenceLimb.MAD, within(0.02));
        });
        assertThat(surgeon.does(() -> readings.marks(signed))).isEqualTo(TestReader.bothLimbs());
        assertThat(surgeon.does(() -> drafts.find(film))).isEmpty();
        assertThat(events.stream(ReadingSigned.class))
                .containsExactly(new ReadingSigned(surgeon.site().value(), child.value(), film.value(), signed));
    }

    @Test
    void listsSignedNumbersInTheOrderOfTheDraft() {
        var draft = surgeon.does(() -> drafts.begin(film));
        measured(draft, TestReader.commit(1, TestReader.bothLimbs()));
        var before = surgeon.does(() -> drafts.answer(drafts.find(film).orElseThrow()));
        sign(draft, 2, null);
        var after = surgeon.does(() -> readings.answer(readings.ofFilm(film).getFirst()));
        assertThat(after.numbers().stream().map(MeasureAnswer.ShownNumber::id).distinct())
                .containsExactlyElementsOf(before.numbers().stream()
                        .map(MeasureAnswer.ShownNumber::id)
                        .distinct()
                        .toList());
    }

    @Test
    void signsOnceHoweverOftenItIsAsked() throws InterruptedException {
        var draft = surgeon.does(() -> drafts.begin(film));
        measured(draft, TestReader.commit(1, TestReader.bothLimbs()));
        try (var threads = Executors.newFixedThreadPool(6)) {
            var clicks = new ArrayList<Callable<SignOutcome>>();
            for (int i = 0; i < 12; i++) {
                clicks.add(() -> surgeon.does(() -> readings.sign(draft.id(), 2, null)));
            }
            assertThat(threads.invokeAll(clicks))
                    .extracting(Future::get)
                    .containsOnly(new SignOutcome.Signed(draft.id()));
        }
        assertThat(surgeon.does(() -> readings.ofFilm(film))).hasSize(1);
    }

    @Test
    void refusesToSignWhatCannotStand() {
        var draft = surgeon.does(() -> drafts.begin(film));
        assertThat(sign(draft, 1, null)).isEqualTo(refused(SignOutcome.Reason.NO_NUMBERS));
        measured(draft, TestReader.commit(1, TestReader.bothLimbs()));
        assertThat(sign(draft, 1, null)).isEqualTo(refused(SignOutcome.Reason.CHANGED_SINCE));
        assertThat(sign(new ReadingId(UUID.randomUUID()), 1, null)).isEqualTo(refused(SignOutcome.Reason.NO_DRAFT));
        measured(draft, TestReader.commit(2, withCondylesExchanged()));
        assertThat(sign(draft, 3, null)).isEqualTo(refused(SignOutcome.Reason.IMPOSSIBLE_GEOMETRY));
        assertThat(surgeon.does(() -> readings.ofFilm(film))).isEmpty();
    }

    @Test
    void refusesToSignAFilmWhoseChildIsNotKnown() {
        var stray = reader.filmOfNobody(surgeon);
        var draft = surgeon.does(() -> drafts.begin(stray));
        measured(draft, TestReader.commit(1, TestReader.bothLimbs()));
        assertThat(sign(draft, 2, null)).isEqualTo(refused(SignOutcome.Reason.FILM_WITHOUT_CHILD));
    }

    @Test
    void supersedesOnlyWithAReasonAndKeepsBoth() {
        var first = reader.signed(surgeon, film);
        var again = surgeon.does(() -> drafts.correct(first));
        assertThat(again.marks()).isEqualTo(TestReader.bothLimbs());
        assertThat(sign(again, 1, " ")).isEqualTo(refused(SignOutcome.Reason.REASON_MISSING));
        assertThat(sign(again, 1, "Hip centre was off")).isEqualTo(new SignOutcome.Signed(again.id()));
        var both = surgeon.does(() -> readings.ofFilm(film));
        assertThat(both).extracting(Reading::id).containsExactly(again.id(), first);
        assertThat(both.getFirst().supersedes()).contains(new Reading.Superseding(first, "Hip centre was off"));
        assertThat(both.getLast().supersededBy()).contains(again.id());
    }

    @Test
    void refusesToSupersedeWhatAColleagueHasSuperseded() {
        var first = reader.signed(surgeon, film);
        var colleague = reader.colleague(surgeon);
        var mine = surgeon.does(() -> drafts.correct(first));
        var theirs = colleague.does(() -> drafts.correct(first));
        colleague.does(() -> readings.sign(theirs.id(), 1, "Read anew"));
        assertThat(sign(mine, 1, "Read anew")).isEqualTo(refused(SignOutcome.Reason.SUPERSEDED_MEANWHILE));
        assertThat(surgeon.does(() -> drafts.find(film))).isPresent();
    }

    @Test
    void isNeverChangedNotEvenByTheOwner() {
        var signed = reader.signed(surgeon, film).value();
        for (String change : List.of(
                "update reading set marks = '{}' where id = ?",
                "delete from reading where id = ?",
                "update reading_number set value = 0 where reading_id = ?",
                "delete from reading_number where reading_id = ?")) {
            assertThatThrownBy(() -> network.owner().sql(change).param(signed).update())
                    .isInstanceOf(DataAccessException.class)
                    .rootCause()
                    .hasMessageContaining("can be superseded, not changed");
            assertThatThrownBy(() -> network.as(
                            surgeon.staff(),
                            () -> jdbc.sql(change).param(signed).update()))
                    .isInstanceOf(DataAccessException.class)
                    .rootCause()
                    .hasMessageContaining("permission denied");
        }
    }

    @Test
    void showsAnotherSiteNothing() {
        var signed = reader.signed(surgeon, film);
        var draft = surgeon.does(() -> drafts.correct(signed));
        var stranger = reader.surgeon();
        assertThat(stranger.does(() -> readings.ofChild(surgeon.site(), child))).isEmpty();
        assertThatThrownBy(() -> stranger.does(() -> readings.ofFilm(film)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> stranger.does(() -> drafts.begin(film))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> stranger.does(() -> drafts.correct(signed)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> stranger.does(() -> drafts.readBlind(signed)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(stranger.does(() -> drafts.measure(draft.id(), TestReader.ask(1, Marks.NONE))))
                .isInstanceOf(MeasureOutcome.Gone.class);
        assertThat(stranger.does(() -> readings.sign(draft.id(), 1, "No reason at all")))
                .isEqualTo(refused(SignOutcome.Reason.NO_DRAFT));
        assertThat(network.as(stranger.staff(), () -> jdbc.sql("select count(*) from reading")
                        .query(Long.class)
                        .single()))
                .isZero();
    }

    @Test
    void letsOnlySurgeonsReadAndSign() {
        var nurse = new Sender(network.staff(surgeon.site().value(), "NURSE"), surgeon.site());
        var signed = reader.signed(surgeon, film);
        assertThat(nurse.does(() -> readings.ofFilm(film))).hasSize(1);
        assertThatThrownBy(() -> nurse.does(() -> drafts.begin(film))).isInstanceOf(AccessDeniedException.class);
        assertThatThrownBy(() -> nurse.does(() -> readings.sign(signed, 1, null)))
                .isInstanceOf(AccessDeniedException.class);
    }

    @Test
    void raisesWhenNobodyAsks() {
        assertThatThrownBy(() -> jdbc.sql("select count(*) from reading_number")
                        .query(Long.class)
                        .single())
                .rootCause()
                .hasMessageContaining("no caller");
    }

    private MeasureAnswer measured(ReadingDraft draft, MeasureRequest request) {
        var outcome = surgeon.does(() -> drafts.measure(draft.id(), request));
        assertThat(outcome).isInstanceOf(MeasureOutcome.Answered.class);
        return ((MeasureOutcome.Answered) outcome).answer();
    }

    private SignOutcome sign(ReadingDraft draft, long revision, @Nullable String reason) {
        return sign(draft.id(), revision, reason);
    }

    private SignOutcome sign(ReadingId draft, long revision, @Nullable String reason) {
        return surgeon.does(() -> readings.sign(draft, revision, reason));
    }

    private static SignOutcome refused(SignOutcome.Reason reason) {
        return new SignOutcome.Refused(reason);
    }

    private static Marks withCondylesExchanged() {
        var marks = TestReader.bothLimbs();
        var points = marks.points().stream()
                .map(p -> p.side() == Side.RIGHT && p.landmark().startsWith("condyle")
                        ? new PlacedPoint(
                                p.side(),
                                p.landmark().endsWith("medial") ? "condyle_lateral" : "condyle_medial",
                                p.x(),
                                p.y())
                        : p)
                .toList();
        return new Marks(points, marks.edges());
    }

    private static double value(Reading reading, Side side, Quantity quantity) {
        return reading.numbers().stream()
                .filter(number -> number.side() == side && number.quantity() == quantity)
                .findFirst()
                .orElseThrow()
                .value()
                .orElseThrow();
    }
}
