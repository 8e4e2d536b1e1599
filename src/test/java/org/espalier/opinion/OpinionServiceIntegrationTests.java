package org.espalier.opinion;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.access.StaffId;
import org.espalier.film.FilmId;
import org.espalier.film.TestDoor.Sender;
import org.espalier.followup.StaffMail;
import org.espalier.kit.DateText;
import org.espalier.patient.ChildId;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.espalier.platform.Ids;
import org.espalier.reading.TestReader;
import org.espalier.today.TodayService;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.transaction.support.TransactionTemplate;

@IntegrationTest
class OpinionServiceIntegrationTests {

    @Autowired
    TestReader reader;

    @Autowired
    TestOpinion world;

    @Autowired
    AskService asks;

    @Autowired
    OpinionService opinions;

    @Autowired
    OpinionFilmService films;

    @Autowired
    ClosingService closings;

    @Autowired
    PanelService panels;

    @Autowired
    TodayService today;

    @Autowired
    TestNetwork network;

    @Autowired
    OpinionReminder reminder;

    @Autowired
    TransactionTemplate transactions;

    @Autowired
    Ids ids;

    Sender asker;
    Sender colleague;
    ChildId child;
    FilmId film;

    @BeforeEach
    void child() {
        asker = reader.surgeon();
        colleague = reader.surgeon();
        child = reader.child(asker, LocalDate.of(2018, 3, 14));
        film = reader.film(asker, child, LocalDate.of(2024, 3, 14));
        reader.signed(asker, film);
    }

    private OpinionThread opened(Sender who, ThreadId thread) {
        return who.does(() -> opinions.open(thread)).orElseThrow();
    }

    @Test
    void showsWhatWasFrozenThoughTheRecordGoesOn() {
        var thread = world.asked(asker, child, List.of(film), colleague);
        var before = opened(colleague, thread);
        var later = reader.film(asker, child, LocalDate.of(2025, 5, 14));
        reader.signed(asker, later, 4);
        var after = opened(colleague, thread);
        assertThat(after.facts()).isEqualTo(before.facts());
        assertThat(after.films()).isEqualTo(before.films());
        assertThat(after.newer()).containsEntry("FILM", 1L).containsEntry("READING", 1L);
    }

    @Test
    void addsNewerFactsBesideWhatWasShown() {
        var thread = world.asked(asker, child, List.of(film), colleague);
        var before = opened(colleague, thread);
        var later = reader.film(asker, child, LocalDate.of(2025, 5, 14));
        assertThat(asker.does(() -> asks.addable(thread)).orElseThrow().films())
                .extracting(one -> one.film().id())
                .containsExactly(later);
        asker.does(() -> asks.add(thread, List.of(new FilmToShow(later, List.of())), List.of(), Set.of()));
        var after = opened(colleague, thread);
        assertThat(after.films()).startsWith(before.films().getFirst()).hasSize(2);
        assertThat(after.films().getLast().months()).isEqualTo(14);
        assertThat(after.newer()).isEmpty();
        assertThat(after.messages()).extracting(Message::kind).containsExactly(Message.Kind.FACTS_ADDED);
    }

    @Test
    void asksOnceHoweverOftenItIsSent() {
        var ask = world.everything(asker, child, List.of(film), colleague);
        asker.does(() -> asks.ask(ask));
        asker.does(() -> asks.ask(ask));
        assertThat(opened(asker, ask.id()).films()).hasSize(1);
    }

    @Test
    void refusesWordsThatNameTheChild() {
        var ask = world.everything(asker, child, List.of(film), colleague);
        var question = ask.question();
        for (var word :
                List.of("What of INVENTED’s knee, please?", "Born 14.3.2018, what now?", "Born 2018-03-14: plate?")) {
            var naming = new Question(
                    word, question.wanted(), null, question.dueBy(), false, false, null, question.consent());
            var outcome = asker.does(() ->
                    asks.ask(new Ask(ask.id(), child, naming, ask.invitation(), ask.films(), List.of(), ask.facts())));
            assertThat(outcome).isEqualTo(new AskOutcome.Refused(AskOutcome.Reason.NAMES_THE_CHILD));
        }
        asker.does(() -> asks.ask(ask));
        assertThat(asker.does(() -> opinions.say(ask.id(), ids.next(), "Invented is well.", Optional.empty())))
                .isFalse();
        assertThat(opened(asker, ask.id()).messages()).isEmpty();
    }

    @Test
    void refusesWhatCannotBeAsked() {
        var ask = world.everything(asker, child, List.of(film));
        assertThat(asker.does(() -> asks.ask(ask))).isEqualTo(new AskOutcome.Refused(AskOutcome.Reason.NOBODY_ASKED));
        var early = new Invitation(
                List.of(new StaffId(colleague.staff())),
                null,
                false,
                ask.question().dueBy().minusDays(1));
        assertThat(asker.does(() ->
                        asks.ask(new Ask(ask.id(), child, ask.question(), early, ask.films(), List.of(), ask.facts()))))
                .isEqualTo(new AskOutcome.Refused(AskOutcome.Reason.ENDS_BEFORE_DUE));
        assertThat(asker.does(() -> opinions.of(child))).isEmpty();
    }

    @Test
    void keepsTheEarlierOpinionBesideTheRevisedOne() {
        var thread = world.asked(asker, child, List.of(film), colleague);
        colleague.does(() -> opinions.advise(thread, ids.next(), TestOpinion.advice(Advice.WATCH)));
        colleague.does(() -> opinions.advise(thread, ids.next(), TestOpinion.advice(Advice.PLATE)));
        var given = opened(asker, thread).opinions();
        assertThat(given).extracting(one -> one.data().advice()).containsExactly(Advice.WATCH, Advice.PLATE);
        assertThat(given).extracting(Opinion::superseded).containsExactly(true, false);
        assertThat(given.getLast().supersedes()).contains(given.getFirst().id());
    }

    @Test
    void countsWhatIsUnreadUntilItIsOpened() {
        var thread = world.asked(asker, child, List.of(film), colleague);
        asker.does(() -> opinions.say(thread, ids.next(), "Please look soon.", Optional.empty()));
        assertThat(colleague.does(opinions::mine))
                .extracting(ThreadLine::unread)
                .containsExactly(1L);
        opened(colleague, thread);
        assertThat(colleague.does(opinions::mine))
                .extracting(ThreadLine::unread)
                .containsExactly(0L);
        asker.does(() -> opinions.remind(thread));
        assertThat(colleague.does(opinions::mine))
                .extracting(ThreadLine::reminded)
                .containsExactly(true);
    }

    @Test
    void tellsAHospitalsStaffHowManyWaitAndNamesNobody() {
        var thread = world.asked(asker, child, List.of(film), colleague);
        assertThat(word(colleague).orElseThrow().subject())
                .isEqualTo("Opinions: 1 wanted, 0 due, 0 with something new");
        assertThat(word(asker)).isEmpty();
        colleague.does(() -> opinions.say(thread, ids.next(), "Was there a fever?", Optional.empty()));
        asker.does(() -> opinions.remind(thread));
        assertThat(word(asker).orElseThrow().subject()).contains("0 wanted", "1 with something new");
        assertThat(word(colleague).orElseThrow().text())
                .contains("names nobody")
                .doesNotContain(
                        "Invented",
                        "fever",
                        TestOpinion.QUESTION,
                        thread.value().toString());
        network.owner().sql("alter table opinion_thread disable trigger user").update();
        network.owner()
                .sql("update opinion_thread set due_by = current_date where id = ?")
                .param(thread.value())
                .update();
        network.owner().sql("alter table opinion_thread enable trigger user").update();
        assertThat(word(colleague).orElseThrow().subject()).contains("1 wanted, 1 due");
        colleague.does(() -> opinions.advise(thread, ids.next(), TestOpinion.advice(Advice.WATCH)));
        opened(colleague, thread);
        opened(asker, thread);
        assertThat(word(colleague)).isEmpty();
        assertThat(word(asker)).isEmpty();
    }

    private Optional<StaffMail.Word> word(Sender who) {
        return Callers.callAs(
                new Caller.SystemAtSite(who.site().value(), "opinion-mail"),
                () -> transactions.execute(status -> reminder.word(who.site())));
    }

    @Test
    void standsOnTodayUntilItIsAnsweredAndAgainWhenSomethingIsNew() {
        var thread = world.asked(asker, child, List.of(film), colleague);
        assertThat(colleague.does(today::askedOfMe)).extracting(ThreadLine::id).containsExactly(thread);
        assertThat(asker.does(today::askedOfMe)).isEmpty();
        colleague.does(() -> opinions.advise(thread, ids.next(), TestOpinion.advice(Advice.WATCH)));
        assertThat(colleague.does(today::askedOfMe)).isEmpty();
        asker.does(() -> opinions.say(thread, ids.next(), "And the other side?", Optional.empty()));
        assertThat(colleague.does(today::askedOfMe)).extracting(ThreadLine::id).containsExactly(thread);
    }

    @Test
    void asksWhatCameOfItAYearAfterClosingAndAtMaturity() {
        var thread = world.asked(asker, child, List.of(film), colleague);
        asker.does(() -> closings.close(thread, Advice.PLATE, "Plated in spring.", "the team"));
        assertOutcomeDue(Optional.empty());
        network.owner().sql("alter table opinion_close disable trigger user").update();
        network.owner()
                .sql("update opinion_close set closed_at = closed_at - interval '13 months' where thread_id = ?")
                .param(thread.value())
                .update();
        network.owner().sql("alter table opinion_close enable trigger user").update();
        assertOutcomeDue(Optional.of(Outcome.Horizon.YEAR));
        var year = new Outcome(Outcome.Horizon.YEAR, Advice.PLATE, Outcome.Result.STRAIGHT, "", 13);
        asker.does(() -> closings.outcome(thread, ids.next(), year));
        assertOutcomeDue(Optional.empty());
        network.owner()
                .sql("insert into care_change (id, site_id, recorded_site, child_id, kind, on_day, recorded_at)"
                        + " select uuidv7(), site_id, site_id, id, 'MATURE', current_date, now()"
                        + " from child where id = ?")
                .param(child.value())
                .update();
        assertOutcomeDue(Optional.of(Outcome.Horizon.MATURITY));
        var grown = new Outcome(Outcome.Horizon.MATURITY, Advice.PLATE, Outcome.Result.STRAIGHT, "", 40);
        asker.does(() -> closings.outcome(thread, ids.next(), grown));
        assertOutcomeDue(Optional.empty());
    }

    private void assertOutcomeDue(Optional<Outcome.Horizon> horizon) {
        assertThat(asker.does(opinions::mine))
                .extracting(ThreadLine::outcomeDue)
                .containsExactly(horizon);
    }

    @Test
    void asksAWholePanelWithWhoCameToItLater() {
        var other = reader.surgeon();
        var panel = ids.next();
        asker.does(() -> panels.make(panel, "Rickets " + panel, List.of(new StaffId(colleague.staff()))));
        asker.does(() -> {
            panels.add(panel, new StaffId(other.staff()));
            return panel;
        });
        var ask = world.everything(asker, child, List.of(film));
        asker.does(() -> asks.ask(new Ask(
                ask.id(),
                child,
                ask.question(),
                new Invitation(List.of(), panel, false, ask.invitation().until()),
                ask.films(),
                List.of(),
                ask.facts())));
        assertThat(opened(other, ask.id()).members()).hasSize(2);
    }

    @Test
    void handsOnWhenTheAskerAgrees() {
        var thread = world.asked(asker, child, List.of(film), colleague);
        var other = reader.surgeon();
        assertThat(colleague.does(() -> opinions.handOn(thread, new StaffId(other.staff()))))
                .isTrue();
        assertThat(other.does(() -> opinions.open(thread))).isEmpty();
        var wish = opened(asker, thread).handOvers().getFirst();
        assertThat(asker.does(() -> opinions.agree(thread, wish.id()))).isTrue();
        assertThat(other.does(() -> opinions.open(thread))).isPresent();
        assertThat(colleague.does(() -> opinions.open(thread))).isEmpty();
    }

    @Test
    void closesWithASummaryInTheRecordAndTellsTheAdviserPrivatelyHowItFared() throws Exception {
        var thread = world.asked(asker, child, List.of(film), colleague);
        colleague.does(() -> opinions.advise(thread, ids.next(), TestOpinion.advice(Advice.WATCH)));
        asker.does(() -> closings.close(thread, Advice.PLATE, "Plated in spring.", "the Monday conference"));
        var summary = asker.does(() -> closings.summary(thread)).orElseThrow();
        try (var pdf = Loader.loadPDF(summary)) {
            var text = new PDFTextStripper().getText(pdf);
            assertThat(text).contains("Plated in spring.", "the Monday conference", "Watch", TestOpinion.QUESTION);
            assertThat(text).doesNotContain("Invented", "14-Mar-2018", DateText.of(LocalDate.of(2018, 3, 14)));
            assertThat(pdf.getDocumentInformation().getTitle()).isNull();
            assertThat(pdf.getDocumentInformation().getAuthor()).isNull();
        }
        assertThat(colleague.does(() -> closings.summary(thread))).isEmpty();
        var year = new Outcome(Outcome.Horizon.YEAR, Advice.PLATE, Outcome.Result.BETTER, "moves", 12);
        assertThat(asker.does(() -> closings.outcome(thread, ids.next(), year))).isTrue();
        var fared = colleague.does(opinions::fared);
        assertThat(fared).singleElement().satisfies(one -> {
            assertThat(one.advice()).isEqualTo(Advice.WATCH);
            assertThat(one.decided()).isEqualTo(Advice.PLATE);
            assertThat(one.place()).isEqualTo("lateral, proximal tibia");
            assertThat(one.at(Outcome.Horizon.YEAR).orElseThrow().result()).isEqualTo(Outcome.Result.BETTER);
            assertThat(one.at(Outcome.Horizon.MATURITY)).isEmpty();
        });
        assertThat(asker.does(opinions::fared)).isEmpty();
    }

    @Test
    void drawsInALayerOfOnesOwnAndMeasuresTheAngle() {
        var thread = world.asked(asker, child, List.of(film), colleague);
        var shown = world.film(asker, thread);
        var corner = new Drawing(
                Drawing.Kind.ANGLE,
                List.of(new Drawing.Spot(10, 0), new Drawing.Spot(0, 0), new Drawing.Spot(0, 10)),
                "slope");
        asker.does(() -> films.draw(thread, shown, List.of(TestOpinion.line("bar?"))));
        var layers = colleague.does(() -> films.draw(thread, shown, List.of(corner)));
        assertThat(layers).hasSize(2).extracting(Layer::mine).containsExactlyInAnyOrder(true, false);
        assertThat(layers.stream().filter(Layer::mine).findFirst().orElseThrow().drawn())
                .extracting(Layer.Drawn::text)
                .containsExactly("90.0° slope");
        colleague.does(() -> films.draw(thread, shown, List.of()));
        assertThat(asker.does(() -> films.layers(thread, shown)))
                .filteredOn(Layer::mine)
                .singleElement()
                .satisfies(layer -> assertThat(layer.drawn()).hasSize(1));
    }

    @Test
    void aBlindReadingSurvivesAndIsComparedOnceSigned() {
        var thread = world.asked(asker, child, List.of(film), colleague);
        var shown = world.film(colleague, thread);
        world.readBlind(colleague, thread, shown);
        assertThat(colleague.does(() -> films.read(thread, shown))).isEmpty();
        assertThat(colleague.does(() -> films.readings(thread, shown)))
                .singleElement()
                .satisfies(reading -> assertThat(reading.numbers()).isNotEmpty());
    }
}
