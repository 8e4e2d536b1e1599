package org.espalier.prognosis;

import com.github.kagkarlsson.scheduler.task.TaskDescriptor;
import com.github.kagkarlsson.scheduler.task.helper.OneTimeTask;
import com.github.kagkarlsson.scheduler.task.helper.RecurringTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import com.github.kagkarlsson.scheduler.task.schedule.Schedules;
import java.time.LocalTime;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.film.FilmAssigned;
import org.espalier.patient.ChildId;
import org.espalier.patient.FindingRecorded;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.espalier.platform.Jobs;
import org.espalier.reading.ReadingSigned;
import org.espalier.treatment.TreatmentChanged;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/**
 * When forecasts are made anew: soon after a reading is signed, a film given or moved, or anything of treatment or
 * examination written down, and every night. A job is asked for in the transaction that tells of the change, so that it
 * exists exactly when the change does, and is taken up again after any stop.
 */
@Configuration
class RenewalJobs {

    /** The child's and the site's id are the data of each instance. */
    static final TaskDescriptor<String> RENEW = TaskDescriptor.of("forecast-renewal", String.class);

    private static final LocalTime AT_NIGHT = LocalTime.of(1, 30);

    @Bean
    OneTimeTask<String> forecastRenewal(Renewal renewal) {
        return Tasks.oneTime(RENEW).execute((job, context) -> {
            var ids = job.getData().split(" ", 2);
            var site = new SiteId(UUID.fromString(ids[1]));
            Callers.runAs(
                    new Caller.SystemAtSite(site.value(), RENEW.getTaskName()),
                    () -> renewal.renew(site, new ChildId(UUID.fromString(ids[0]))));
        });
    }

    @Bean
    RecurringTask<Void> forecastNightly(Nightly nightly) {
        return Tasks.recurring(Nightly.PURPOSE, Schedules.daily(AT_NIGHT))
                .execute((instance, context) -> nightly.run());
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
            ask(signed.child(), signed.site());
        }

        @EventListener
        void on(FindingRecorded found) {
            ask(found.child().value(), found.site().value());
        }

        @EventListener
        void on(TreatmentChanged changed) {
            ask(changed.child().value(), changed.site().value());
        }

        @EventListener
        void on(FilmAssigned assigned) {
            assigned.before()
                    .ifPresent(child -> ask(child.value(), assigned.site().value()));
            assigned.now().ifPresent(child -> ask(child.value(), assigned.site().value()));
        }

        private void ask(UUID child, UUID site) {
            jobs.ask(RENEW, child + " " + site);
        }
    }
}
