package org.espalier;

import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.LoggerContext;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.AppenderBase;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.slf4j.LoggerFactory;
import org.springframework.boot.logging.logback.StructuredLogEncoder;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.context.SecurityContextHolderStrategy;
import org.springframework.test.context.TestContext;
import org.springframework.test.context.TestExecutionListener;

/**
 * Fails the test during which a canary turned up: in an answer, in the log as it is written in production, in the name
 * of a kept file, or in the log of accesses. Where tests run several applications, the one under test holds the caller.
 */
class CanaryWatch implements ApplicationContextInitializer<ConfigurableApplicationContext>, TestExecutionListener {

    private static final String IN_THE_ACCESS_LOG =
            "select count(*) from access_entry e where position(lower(:word) in lower(e::text)) > 0";

    @Override
    public void initialize(ConfigurableApplicationContext context) {
        var loggers = (LoggerContext) LoggerFactory.getILoggerFactory();
        var encoder = new StructuredLogEncoder();
        encoder.setFormat("ecs");
        encoder.setCharset(StandardCharsets.UTF_8);
        encoder.setContext(loggers);
        encoder.start();
        var search = new SearchedLog(encoder);
        search.setContext(loggers);
        search.start();
        loggers.getLogger(Logger.ROOT_LOGGER_NAME).addAppender(search);
    }

    @Override
    public void prepareTestInstance(TestContext test) {
        var house = test.getApplicationContext();
        SecurityContextHolder.setContextHolderStrategy(house.getBean(SecurityContextHolderStrategy.class));
        house.getBean(Canaries.class).plant();
    }

    @Override
    public void afterTestMethod(TestContext test) {
        assertThat(Canaries.found()).as("canaries found").isEmpty();
    }

    @Override
    public void afterTestClass(TestContext test) throws IOException {
        var house = test.getApplicationContext();
        var owner = house.getBean(TestNetwork.class).owner();
        assertThat(Canaries.ANYWHERE).as("canaries in the log of accesses").allMatch(word -> owner.sql(
                        IN_THE_ACCESS_LOG)
                .param("word", word)
                .query(Integer.class)
                .single()
                .equals(0));
        try (var files = Files.walk(Path.of(house.getEnvironment().getRequiredProperty("espalier.data"), "films"))) {
            files.forEach(file -> Canaries.search(Canaries.ANYWHERE, file.toString(), "the name of a file"));
        }
        assertThat(Canaries.found()).as("canaries found").isEmpty();
    }

    private static final class SearchedLog extends AppenderBase<ILoggingEvent> {

        private final StructuredLogEncoder encoder;

        SearchedLog(StructuredLogEncoder encoder) {
            this.encoder = encoder;
        }

        @Override
        protected void append(ILoggingEvent event) {
            var line = new String(encoder.encode(event), StandardCharsets.UTF_8);
            Canaries.search(Canaries.ANYWHERE, line, "the log of " + event.getLoggerName());
        }
    }
}
