package org.espalier.followup;

import com.github.kagkarlsson.scheduler.SchedulerClient;
import com.github.kagkarlsson.scheduler.task.helper.OneTimeTask;
import com.github.kagkarlsson.scheduler.task.helper.RecurringTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import com.github.kagkarlsson.scheduler.task.schedule.Schedules;
import java.time.Clock;
import java.time.LocalTime;
import org.espalier.access.SiteService;
import org.espalier.platform.Ids;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.mail.javamail.JavaMailSender;
import org.springframework.transaction.support.TransactionTemplate;

/** What is done about visits while nobody looks. Mail is sent only where a mail server is named. */
@Configuration
class VisitJobs {

    private static final String MAIL_SERVER = "spring.mail.host";
    private static final LocalTime AT_NIGHT = LocalTime.of(3, 30);
    private static final LocalTime IN_THE_MORNING = LocalTime.of(6, 30);

    @Bean
    RecurringTask<Void> recallNightly(RecallNight night) {
        return Tasks.recurring(RecallNight.PURPOSE, Schedules.daily(AT_NIGHT))
                .execute((instance, context) -> night.run());
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
            SchedulerClient jobs,
            Ids ids,
            Clock clock) {
        return new EmergencyMail(sender, from, letterheads, sites, transactions, jobs, ids, clock);
    }

    @Bean
    @ConditionalOnProperty(MAIL_SERVER)
    OneTimeTask<String> emergencyMailTask(EmergencyMail mail) {
        return Tasks.oneTime(EmergencyMail.TASK).execute((job, context) -> mail.send(job.getData()));
    }
}
