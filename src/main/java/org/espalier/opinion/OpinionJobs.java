package org.espalier.opinion;

import com.github.kagkarlsson.scheduler.task.helper.RecurringTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import com.github.kagkarlsson.scheduler.task.schedule.Schedules;
import java.time.LocalTime;
import org.espalier.followup.StaffMail;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What is done about opinions while nobody looks. Mail is sent only where a mail server is named. */
@Configuration
@ConditionalOnProperty("spring.mail.host")
class OpinionJobs {

    private static final String PURPOSE = "opinion-mail";
    private static final LocalTime IN_THE_MORNING = LocalTime.of(6, 35);

    @Bean
    RecurringTask<Void> opinionMailDaily(StaffMail mail, OpinionReminder reminder) {
        return Tasks.recurring(PURPOSE, Schedules.daily(IN_THE_MORNING))
                .execute((instance, context) -> mail.toEach(PURPOSE, reminder::word));
    }
}
