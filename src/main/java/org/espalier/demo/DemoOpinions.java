package org.espalier.demo;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.espalier.opinion.Advice;
import org.espalier.opinion.Ask;
import org.espalier.opinion.AskService;
import org.espalier.opinion.FilmToShow;
import org.espalier.opinion.Invitation;
import org.espalier.opinion.OpinionData;
import org.espalier.opinion.OpinionService;
import org.espalier.opinion.Question;
import org.espalier.opinion.Showable;
import org.espalier.opinion.ShowableFact;
import org.espalier.opinion.Sureness;
import org.espalier.opinion.ThreadId;
import org.espalier.patient.ChildId;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** A case of the demonstration that is put before a colleague at another hospital, who has answered. */
@Component
@Profile("demo")
class DemoOpinions {

    private static final int SHOWN = 2;

    private final AskService asks;
    private final OpinionService opinions;

    DemoOpinions(AskService asks, OpinionService opinions) {
        this.asks = asks;
        this.opinions = opinions;
    }

    /** Lets one surgeon ask another about the child of a story. */
    void tell(DemoStory story, DemoTeam asker, DemoTeam adviser, LocalDate firstDay) {
        var thread = new ThreadId(DemoIds.of("opinion", story.number()));
        Callers.runAs(new Caller.Staff(asker.surgeon().value()), () -> ask(thread, story, adviser, firstDay));
        Callers.runAs(new Caller.Staff(adviser.surgeon().value()), () -> {
            opinions.say(
                    thread,
                    DemoIds.of("opinion-message", story.number()),
                    "Was the knee lax when you examined it? The joint line opens on the later film.",
                    Optional.empty());
            opinions.advise(
                    thread,
                    DemoIds.of("opinion-view", story.number()),
                    new OpinionData(
                            Advice.PLATE,
                            "lateral side, proximal tibia",
                            "within three months",
                            Sureness.FAIRLY_SURE,
                            "A bar on MRI, or no change on the next film.",
                            ""));
        });
    }

    private void ask(ThreadId thread, DemoStory story, DemoTeam adviser, LocalDate firstDay) {
        var child = new ChildId(DemoIds.of("child", story.number()));
        asks.showable(child)
                .ifPresent(showable -> asks.ask(new Ask(
                        thread,
                        child,
                        new Question(
                                "The angle moved little since the first film. Plate now, or look again in half a year?",
                                List.of(Advice.PLATE, Advice.WATCH),
                                "proximal tibia",
                                firstDay.plusWeeks(2),
                                true,
                                false,
                                8,
                                "Invented: the mother agreed, in clinic"),
                        new Invitation(List.of(adviser.surgeon()), null, false, firstDay.plusWeeks(6)),
                        latest(showable),
                        List.of(),
                        showable.facts().stream().map(ShowableFact::source).collect(Collectors.toSet()))));
    }

    private static List<FilmToShow> latest(Showable showable) {
        var films = showable.films();
        return films.subList(Math.max(0, films.size() - SHOWN), films.size()).stream()
                .map(film -> new FilmToShow(film.film().id(), List.of()))
                .toList();
    }
}
