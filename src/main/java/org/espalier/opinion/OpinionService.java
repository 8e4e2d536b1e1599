package org.espalier.opinion;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteService;
import org.espalier.access.StaffId;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.platform.Ids;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Threads as those in them see them. A grant opens one thread to one person until its end; it opens nothing of the
 * child's own record. Every look at a thread is written down at the hospital that has care.
 */
@Service
@Transactional
public class OpinionService {

    private final JdbcThreadRepository threads;
    private final JdbcClosingRepository endings;
    private final JdbcMemberRepository members;
    private final JdbcShownRepository shown;
    private final JdbcTalkRepository talk;
    private final PatientService patients;
    private final SiteService sites;
    private final Ids ids;
    private final Clock clock;

    OpinionService(
            JdbcThreadRepository threads,
            JdbcClosingRepository endings,
            JdbcMemberRepository members,
            JdbcShownRepository shown,
            JdbcTalkRepository talk,
            PatientService patients,
            SiteService sites,
            Ids ids,
            Clock clock) {
        this.threads = threads;
        this.endings = endings;
        this.members = members;
        this.shown = shown;
        this.talk = talk;
        this.patients = patients;
        this.sites = sites;
        this.ids = ids;
        this.clock = clock;
    }

    /**
     * The caller's threads: those of their own hospital and those they are asked in, the open ones first, then by day.
     */
    public List<ThreadLine> mine() {
        return threads.lines(Optional.empty(), now());
    }

    /** The threads about a child, for those who treat it. */
    public List<ThreadLine> of(ChildId child) {
        return patients.open(child, "opinions")
                .map(opened -> threads.lines(Optional.of(child), now()))
                .orElse(List.of());
    }

    /** Questions to any surgeon of the network that the caller has not taken up, by the day they are due. */
    public List<OpenCall> calls() {
        return threads.calls();
    }

    /** Takes such a question up: from now on the caller has a grant for it. False when it is gone. */
    public boolean take(ThreadId thread) {
        boolean taken = threads.take(thread, now());
        if (taken) {
            talk.say(ids.next(), thread, Message.Kind.JOINED, "", Optional.empty(), now());
        }
        return taken;
    }

    /** Opens a thread and counts what is in it as read; empty when there is none for the caller. */
    public Optional<OpinionThread> open(ThreadId id) {
        if (!threads.look(ids.next(), id, Optional.empty(), now())) {
            return Optional.empty();
        }
        talk.seen(id, now());
        return threads.find(id).map(this::whole);
    }

    /** Changes with everything that changes in a thread; empty when there is none for the caller, or no longer. */
    public Optional<String> version(ThreadId id) {
        return threads.version(id);
    }

    /**
     * Says something.
     *
     * @param id made by the caller: sent again it is said once
     * @param film the film it is about
     * @return false when it names the child, and so was not said
     */
    public boolean say(ThreadId thread, UUID id, String text, Optional<UUID> film) {
        if (namesTheChild(thread, text)) {
            return false;
        }
        talk.say(id, thread, Message.Kind.TEXT, text.strip(), film, now());
        return true;
    }

    /**
     * Gives an opinion; one given before stays as what was thought then.
     *
     * @return false when it names the child, and so was not given
     */
    public boolean advise(ThreadId thread, UUID id, OpinionData data) {
        if (namesTheChild(thread, String.join(" ", data.place(), data.due(), data.changeMind(), data.text()))) {
            return false;
        }
        talk.advise(id, thread, data, now());
        return true;
    }

    /** Reminds those who have not answered: the thread is unread again for them. */
    public boolean remind(ThreadId thread) {
        return leads(thread) && talk.say(ids.next(), thread, Message.Kind.REMINDER, "", Optional.empty(), now());
    }

    /** Asks one more colleague, or one anew whose grant ended. */
    public boolean invite(ThreadId thread, StaffId colleague, LocalDate until) {
        if (!leads(thread)) {
            return false;
        }
        grant(thread, colleague, end(thread, until));
        return talk.say(ids.next(), thread, Message.Kind.INVITED, "", Optional.empty(), now());
    }

    /** Ends the grant of one colleague now. */
    public boolean withdraw(ThreadId thread, StaffId colleague) {
        if (!leads(thread) || members.end(thread, Optional.of(colleague), Member.Ended.WITHDRAWN, now()) == 0) {
            return false;
        }
        return talk.say(ids.next(), thread, Message.Kind.WITHDRAWN, "", Optional.empty(), now());
    }

    /** Wishes to hand the question on to another colleague; the asker must agree. */
    public boolean handOn(ThreadId thread, StaffId to) {
        return threads.find(thread).isPresent() && members.handOn(ids.next(), thread, to, now());
    }

    /** The asker agrees: the one is asked, the other's grant ends. */
    public boolean agree(ThreadId thread, UUID handOver) {
        var wish = members.handOvers(thread).stream()
                .filter(one -> one.id().equals(handOver))
                .findFirst();
        if (wish.isEmpty() || !leads(thread) || !members.agree(thread, handOver, now())) {
            return false;
        }
        grant(thread, wish.get().to(), threads.find(thread).orElseThrow().openUntil());
        members.end(thread, Optional.of(wish.get().from()), Member.Ended.HANDED_ON, now());
        return talk.say(ids.next(), thread, Message.Kind.HANDED_ON, "", Optional.empty(), now());
    }

    /** Where the words stand in the caller's own threads, the latest first. */
    public List<Found> search(String typed) {
        return typed.isBlank() ? List.of() : talk.search(typed);
    }

    /** What the caller said in threads that ended for them: their own words alone. */
    public List<Found> ownWords() {
        return talk.ownWords();
    }

    /** How the caller's own advice fared, for them alone. */
    public List<Fared> fared() {
        return endings.fared();
    }

    private void grant(ThreadId thread, StaffId colleague, Instant until) {
        if (!members.extend(thread, colleague, until)) {
            members.grant(thread, colleague, null, now(), until);
        }
    }

    private boolean leads(ThreadId thread) {
        return threads.find(thread).filter(OpinionThread::mayLead).isPresent()
                && endings.closing(thread).isEmpty();
    }

    private boolean namesTheChild(ThreadId thread, String text) {
        return threads.find(thread)
                .flatMap(OpinionThread::child)
                .flatMap(child -> patients.open(child, "opinion"))
                .filter(child -> Identity.of(child.who()).isIn(text))
                .isPresent();
    }

    private OpinionThread whole(OpinionThread thread) {
        var id = thread.id();
        return thread.with(
                members.of(id),
                shown.facts(id),
                shown.films(id),
                shown.clips(id),
                talk.messages(id),
                talk.opinions(id),
                members.handOvers(id),
                threads.newer(id),
                endings.closing(id),
                endings.outcomes(id));
    }

    private Instant end(ThreadId thread, LocalDate until) {
        var site = threads.find(thread).orElseThrow().site();
        return until.plusDays(1).atStartOfDay(sites.get(site).zone()).toInstant();
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}
