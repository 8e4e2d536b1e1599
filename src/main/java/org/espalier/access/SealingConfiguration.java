package org.espalier.access;

import com.github.kagkarlsson.scheduler.task.helper.RecurringTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import com.github.kagkarlsson.scheduler.task.schedule.FixedDelay;
import java.time.Duration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Has the access log sealed every two seconds by one of the nodes. Seals name nobody, so no caller is needed. */
@Configuration
class SealingConfiguration {

    private static final Duration EVERY = Duration.ofSeconds(2);

    @Bean
    RecurringTask<Void> sealAccessLog(AccessLog log) {
        return Tasks.recurring("seal-access-log", FixedDelay.of(EVERY)).execute((instance, context) -> log.seal());
    }
}
