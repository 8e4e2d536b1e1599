package org.espalier.opinion;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteService;
import org.espalier.kit.paper.PaperPrinter;
import org.espalier.platform.Blobs;
import org.espalier.platform.Ids;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Ends a thread with what was decided, keeps its summary in the record, and later what came of it. */
@Service
@Transactional
public class ClosingService {

    private static final long MOST_BYTES = 64L << 20;

    private final JdbcThreadRepository threads;
    private final JdbcClosingRepository endings;
    private final JdbcMemberRepository members;
    private final JdbcTalkRepository talk;
    private final JdbcShownRepository shown;
    private final PaperPrinter printer;
    private final Blobs blobs;
    private final SiteService sites;
    private final Ids ids;
    private final Clock clock;

    ClosingService(
            JdbcThreadRepository threads,
            JdbcClosingRepository endings,
            JdbcMemberRepository members,
            JdbcTalkRepository talk,
            JdbcShownRepository shown,
            PaperPrinter printer,
            Blobs blobs,
            SiteService sites,
            Ids ids,
            Clock clock) {
        this.threads = threads;
        this.endings = endings;
        this.members = members;
        this.talk = talk;
        this.shown = shown;
        this.printer = printer;
        this.blobs = blobs;
        this.sites = sites;
        this.ids = ids;
        this.clock = clock;
    }

    /**
     * Closes a thread: its summary goes into the record and every grant ends. Closed again it stays as it was.
     *
     * @return false when the caller may not close it
     */
    public boolean close(ThreadId id, Advice decided, String text, String decidedBy) {
        var thread = threads.find(id).filter(OpinionThread::mayLead);
        if (thread.isEmpty()) {
            return false;
        }
        if (endings.closing(id).isEmpty()) {
            close(thread.get(), new Closing(decided, text.strip(), decidedBy.strip(), now()));
        }
        return true;
    }

    /** The summary of a closed thread, for those who treat the child. */
    public Optional<byte[]> summary(ThreadId id) {
        return threads.find(id)
                .filter(thread -> thread.child().isPresent())
                .flatMap(thread -> endings.pdf(id))
                .filter(pdf -> threads.look(ids.next(), id, Optional.empty(), now()))
                .map(pdf -> {
                    try (var bytes = blobs.open(pdf)) {
                        return bytes.readAllBytes();
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                });
    }

    /** Writes down what came of it, once a horizon; false when it was written down before, or the thread is open. */
    public boolean outcome(ThreadId id, UUID outcome, Outcome data) {
        return endings.closing(id).isPresent() && endings.add(outcome, id, data, now());
    }

    /** What is known of it, the first year before maturity. */
    public List<Outcome> outcomes(ThreadId id) {
        return endings.outcomes(id);
    }

    private void close(OpinionThread thread, Closing closing) {
        var id = thread.id();
        threads.look(ids.next(), id, Optional.empty(), closing.at());
        var whole = thread.with(
                members.of(id),
                shown.facts(id),
                shown.films(id),
                shown.clips(id),
                talk.messages(id),
                talk.opinions(id),
                List.of(),
                Map.of(),
                Optional.of(closing),
                List.of());
        var pdf = printer.print(
                SummaryPaper.of(whole, closing, sites.get(thread.site()).zone()));
        talk.say(ids.next(), id, Message.Kind.CLOSED, "", Optional.empty(), closing.at());
        try {
            endings.close(id, closing, blobs.put(new ByteArrayInputStream(pdf), MOST_BYTES));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        members.end(id, Optional.empty(), Member.Ended.CLOSED, closing.at());
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}
