package org.espalier.prognosis;

import com.github.kagkarlsson.scheduler.SchedulerClient;
import com.github.kagkarlsson.scheduler.task.TaskInstanceId;
import com.github.kagkarlsson.scheduler.task.helper.RecurringTask;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import org.awaitility.Awaitility;
import org.espalier.Espalier;
import org.espalier.TestNetwork;
import org.espalier.reading.TestReader;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;

/**
 * The whole application in a process of its own, which begins its night's work and dies amid it as a killed process does, or
 * finds a night that was cut short and only waits for it to be finished.
 */
public final class DoomedNight {

    /** What it lives to see. */
    enum Life {
        KILLED_AMID_THE_NIGHT,
        THE_NEXT_START
    }

    static final int KILLED = 137;
    static final int CHILDREN = 10_000;

    private static final Duration LONG = Duration.ofMinutes(2);

    private final PrintStream said;
    private final TestNetwork network;
    private final ConfigurableApplicationContext house;

    private DoomedNight(PrintStream said, ConfigurableApplicationContext house) {
        this.said = said;
        this.house = house;
        network = house.getBean(TestNetwork.class);
    }

    public static void main(String[] arguments) throws IOException {
        var folder = Path.of(arguments[0]);
        var life = Life.valueOf(arguments[1]);
        try (var said = new PrintStream(Files.newOutputStream(folder.resolve(arguments[1] + ".said")), true);
                var house = new SpringApplicationBuilder(Espalier.class)
                        .run(
                                "--espalier.data=" + folder.resolve("data"),
                                "--espalier.database.embedded=true",
                                "--server.port=0",
                                "--management.server.port=0")) {
            var doomed = new DoomedNight(said, house);
            if (life == Life.KILLED_AMID_THE_NIGHT) {
                doomed.beginAndDie();
            } else {
                doomed.waitUntilItIsFinished();
            }
        }
    }

    private void beginAndDie() {
        var surgeon = house.getBean(TestReader.class).surgeon();
        house.getBean(TestCourse.class).plated(surgeon);
        Awaitility.await().atMost(LONG).until(() -> count("select count(*) from forecast") == 2);
        network.owner()
                .sql("""
                        insert into child (id, site_id, recorded_site, initials, birth_month, recorded_at, needs_visit)
                        select gen_random_uuid(), :site, :site, 'N', '2018-03-01', now(), false
                        from generate_series(2, :children)
                        """)
                .param("site", surgeon.site().value())
                .param("children", CHILDREN)
                .update();
        house.getBean(SchedulerClient.class)
                .reschedule(
                        TaskInstanceId.of(Nightly.PURPOSE, RecurringTask.INSTANCE),
                        house.getBean(Clock.class).instant());
        while (count("select coalesce(sum(looked), 0) from forecast_night") < Nightly.CHUNK) {
            Thread.onSpinWait();
        }
        Runtime.getRuntime().halt(KILLED);
    }

    private void waitUntilItIsFinished() {
        said.println("found " + night());
        Awaitility.await()
                .atMost(LONG)
                .until(() -> count("select count(*) from forecast_night where not finished") == 0);
        said.println("left " + night());
        said.println("marked " + count("select count(*) from forecast_mark") + ", forecasts "
                + count("select count(*) from forecast"));
    }

    private String night() {
        long looked = count("select sum(looked) from forecast_night");
        var amid = looked >= Nightly.CHUNK && looked < CHILDREN;
        return (amid ? "amid" : Long.toString(looked))
                + (count("select count(*) from forecast_night where not finished") == 0
                        ? ", finished"
                        : ", unfinished");
    }

    private long count(String sql) {
        return network.owner().sql(sql).query(Long.class).single();
    }
}
