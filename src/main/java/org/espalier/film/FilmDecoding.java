package org.espalier.film;

import com.github.kagkarlsson.scheduler.task.CompletionHandler;
import com.github.kagkarlsson.scheduler.task.ExecutionComplete;
import com.github.kagkarlsson.scheduler.task.ExecutionContext;
import com.github.kagkarlsson.scheduler.task.ExecutionOperations;
import com.github.kagkarlsson.scheduler.task.TaskDescriptor;
import com.github.kagkarlsson.scheduler.task.TaskInstance;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.time.Duration;
import java.util.Objects;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.film.FilmInspector.Aside;
import org.espalier.film.Pyramids.Failed;
import org.espalier.film.Pyramids.Prepared;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.espalier.platform.Jobs;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Prepares the pictures of received films in the background. The job is asked for in the transaction that receives the
 * film and is gone when its outcome is written, so that a film left in between is taken up again after any stop.
 */
@Component
class FilmDecoding {

    /** The site's id is the data of each instance, the film's id its name. */
    static final TaskDescriptor<String> TASK = TaskDescriptor.of("film-decoding", String.class);

    private static final Logger LOG = LoggerFactory.getLogger(FilmDecoding.class);
    private static final int ATTEMPTS = 3;
    private static final Duration PAUSE = Duration.ofMillis(500);

    private final FilmRepository films;
    private final Pyramids pyramids;
    private final Jobs jobs;
    private final Clock clock;
    private final ApplicationEventPublisher events;
    private final TransactionTemplate transactions;

    FilmDecoding(
            FilmRepository films,
            Pyramids pyramids,
            Jobs jobs,
            Clock clock,
            ApplicationEventPublisher events,
            TransactionTemplate transactions) {
        this.films = films;
        this.pyramids = pyramids;
        this.jobs = jobs;
        this.clock = clock;
        this.events = events;
        this.transactions = transactions;
    }

    /** Asks for the picture of a film, in the running transaction. */
    void request(FilmId film, SiteId site) {
        jobs.askNamed(TASK, film.value().toString(), site.value().toString());
    }

    /** Does one job; when another picture is being decoded it steps aside, so that films never hold up other jobs. */
    CompletionHandler<String> run(TaskInstance<String> job, ExecutionContext context) {
        if (pyramids.isBusy()) {
            return this::later;
        }
        var film = new FilmId(UUID.fromString(job.getId()));
        boolean last = context.getExecution().consecutiveFailures >= ATTEMPTS - 1;
        Callers.runAs(
                new Caller.SystemAtSite(UUID.fromString(job.getData()), TASK.getTaskName()), () -> prepare(film, last));
        return (complete, operations) -> operations.remove();
    }

    private void later(ExecutionComplete complete, ExecutionOperations<String> operations) {
        operations.reschedule(complete, clock.instant().plus(PAUSE));
    }

    private void prepare(FilmId id, boolean last) {
        var waiting = Objects.requireNonNull(transactions.execute(status -> films.find(id)));
        waiting.filter(film -> film.state() == FilmState.RECEIVED).ifPresent(film -> prepare(film, last));
    }

    private void prepare(Film film, boolean last) {
        try {
            switch (pyramids.prepare(film.kind(), film.bytes())) {
                case Prepared prepared -> ready(film, prepared);
                case Failed failed -> aside(film, failed.aside());
            }
        } catch (IOException e) {
            failed(film, last, new UncheckedIOException(e));
        } catch (RuntimeException e) {
            failed(film, last, e);
        }
    }

    private void ready(Film film, Prepared prepared) {
        var size = new Film.Size(prepared.pyramid().width(), prepared.pyramid().height());
        transactions.executeWithoutResult(status -> {
            if (films.setReady(film.id(), size)) {
                events.publishEvent(new FilmReady(film.id(), film.site(), film.child()));
            }
        });
    }

    private void failed(Film film, boolean last, RuntimeException failure) {
        if (!last) {
            throw failure;
        }
        LOG.error("The picture of film {} cannot be prepared", film.id().value(), failure);
        aside(film, new Aside(AsideReason.PREPARING_FAILED, failure.getClass().getSimpleName()));
    }

    private void aside(Film film, Aside aside) {
        transactions.executeWithoutResult(status -> films.setAside(film.id(), aside));
    }
}
