package org.espalier.opinion;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.access.StaffId;
import org.espalier.film.FilmCopies;
import org.espalier.film.FilmCopy;
import org.espalier.kit.Texts;
import org.espalier.opinion.AskOutcome.Reason;
import org.espalier.opinion.AskOutcome.Refused;
import org.espalier.patient.ChildId;
import org.espalier.platform.Ids;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Puts a case before colleagues. What they are shown is made here, once, without names, numbers and days; what is
 * written down later is added when the asker says so, and never takes the place of what was shown.
 */
@Service
@Transactional
public class AskService {

    private final ShowableFacts facts;
    private final FilmCopies copies;
    private final PicturesShown pictures;
    private final JdbcThreadRepository threads;
    private final JdbcClosingRepository endings;
    private final JdbcMemberRepository members;
    private final JdbcShownRepository shown;
    private final JdbcTalkRepository talk;
    private final SiteService sites;
    private final CurrentStaff staff;
    private final Ids ids;
    private final Clock clock;

    AskService(
            ShowableFacts facts,
            FilmCopies copies,
            PicturesShown pictures,
            JdbcThreadRepository threads,
            JdbcClosingRepository endings,
            JdbcMemberRepository members,
            JdbcShownRepository shown,
            JdbcTalkRepository talk,
            SiteService sites,
            CurrentStaff staff,
            Ids ids,
            Clock clock) {
        this.facts = facts;
        this.copies = copies;
        this.pictures = pictures;
        this.threads = threads;
        this.endings = endings;
        this.members = members;
        this.shown = shown;
        this.talk = talk;
        this.sites = sites;
        this.staff = staff;
        this.ids = ids;
        this.clock = clock;
    }

    /** What of a child's course can be shown; empty when there is no such child that the caller may see. */
    public Optional<Showable> showable(ChildId child) {
        return facts.of(child);
    }

    /** The surgeons of the network besides the caller, by name. */
    public List<Colleague> colleagues() {
        return members.surgeons();
    }

    /** Asks. Sent again with the same id it is asked once. */
    public AskOutcome ask(Ask ask) {
        var kept = threads.find(ask.id());
        if (kept.isPresent()) {
            return new AskOutcome.Asked(ask.id());
        }
        var showable = facts.of(ask.child()).orElseThrow(() -> new IllegalArgumentException("no such child"));
        var site = showable.child().site();
        if (!staff.has(Role.SURGEON, site)) {
            throw new AccessDeniedException("who treats the child asks");
        }
        var invited = invited(ask.invitation());
        var refused = reason(ask, showable, invited.keySet(), sites.today(site));
        if (refused.isPresent()) {
            return new Refused(refused.get());
        }
        var copied = pictures.copy(showable, ask.pictures());
        if (copied.isEmpty()) {
            return new Refused(Reason.CLIP_NOT_UNDERSTOOD);
        }
        var at = now();
        var until = end(site, ask.invitation().until());
        threads.add(
                ask.id(), site, ask.child(), ask.question(), ask.invitation().everybody(), at, until);
        invited.forEach((one, panel) -> members.grant(ask.id(), one, panel.orElse(null), at, until));
        show(ask.id(), showable, ask.films(), withChild(showable, ask.facts()), at);
        pictures.show(ask.id(), copied.get(), at);
        return new AskOutcome.Asked(ask.id());
    }

    /** What was written down since and is not shown; empty for everybody but who may add it. */
    public Optional<Showable> addable(ThreadId thread) {
        return leading(thread)
                .flatMap(OpinionThread::child)
                .flatMap(facts::of)
                .map(all -> without(all, shown.sources(thread)));
    }

    /** Shows more in a thread. */
    public AskOutcome add(ThreadId thread, List<FilmToShow> films, List<PictureToShow> more, Set<UUID> told) {
        var open = leading(thread);
        var addable = open.filter(one -> endings.closing(thread).isEmpty()).flatMap(one -> addable(thread));
        if (addable.isEmpty()) {
            return new Refused(Reason.CLOSED);
        }
        if (films.isEmpty() && more.isEmpty() && told.isEmpty()) {
            return new Refused(Reason.NOTHING_SHOWN);
        }
        var copied = pictures.copy(addable.get(), more);
        if (copied.isEmpty()) {
            return new Refused(Reason.CLIP_NOT_UNDERSTOOD);
        }
        show(thread, addable.get(), films, told, now());
        pictures.show(thread, copied.get(), now());
        talk.say(ids.next(), thread, Message.Kind.FACTS_ADDED, "", Optional.empty(), now());
        return new AskOutcome.Asked(thread);
    }

    private Optional<OpinionThread> leading(ThreadId thread) {
        return threads.find(thread).filter(OpinionThread::mayLead);
    }

    private static Showable without(Showable all, Set<UUID> sources) {
        return new Showable(
                all.child(),
                all.films().stream()
                        .filter(film -> !sources.contains(film.film().id().value()))
                        .toList(),
                all.pictures().stream()
                        .filter(one -> !sources.contains(one.picture().id().value()))
                        .toList(),
                all.facts().stream()
                        .filter(fact -> !sources.contains(fact.source()))
                        .toList());
    }

    private static Set<UUID> withChild(Showable showable, Set<UUID> chosen) {
        var all = new HashSet<>(chosen);
        showable.facts().stream()
                .filter(fact -> fact.kind() == FactKind.CHILD)
                .map(ShowableFact::source)
                .forEach(all::add);
        return all;
    }

    private void show(ThreadId thread, Showable from, List<FilmToShow> films, Set<UUID> chosen, Instant at) {
        int number =
                (int) shown.films(thread).stream().filter(film -> !film.photo()).count();
        for (var wanted : films) {
            var film = from.films().stream()
                    .filter(one -> one.film().id().equals(wanted.film()))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("no such film: " + wanted.film()));
            FilmCopy copy = copies.copy(film.film(), wanted.covers());
            shown.add(thread, film, Texts.text("opinion.film", ++number), copy, at);
        }
        from.facts().stream()
                .filter(fact -> chosen.contains(fact.source()))
                .forEach(fact -> shown.add(thread, fact, at));
    }

    private static Optional<Reason> reason(Ask ask, Showable showable, Set<?> invited, LocalDate today) {
        var identity = Identity.of(showable.child().who());
        var question = ask.question();
        var typed = Stream.of(question.text(), question.consent(), String.valueOf(question.place()));
        if (invited.isEmpty() && !ask.invitation().everybody()) {
            return Optional.of(Reason.NOBODY_ASKED);
        }
        if (typed.anyMatch(identity::isIn)) {
            return Optional.of(Reason.NAMES_THE_CHILD);
        }
        if (question.dueBy().isBefore(today)) {
            return Optional.of(Reason.DUE_IN_THE_PAST);
        }
        if (ask.invitation().until().isBefore(question.dueBy())) {
            return Optional.of(Reason.ENDS_BEFORE_DUE);
        }
        boolean nothing =
                ask.films().isEmpty() && ask.pictures().isEmpty() && ask.facts().isEmpty();
        return nothing ? Optional.of(Reason.NOTHING_SHOWN) : Optional.empty();
    }

    /** Whom to ask, each once, with the panel that names them. */
    private Map<StaffId, Optional<UUID>> invited(Invitation invitation) {
        var invited = new LinkedHashMap<StaffId, Optional<UUID>>();
        invitation.colleagues().forEach(one -> invited.put(one, Optional.empty()));
        if (invitation.panel() != null) {
            members.members(invitation.panel())
                    .forEach(one -> invited.putIfAbsent(one.id(), Optional.of(invitation.panel())));
        }
        invited.remove(staff.id());
        return invited;
    }

    /** The end of the day at the hospital that asks. */
    private Instant end(SiteId site, LocalDate until) {
        return until.plusDays(1).atStartOfDay(sites.get(site).zone()).toInstant();
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}
