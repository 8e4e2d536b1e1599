package org.espalier.access;

import com.github.kagkarlsson.scheduler.task.helper.RecurringTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import com.github.kagkarlsson.scheduler.task.schedule.FixedDelay;
import com.github.kagkarlsson.scheduler.task.schedule.Schedules;
import java.time.Duration;
import java.time.LocalTime;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/**
 * Has the access log sealed every two seconds by one of the nodes, and all seals checked each night. Seals name nobody,
 * so no caller is needed.
 */
@Configuration
class SealingConfiguration {

    private static final Logger LOG = LoggerFactory.getLogger(SealingConfiguration.class);
    private static final Duration EVERY = Duration.ofSeconds(2);
    private static final LocalTime AT_NIGHT = LocalTime.of(2, 45);

    @Bean
    RecurringTask<Void> sealAccessLog(AccessLog log) {
        return Tasks.recurring("seal-access-log", FixedDelay.of(EVERY)).execute((instance, context) -> log.seal());
    }

    @Bean
    RecurringTask<Void> checkAccessLog(AccessLog log) {
        return Tasks.recurring("check-access-log", Schedules.daily(AT_NIGHT)).execute((instance, context) -> {
            var broken = log.checkSeals().broken();
            if (broken != null) {
                LOG.error("Seal {} of the access log does not hold: the log was changed", broken.seal());
            }
        });
    }
}
