package org.espalier.platform;

import com.github.kagkarlsson.scheduler.SchedulerClient;
import com.github.kagkarlsson.scheduler.task.TaskDescriptor;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import org.springframework.stereotype.Component;

/** Asks for jobs in the caller's transaction, so that each exists exactly when what it belongs to was committed. */
@Component
public class Jobs {

    private final SchedulerClient scheduler;
    private final Ids ids;
    private final Clock clock;

    Jobs(SchedulerClient scheduler, Ids ids, Clock clock) {
        this.scheduler = scheduler;
        this.ids = ids;
        this.clock = clock;
    }

    /** Does it as soon as possible, once for each time it is asked for. */
    public void ask(TaskDescriptor<String> task, String data) {
        askNamed(task, ids.next().toString(), data);
    }

    /** Does it as soon as possible, unless one of this name is still to be done. */
    public void askNamed(TaskDescriptor<String> task, String name, String data) {
        ask(task, name, data, clock.instant());
    }

    /**
     * Does it when a moment is over, once for all who ask for the same within it; who asks while another has not yet
     * committed waits for them.
     */
    public void askOnce(TaskDescriptor<String> task, String data, Duration within) {
        long moment = clock.millis() / within.toMillis() + 1;
        ask(task, data + " " + moment, data, Instant.ofEpochMilli(moment * within.toMillis()));
    }

    private void ask(TaskDescriptor<String> task, String name, String data, Instant when) {
        scheduler.scheduleIfNotExists(task.instance(name).data(data).scheduledTo(when));
    }
}
