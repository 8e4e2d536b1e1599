package org.espalier;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.test.context.ContextConfiguration;
import org.springframework.test.context.TestExecutionListeners;
import org.springframework.test.context.TestExecutionListeners.MergeMode;

/**
 * A test on the whole application over a real PostgreSQL of its own, as the application's role. All such tests share
 * one application; each makes its own sites, staff and children. No answer and no log line of any of them may hold a
 * canary.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@SpringBootTest(
        webEnvironment = SpringBootTest.WebEnvironment.DEFINED_PORT,
        properties = {
            "espalier.database.embedded=true",
            "espalier.database.durable=false",
            "management.server.port=0",
            "logging.structured.format.console="
        })
@ContextConfiguration(initializers = {TestFolder.class, CanaryWatch.class})
@TestExecutionListeners(listeners = CanaryWatch.class, mergeMode = MergeMode.MERGE_WITH_DEFAULTS)
public @interface IntegrationTest {}
