package org.espalier.opinion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.access.StaffId;
import org.espalier.film.FilmId;
import org.espalier.film.PictureId;
import org.espalier.film.PictureService;
import org.espalier.film.TestClips;
import org.espalier.film.TestDoor.Sender;
import org.espalier.film.TestPictures;
import org.espalier.patient.ChildId;
import org.espalier.platform.Ids;
import org.espalier.reading.TestReader;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What a grant opens and what it does not, asked of the database itself as the application's role. */
@IntegrationTest
class OpinionWallsIntegrationTests {

    private static final List<String> TABLES = List.of(
            "opinion_thread where id",
            "opinion_shown where thread_id",
            "opinion_film where thread_id",
            "opinion_clip where thread_id",
            "opinion_message where thread_id",
            "opinion_mark where thread_id",
            "opinion_view where thread_id",
            "opinion_member where thread_id");

    @Autowired
    TestNetwork network;

    @Autowired
    TestReader reader;

    @Autowired
    TestOpinion world;

    @Autowired
    OpinionService opinions;

    @Autowired
    OpinionFilmService films;

    @Autowired
    ClosingService closings;

    @Autowired
    TestPictures pictures;

    @Autowired
    PictureService originals;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    Ids ids;

    Sender asker;
    Sender colleague;
    Sender stranger;
    ChildId child;
    FilmId film;
    PictureId clip;
    ThreadId thread;

    @BeforeEach
    void ask() {
        asker = reader.surgeon();
        colleague = reader.surgeon();
        stranger = reader.surgeon();
        child = reader.child(asker, LocalDate.of(2018, 3, 14));
        film = reader.film(asker, child, LocalDate.of(2024, 3, 14));
        reader.signed(asker, film);
        clip = pictures.kept(asker, child, LocalDate.of(2025, 5, 6), TestClips.mp4("Wanda"));
        thread = world.asked(asker, child, List.of(film), colleague);
        var shown = world.film(asker, thread);
        asker.does(() -> opinions.say(thread, ids.next(), "It grew worse.", Optional.empty()));
        asker.does(() -> films.draw(thread, shown, List.of(TestOpinion.line("bar?"))));
        colleague.does(() -> opinions.say(thread, ids.next(), "Was there a fever?", Optional.empty()));
        colleague.does(() -> opinions.advise(thread, ids.next(), TestOpinion.advice(Advice.PLATE)));
    }

    private long rows(Sender who, String table, UUID id) {
        return network.as(who.staff(), () -> jdbc.sql("select count(*) from " + table + " = ?")
                .param(id)
                .query(Long.class)
                .single());
    }

    @Test
    void aColleagueSeesTheThreadAndNothingOfTheChildsOwnRecord() {
        assertThat(TABLES).allSatisfy(table -> assertThat(rows(colleague, table, thread.value()))
                .as(table)
                .isPositive());
        assertThat(List.of("opinion_case where child_id", "child where id", "child_identity where child_id"))
                .allSatisfy(table -> assertThat(rows(colleague, table, child.value()))
                        .as(table)
                        .isZero());
        assertThat(List.of("film where id", "film_label where film_id", "reading where film_id"))
                .allSatisfy(table -> assertThat(rows(colleague, table, film.value()))
                        .as(table)
                        .isZero());
        assertThat(List.of("opinion_source where thread_id", "opinion_picture where thread_id"))
                .allSatisfy(table -> assertThat(rows(colleague, table, thread.value()))
                        .as(table)
                        .isZero());
        assertThat(rows(colleague, "clinical_picture where id", clip.value())).isZero();
        assertThat(colleague.does(() -> opinions.open(thread)).orElseThrow().child())
                .isEmpty();
    }

    @Test
    void whoWasNotAskedSeesNothing() {
        assertThat(TABLES).allSatisfy(table -> assertThat(rows(stranger, table, thread.value()))
                .as(table)
                .isZero());
        assertThat(stranger.does(() -> opinions.open(thread))).isEmpty();
        assertThat(stranger.does(() -> opinions.search("fever"))).isEmpty();
        assertThatThrownBy(() -> stranger.does(() -> opinions.say(thread, ids.next(), "I heard.", Optional.empty())))
                .isInstanceOf(DataAccessException.class);
    }

    @Test
    void aGrantOpensOneThreadAndNoOtherOfTheSameChild() {
        var other = world.asked(asker, child, List.of(film), stranger);
        assertThat(colleague.does(() -> opinions.open(other))).isEmpty();
        assertThat(rows(colleague, "opinion_film where thread_id", other.value()))
                .isZero();
    }

    @Test
    void afterItIsWithdrawnOnlyTheirOwnWordsStay() {
        assertThat(asker.does(() -> opinions.withdraw(thread, new StaffId(colleague.staff()))))
                .isTrue();
        assertLockedOut();
    }

    @Test
    void itEndsByItself() {
        network.owner()
                .sql("update opinion_member set opens_at = now() - interval '2 days',"
                        + " ends_at = now() - interval '1 second' where thread_id = ? and staff_id = ?")
                .params(thread.value(), colleague.staff())
                .update();
        assertLockedOut();
    }

    @Test
    void itEndsWithTheClosingOfTheThread() {
        assertThat(asker.does(() -> closings.close(thread, Advice.PLATE, "Plated.", "the team")))
                .isTrue();
        assertLockedOut();
        assertThatThrownBy(() -> asker.does(() -> opinions.say(thread, ids.next(), "One more.", Optional.empty())))
                .isInstanceOf(DataAccessException.class);
    }

    private void assertLockedOut() {
        assertThat(List.of(
                        "opinion_thread where id",
                        "opinion_shown where thread_id",
                        "opinion_film where thread_id",
                        "opinion_clip where thread_id",
                        "opinion_mark where thread_id",
                        "opinion_hand_over where thread_id"))
                .allSatisfy(table -> assertThat(rows(colleague, table, thread.value()))
                        .as(table)
                        .isZero());
        assertThat(rows(colleague, "opinion_message where thread_id", thread.value()))
                .isEqualTo(1);
        assertThat(rows(colleague, "opinion_view where thread_id", thread.value()))
                .isEqualTo(1);
        assertThat(colleague.does(() -> opinions.open(thread))).isEmpty();
        assertThat(colleague.does(() -> opinions.mine())).isEmpty();
        assertThat(colleague.does(() -> opinions.search("worse"))).isEmpty();
        assertThat(colleague.does(() -> opinions.search("fever"))).isEmpty();
        assertThat(colleague.does(() -> opinions.ownWords()))
                .extracting(Found::text)
                .anyMatch(text -> text.equals("Was there a fever?"))
                .hasSize(2);
        assertThatThrownBy(() -> colleague.does(() -> opinions.say(thread, ids.next(), "And?", Optional.empty())))
                .isInstanceOf(DataAccessException.class);
    }

    @Test
    void aPictureThatIsWithdrawnIsShownInNoThreadAnyMore() {
        var shown = world.clip(colleague, thread);
        assertThat(colleague.does(() -> films.clip(thread, shown))).isPresent();
        var before = colleague.does(() -> opinions.version(thread));
        asker.does(() -> originals.withdraw(clip, "consent taken back"));
        for (var who : List.of(asker, colleague)) {
            assertThat(who.does(() -> films.clip(thread, shown))).isEmpty();
            assertThat(who.does(() -> opinions.open(thread)).orElseThrow().clips())
                    .isEmpty();
        }
        assertThat(colleague.does(() -> opinions.version(thread))).isNotEqualTo(before);
    }

    @Test
    void everyLookIsWrittenDownAtTheHospitalThatHasCare() {
        var shown = world.film(colleague, thread);
        colleague.does(() -> films.open(thread, shown));
        colleague.does(() -> films.open(thread, shown));
        assertThat(network.owner()
                        .sql("select deed || ' ' || subject || ' ' || (children = array[cast(? as uuid)])"
                                + " from access_entry where staff_id = ? and site_id = ?"
                                + " and deed in ('OPENED', 'FILM')")
                        .params(child.value(), colleague.staff(), asker.site().value())
                        .query(String.class)
                        .list())
                .contains("OPENED opinion true")
                .containsOnlyOnce("FILM opinion true");
    }

    @Test
    void nothingShownOrSaidIsEverChanged() {
        assertThat(List.of("opinion_thread", "opinion_shown", "opinion_film", "opinion_message", "opinion_view"))
                .allSatisfy(table -> {
                    assertThatThrownBy(() -> network.as(asker.staff(), () -> jdbc.sql("delete from " + table)
                                    .update()))
                            .isInstanceOf(DataAccessException.class);
                    assertThatThrownBy(() ->
                                    network.owner().sql("delete from " + table).update())
                            .isInstanceOf(DataAccessException.class);
                });
    }

    @Test
    void readingsOfOthersStayHiddenUntilOneHasReadTheFilm() {
        var shown = world.film(colleague, thread);
        var second = reader.surgeon();
        asker.does(() -> opinions.invite(thread, new StaffId(second.staff()), LocalDate.of(2040, 1, 1)));
        world.readBlind(colleague, thread, shown);
        assertThat(second.does(() -> films.readings(thread, shown))).isEmpty();
        world.readBlind(second, thread, shown);
        assertThat(second.does(() -> films.readings(thread, shown))).hasSize(2);
    }

    @Test
    void aCallToEverybodyIsTakenUpByAGrant() {
        var ask = world.everything(asker, child, List.of(film));
        var open = new Ask(
                ask.id(),
                child,
                ask.question(),
                new Invitation(List.of(), null, true, ask.invitation().until()),
                ask.films(),
                List.of(),
                ask.facts());
        assertThat(asker.does(() -> world.ask(open))).isInstanceOf(AskOutcome.Asked.class);
        assertThat(stranger.does(() -> opinions.open(open.id()))).isEmpty();
        assertThat(stranger.does(() -> opinions.calls()))
                .extracting(OpenCall::id)
                .contains(open.id());
        assertThat(stranger.does(() -> opinions.take(open.id()))).isTrue();
        assertThat(stranger.does(() -> opinions.open(open.id()))).isPresent();
        assertThat(stranger.does(() -> opinions.calls()))
                .extracting(OpenCall::id)
                .doesNotContain(open.id());
        assertThat(colleague.does(() -> opinions.open(open.id()))).isEmpty();
    }
}
