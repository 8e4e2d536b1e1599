package org.espalier.outcomes;

import com.github.kagkarlsson.scheduler.task.TaskDescriptor;
import com.github.kagkarlsson.scheduler.task.helper.OneTimeTask;
import com.github.kagkarlsson.scheduler.task.helper.RecurringTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import com.github.kagkarlsson.scheduler.task.schedule.Schedules;
import java.time.Duration;
import java.time.LocalTime;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.espalier.platform.Jobs;
import org.espalier.reading.ReadingSigned;
import org.espalier.treatment.TreatmentChanged;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/**
 * When outcomes are told anew: soon after treatment or a reading changes, and every night after costs. New forecasts
 * are taken up in the night: no film can be held against one before the next is read. A job is asked for in the
 * transaction that tells of the change, once for all that changes of a child in a moment.
 */
@Configuration
class OutcomeJobs {

    /** The site's id is the data, and the child's where one alone is meant. */
    static final TaskDescriptor<String> RENEW = TaskDescriptor.of("outcome-renewal", String.class);

    private static final Duration MOMENT = Duration.ofSeconds(5);

    private static final LocalTime AT_NIGHT = LocalTime.of(5, 15);

    @Bean
    OneTimeTask<String> outcomeRenewalTask(OutcomeRenewal renewal) {
        return Tasks.oneTime(RENEW).execute((job, context) -> {
            var ids = job.getData().split(" ", 2);
            var site = new SiteId(UUID.fromString(ids[0]));
            if (ids.length == 1) {
                renewal.renew(site);
            } else {
                renewal.renew(site, new ChildId(UUID.fromString(ids[1])));
            }
        });
    }

    @Bean
    RecurringTask<Void> outcomeNightly(OutcomeRenewal renewal) {
        return Tasks.recurring("outcome-nightly", Schedules.daily(AT_NIGHT))
                .execute((instance, context) -> renewal.renewAll());
    }

    /** Asks for the renewals. */
    @Component
    static class Asking {

        private final Jobs jobs;

        Asking(Jobs jobs) {
            this.jobs = jobs;
        }

        @EventListener
        void on(ReadingSigned signed) {
            ask(signed.site() + " " + signed.child());
        }

        @EventListener
        void on(TreatmentChanged changed) {
            ask(changed.site().value() + " " + changed.child().value());
        }

        /** All children of a hospital. */
        void renew(SiteId site) {
            ask(site.value().toString());
        }

        private void ask(String data) {
            jobs.askOnce(RENEW, data, MOMENT);
        }
    }
}
