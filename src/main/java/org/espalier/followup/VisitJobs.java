package org.espalier.followup;

import com.github.kagkarlsson.scheduler.task.TaskDescriptor;
import com.github.kagkarlsson.scheduler.task.helper.OneTimeTask;
import com.github.kagkarlsson.scheduler.task.helper.RecurringTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import com.github.kagkarlsson.scheduler.task.schedule.Schedules;
import java.time.Duration;
import java.time.LocalTime;
import java.util.UUID;
import org.espalier.access.SiteService;
import org.espalier.patient.ChildId;
import org.espalier.patient.FindingRecorded;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.espalier.platform.Jobs;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.event.EventListener;
import org.springframework.mail.javamail.JavaMailSender;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/** What is done about visits while nobody looks. Mail is sent only where a mail server is named. */
@Configuration
class VisitJobs {

    /** The site's and the child's id are the data. */
    static final TaskDescriptor<String> RENEW = TaskDescriptor.of("due-by-renewal", String.class);

    /** What is written down of a child in one go is asked about once. */
    private static final Duration MOMENT = Duration.ofSeconds(2);

    private static final String MAIL_SERVER = "spring.mail.host";
    private static final LocalTime AT_NIGHT = LocalTime.of(3, 30);
    private static final LocalTime IN_THE_MORNING = LocalTime.of(6, 30);

    @Bean
    RecurringTask<Void> recallNightly(RecallNight night) {
        return Tasks.recurring(RecallNight.PURPOSE, Schedules.daily(AT_NIGHT))
                .execute((instance, context) -> night.run());
    }

    @Bean
    OneTimeTask<String> dueByRenewal(DueByService dueBy) {
        return Tasks.oneTime(RENEW).execute((job, context) -> {
            var ids = job.getData().split(" ", 2);
            Callers.runAs(
                    new Caller.SystemAtSite(UUID.fromString(ids[0]), RENEW.getTaskName()),
                    () -> dueBy.renew(new ChildId(UUID.fromString(ids[1]))));
        });
    }

    /** Asks the rules again soon after something was found on a child: bone age, size and diagnosis bear on dates. */
    @Component
    static class Asking {

        private final Jobs jobs;

        Asking(Jobs jobs) {
            this.jobs = jobs;
        }

        @EventListener
        void on(FindingRecorded found) {
            jobs.askOnce(RENEW, found.site().value() + " " + found.child().value(), MOMENT);
        }
    }

    @Bean
    @ConditionalOnProperty(MAIL_SERVER)
    StaffMail staffMail(
            JavaMailSender sender,
            @Value("${espalier.mail.from}") String from,
            JdbcLetterheadRepository letterheads,
            JdbcVisitNightRepository nights,
            TransactionTemplate transactions) {
        return new StaffMail(sender, from, letterheads, nights, transactions);
    }

    @Bean
    @ConditionalOnProperty(MAIL_SERVER)
    RecallMail recallMail(StaffMail mail, JdbcRecallRepository recall, SiteService sites) {
        return new RecallMail(mail, recall, sites);
    }

    @Bean
    @ConditionalOnProperty(MAIL_SERVER)
    RecurringTask<Void> recallMailDaily(RecallMail mail) {
        return Tasks.recurring("recall-mail", Schedules.daily(IN_THE_MORNING))
                .execute((instance, context) -> mail.run());
    }

    @Bean
    @ConditionalOnProperty(MAIL_SERVER)
    EmergencyMail emergencyMail(
            JavaMailSender sender,
            @Value("${espalier.mail.from}") String from,
            JdbcLetterheadRepository letterheads,
            SiteService sites,
            TransactionTemplate transactions,
            Jobs jobs) {
        return new EmergencyMail(sender, from, letterheads, sites, transactions, jobs);
    }

    @Bean
    @ConditionalOnProperty(MAIL_SERVER)
    OneTimeTask<String> emergencyMailTask(EmergencyMail mail) {
        return Tasks.oneTime(EmergencyMail.TASK).execute((job, context) -> mail.send(job.getData()));
    }
}
