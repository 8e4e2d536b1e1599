package org.espalier.cost;

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
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.stereotype.Component;

/**
 * When what is kept of costs is made anew: soon after treatment or a tariff changes, and every night. A job is asked
 * for in the transaction that changes something, so that it exists exactly when the change does.
 */
@Configuration
class CostJobs {

    /** The site's id is the data, and the child's where one alone is meant. */
    static final TaskDescriptor<String> RENEW = TaskDescriptor.of("cost-renewal", String.class);

    private static final Duration MOMENT = Duration.ofSeconds(2);

    private static final LocalTime AT_NIGHT = LocalTime.of(4, 30);

    @Bean
    OneTimeTask<String> costRenewalTask(CostRenewal renewal) {
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
    RecurringTask<Void> costNightly(CostRenewal renewal) {
        return Tasks.recurring("cost-nightly", Schedules.daily(AT_NIGHT))
                .execute((instance, context) -> renewal.renewAll());
    }

    /** Asks for the renewals. */
    @Component
    static class Asking {

        private final Jobs jobs;

        Asking(Jobs jobs) {
            this.jobs = jobs;
        }

        /** All accounts of a hospital. */
        void renew(SiteId site) {
            jobs.ask(RENEW, site.value().toString());
        }

        /**
         * All accounts of a hospital, once for all that changes there in a moment; asked for while nobody else changes
         * it.
         */
        void renewSoon(SiteId site) {
            jobs.askOnce(RENEW, site.value().toString(), MOMENT);
        }

        void renew(SiteId site, ChildId child) {
            jobs.ask(RENEW, site.value() + " " + child.value());
        }
    }
}
