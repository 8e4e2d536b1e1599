package org.espalier.prognosis;

import com.github.kagkarlsson.scheduler.SchedulerClient;
import com.github.kagkarlsson.scheduler.task.TaskInstanceId;
import com.github.kagkarlsson.scheduler.task.helper.RecurringTask;
import java.io.IOException;
import java.io.PrintStream;
import java.time.Clock;
import java.time.Duration;
import org.awaitility.Awaitility;
import org.espalier.DoomedProcess;
import org.espalier.TestNetwork;
import org.espalier.reading.TestReader;
import org.springframework.context.ConfigurableApplicationContext;

/**
 * The whole application in a process of its own, which begins its night's work and dies amid it as a killed process
 * does, or finds a night that was cut short and only waits for it to be finished.
 */
public final class DoomedNight {

    /** What it lives to see. */
    enum Life {
        KILLED_AMID_THE_NIGHT,
        THE_NEXT_START
    }

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
        DoomedProcess.live(arguments, (house, said) -> {
            var doomed = new DoomedNight(said, house);
            switch (Life.valueOf(arguments[1])) {
                case KILLED_AMID_THE_NIGHT -> doomed.beginAndDie();
                case THE_NEXT_START -> doomed.waitUntilItIsFinished();
            }
        });
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
        while (count("select coalesce(sum(looked), 0) from night_work where work = 'forecast-nightly'")
                < Nightly.CHUNK) {
            Thread.onSpinWait();
        }
        DoomedProcess.die();
    }

    private void waitUntilItIsFinished() {
        said.println("found " + night());
        Awaitility.await()
                .atMost(LONG)
                .until(() ->
                        count("select count(*) from night_work where work = 'forecast-nightly' and not finished") == 0);
        said.println("left " + night());
        said.println("marked " + count("select count(*) from forecast_mark") + ", forecasts "
                + count("select count(*) from forecast"));
    }

    private String night() {
        long looked = count("select sum(looked) from night_work where work = 'forecast-nightly'");
        var amid = looked >= Nightly.CHUNK && looked < CHILDREN;
        return (amid ? "amid" : Long.toString(looked))
                + (count("select count(*) from night_work where work = 'forecast-nightly' and not finished") == 0
                        ? ", finished"
                        : ", unfinished");
    }

    private long count(String sql) {
        return network.owner().sql(sql).query(Long.class).single();
    }
}
