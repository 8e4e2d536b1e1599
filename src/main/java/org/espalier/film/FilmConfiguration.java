package org.espalier.film;

import com.github.kagkarlsson.scheduler.task.Task;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import java.time.Duration;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Limits and the background job of films. */
@Configuration
@EnableConfigurationProperties({FilmProperties.class, PictureProperties.class})
class FilmConfiguration {

    private static final Duration AFTER_FAILURE = Duration.ofSeconds(10);

    @Bean
    Task<String> filmDecodingTask(FilmDecoding decoding) {
        return Tasks.custom(FilmDecoding.TASK)
                .onDeadExecutionRevive()
                .onFailure((complete, operations) ->
                        operations.reschedule(complete, complete.getTimeDone().plus(AFTER_FAILURE)))
                .execute(decoding::run);
    }
}
