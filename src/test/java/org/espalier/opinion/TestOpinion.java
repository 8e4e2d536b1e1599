package org.espalier.opinion;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.espalier.TestNetwork;
import org.espalier.access.SiteService;
import org.espalier.access.StaffId;
import org.espalier.film.Cover;
import org.espalier.film.FilmId;
import org.espalier.film.TestDoor.Sender;
import org.espalier.patient.ChildId;
import org.espalier.platform.Ids;
import org.espalier.reading.MeasureRequest;
import org.espalier.reading.TestReader;
import org.springframework.stereotype.Component;

/** Cases put before colleagues, for a test. */
@Component
public class TestOpinion {

    static final String QUESTION = "Plate the lateral proximal tibia now, or watch another half year?";

    private final TestNetwork network;
    private final TestReader reader;
    private final AskService asks;
    private final OpinionService opinions;
    private final OpinionFilmService films;
    private final ClosingService closings;
    private final PanelService panels;
    private final SiteService sites;
    private final Ids ids;

    TestOpinion(
            TestNetwork network,
            TestReader reader,
            AskService asks,
            OpinionService opinions,
            OpinionFilmService films,
            ClosingService closings,
            PanelService panels,
            SiteService sites,
            Ids ids) {
        this.network = network;
        this.reader = reader;
        this.asks = asks;
        this.opinions = opinions;
        this.films = films;
        this.closings = closings;
        this.panels = panels;
        this.sites = sites;
        this.ids = ids;
    }

    /** What is asked, an answer wanted in a fortnight. */
    public Question question(Sender asker) {
        var today = asker.does(() -> sites.today(asker.site()));
        return new Question(
                QUESTION,
                List.of(Advice.PLATE, Advice.WATCH),
                "lateral, proximal tibia",
                today.plusDays(14),
                true,
                false,
                6,
                "mother, by word, in clinic");
    }

    /** Every film given and every fact, to be put before the colleagues for 30 days. */
    public Ask everything(Sender asker, ChildId child, List<FilmId> shown, Sender... colleagues) {
        var showable = asker.does(() -> asks.showable(child)).orElseThrow();
        var facts = new java.util.HashSet<UUID>();
        showable.facts().forEach(fact -> facts.add(fact.source()));
        LocalDate until = asker.does(() -> sites.today(asker.site())).plusDays(30);
        var asked = java.util.Arrays.stream(colleagues)
                .map(one -> new StaffId(one.staff()))
                .toList();
        return new Ask(
                new ThreadId(ids.next()),
                child,
                question(asker),
                new Invitation(asked, null, false, until),
                shown.stream()
                        .map(film -> new FilmToShow(film, List.of(new Cover(0, 0, 20, 10))))
                        .toList(),
                showable.pictures().stream()
                        .map(one -> new PictureToShow(one.picture().id(), List.of()))
                        .toList(),
                facts);
    }

    /** A thread of a child with everything in it. */
    public ThreadId asked(Sender asker, ChildId child, List<FilmId> shown, Sender... colleagues) {
        var ask = everything(asker, child, shown, colleagues);
        var outcome = asker.does(() -> asks.ask(ask));
        if (!(outcome instanceof AskOutcome.Asked)) {
            throw new AssertionError("not asked: " + outcome);
        }
        return ask.id();
    }

    AskOutcome ask(Ask ask) {
        return asks.ask(ask);
    }

    /** Threads about the child in every state, and arguments for each method of the services. */
    public Map<String, Object[]> arrange(Sender asker, ChildId child, FilmId film) {
        var colleague = reader.surgeon();
        var other = new StaffId(reader.surgeon().staff());
        var open = asked(asker, child, List.of(film), colleague);
        var begun = asked(asker, child, List.of(film), colleague);
        var closed = asked(asker, child, List.of(film), colleague);
        var shown = film(asker, open);
        asker.does(() -> films.draw(open, shown, List.of(line("here"))));
        asker.does(() -> opinions.say(open, ids.next(), "The left one moved less.", java.util.Optional.empty()));
        asker.does(() -> opinions.advise(open, ids.next(), advice(Advice.PLATE)));
        colleague.does(() -> opinions.handOn(open, other));
        var read = film(asker, begun);
        var draft = asker.does(() -> films.read(begun, read)).orElseThrow();
        var marks = reader.movingHand();
        asker.does(() -> films.measure(
                draft.id(), new MeasureRequest(1, draft.revision(), marks.points(), marks.edges(), true)));
        var signing = asked(asker, child, List.of(film), colleague);
        var signed = film(asker, signing);
        readBlind(asker, signing, signed);
        asker.does(() -> opinions.advise(closed, ids.next(), advice(Advice.WATCH)));
        asker.does(() -> closings.close(closed, Advice.PLATE, "Plated in spring.", "the team"));
        var year = new Outcome(Outcome.Horizon.YEAR, Advice.PLATE, Outcome.Result.BETTER, "moves", 12);
        asker.does(() -> closings.outcome(closed, ids.next(), year));
        var panel = ids.next();
        asker.does(() -> panels.make(panel, "Panel " + panel, List.of(other)));
        var add = reader.film(asker, child, LocalDate.of(2025, 8, 20));
        return new HashMap<>(Map.ofEntries(
                Map.entry("AskService.showable", new Object[] {child}),
                Map.entry("AskService.ask", new Object[] {everything(asker, child, List.of(film), colleague)}),
                Map.entry("AskService.addable", new Object[] {open}),
                Map.entry(
                        "AskService.add",
                        new Object[] {open, List.of(new FilmToShow(add, List.of())), List.of(), Set.of()}),
                Map.entry("OpinionService.of", new Object[] {child}),
                Map.entry("OpinionService.open", new Object[] {open}),
                Map.entry("OpinionService.version", new Object[] {open}),
                Map.entry(
                        "OpinionService.say",
                        new Object[] {open, ids.next(), "And the right?", java.util.Optional.empty()}),
                Map.entry("OpinionService.advise", new Object[] {open, ids.next(), advice(Advice.WAIT)}),
                Map.entry("OpinionService.remind", new Object[] {open}),
                Map.entry("OpinionService.invite", new Object[] {open, other, LocalDate.of(2040, 1, 1)}),
                Map.entry("OpinionService.withdraw", new Object[] {open, new StaffId(colleague.staff())}),
                Map.entry("OpinionService.agree", new Object[] {open, handOver(asker, open)}),
                Map.entry("OpinionService.search", new Object[] {"half year"}),
                Map.entry("OpinionFilmService.open", new Object[] {open, shown}),
                Map.entry("OpinionFilmService.file", new Object[] {open, shown}),
                Map.entry("OpinionFilmService.clip", new Object[] {open, clip(asker, open)}),
                Map.entry("OpinionFilmService.layers", new Object[] {open, shown}),
                Map.entry("OpinionFilmService.draw", new Object[] {open, shown, List.of(line("there"))}),
                Map.entry("OpinionFilmService.read", new Object[] {open, shown}),
                Map.entry("OpinionFilmService.answer", new Object[] {begun, read}),
                Map.entry(
                        "OpinionFilmService.measure",
                        new Object[] {draft.id(), new MeasureRequest(2, 2, List.of(), List.of(), false)}),
                Map.entry("OpinionFilmService.sign", new Object[] {begun, read}),
                Map.entry("OpinionFilmService.readings", new Object[] {signing, signed}),
                Map.entry("ClosingService.close", new Object[] {signing, Advice.WATCH, "Watched on.", "the team"}),
                Map.entry("ClosingService.summary", new Object[] {closed}),
                Map.entry("ClosingService.outcomes", new Object[] {closed}),
                Map.entry("ClosingService.outcome", new Object[] {
                    closed,
                    ids.next(),
                    new Outcome(Outcome.Horizon.MATURITY, Advice.PLATE, Outcome.Result.STRAIGHT, "", 60)
                }),
                Map.entry("PanelService.make", new Object[] {ids.next(), "Panel of " + panel, List.of(other)}),
                Map.entry("PanelService.add", new Object[] {panel, other}),
                Map.entry("PanelService.remove", new Object[] {panel, other})));
    }

    /** Reads a copy with both limbs marked, and signs. */
    public void readBlind(Sender who, ThreadId thread, UUID film) {
        var draft = who.does(() -> films.read(thread, film)).orElseThrow();
        var marks = reader.movingHand();
        who.does(() -> films.measure(
                draft.id(), new MeasureRequest(1, draft.revision(), marks.points(), marks.edges(), true)));
        if (!who.does(() -> films.sign(thread, film))) {
            throw new AssertionError("not signed");
        }
    }

    /** The first film shown in a thread. */
    public UUID film(Sender who, ThreadId thread) {
        return who.does(() -> opinions.open(thread))
                .orElseThrow()
                .films()
                .getFirst()
                .id();
    }

    /** The first clip shown in a thread. */
    public UUID clip(Sender who, ThreadId thread) {
        return who.does(() -> opinions.open(thread))
                .orElseThrow()
                .clips()
                .getFirst()
                .id();
    }

    private UUID handOver(Sender who, ThreadId thread) {
        return who.does(() -> opinions.open(thread))
                .orElseThrow()
                .handOvers()
                .getFirst()
                .id();
    }

    static Drawing line(String label) {
        return new Drawing(Drawing.Kind.LINE, List.of(new Drawing.Spot(5, 5), new Drawing.Spot(20, 30)), label);
    }

    static OpinionData advice(Advice advice) {
        return new OpinionData(
                advice,
                "lateral, proximal tibia",
                "within three months",
                Sureness.FAIRLY_SURE,
                "a bar on MRI",
                "The physis looks open.");
    }
}
