package org.espalier.platform;

import com.github.kagkarlsson.scheduler.Scheduler;
import com.github.kagkarlsson.scheduler.SchedulerClient;
import com.github.kagkarlsson.scheduler.task.Task;
import com.github.kagkarlsson.scheduler.task.helper.RecurringTask;
import com.zaxxer.hikari.HikariDataSource;
import java.time.Duration;
import java.util.List;
import javax.sql.DataSource;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.event.ContextClosedEvent;
import org.springframework.context.event.EventListener;
import org.springframework.jdbc.datasource.TransactionAwareDataSourceProxy;

/**
 * Jobs that outlive a restart. A module contributes {@link Task} beans; a service asks for one through {@link Jobs}
 * in its own transaction.
 */
@Configuration
class JobsConfiguration {

    private static final int THREADS = 2;

    /** A job whose program died is taken up again after so many missed beats: 20 seconds. */
    private static final Duration HEARTBEAT = Duration.ofSeconds(5);

    private static final int MISSED_HEARTBEATS = 4;

    @Bean
    SchedulerClient schedulerClient(DataSource dataSource) {
        return SchedulerClient.Builder.create(new TransactionAwareDataSourceProxy(dataSource))
                .build();
    }

    @Bean
    JobRunner jobRunner(HikariDataSource jobDataSource, List<Task<?>> tasks) {
        return new JobRunner(jobDataSource, tasks);
    }

    /** Starts with the application and stops with it; a job that was cut off runs again. */
    static final class JobRunner {

        private final Scheduler scheduler;

        @SuppressWarnings("unchecked")
        JobRunner(DataSource jobDataSource, List<Task<?>> tasks) {
            var recurring =
                    tasks.stream().filter(RecurringTask.class::isInstance).map(task -> (RecurringTask<Void>) task);
            var others = tasks.stream().filter(task -> !(task instanceof RecurringTask));
            scheduler = Scheduler.create(
                            jobDataSource, others.<Task<?>>map(task -> task).toList())
                    .startTasks(recurring.toList())
                    .threads(THREADS)
                    .pollingInterval(Duration.ofSeconds(1))
                    .enableImmediateExecution()
                    .heartbeatInterval(HEARTBEAT)
                    .missedHeartbeatsLimit(MISSED_HEARTBEATS)
                    .shutdownMaxWait(Duration.ofSeconds(10))
                    .build();
        }

        @EventListener(ApplicationReadyEvent.class)
        void start() {
            scheduler.start();
        }

        @EventListener(ContextClosedEvent.class)
        void stop() {
            scheduler.stop();
        }
    }
}
