package org.espalier.followup;

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
import org.springframework.context.ConfigurableApplicationContext;

/**
 * The whole application in a process of its own, which begins its night's recall and dies amid it as a killed process
 * does; and the next start, which tells what it finds and what it leaves.
 */
public final class DoomedRecall {

    /** What it lives to see. */
    enum Life {
        KILLED_AMID_THE_NIGHT,
        THE_NEXT_START
    }

    static final int CHILDREN = 2_000;

    private static final Duration LONG = Duration.ofMinutes(3);

    private final PrintStream said;
    private final TestNetwork network;
    private final ConfigurableApplicationContext house;

    private DoomedRecall(PrintStream said, ConfigurableApplicationContext house) {
        this.said = said;
        this.house = house;
        network = house.getBean(TestNetwork.class);
    }

    public static void main(String[] arguments) throws IOException {
        DoomedProcess.live(arguments, (house, said) -> {
            var doomed = new DoomedRecall(said, house);
            switch (Life.valueOf(arguments[1])) {
                case KILLED_AMID_THE_NIGHT -> doomed.beginAndDie();
                case THE_NEXT_START -> doomed.waitUntilItIsFinished();
            }
        });
    }

    private void beginAndDie() {
        network.owner()
                .sql("""
                        with born as (
                            select gen_random_uuid() as child, gen_random_uuid() as visit, gen_random_uuid() as limb
                            from generate_series(1, :children)
                        ), children as (
                            insert into child (id, site_id, recorded_site, initials, birth_month, recorded_at,
                                open_visit)
                            select child, :site, :site, 'N', '2018-03-01', now(), visit from born
                        ), limbs as (
                            insert into limb (id, site_id, child_id, side) select limb, :site, child, 'RIGHT' from born
                        ), physes as (
                            insert into physis (id, site_id, child_id, limb_id, bone, bone_end)
                            select gen_random_uuid(), :site, child, limb, 'TIBIA', 'PROXIMAL' from born
                        )
                        insert into visit (id, site_id, child_id, opened_for, opened_at, look_by, harm)
                        select visit, :site, child, 'ON_RECORD', now(), current_date - 30, 77 from born
                        """)
                .param("site", network.site())
                .param("children", CHILDREN)
                .update();
        house.getBean(SchedulerClient.class)
                .reschedule(
                        TaskInstanceId.of(RecallNight.PURPOSE, RecurringTask.INSTANCE),
                        house.getBean(Clock.class).instant());
        while (count("select coalesce(sum(renewed), 0) from night_work where work = 'recall-nightly'")
                < RecallNight.CHUNK) {
            Thread.onSpinWait();
        }
        DoomedProcess.die();
    }

    private void waitUntilItIsFinished() {
        said.println("found " + night());
        Awaitility.await()
                .atMost(LONG)
                .until(() ->
                        count("select count(*) from night_work where work = 'recall-nightly' and not finished") == 0);
        said.println("left " + night());
        said.println("open visits " + count("select count(*) from visit where closed_at is null")
                + (count("select count(distinct child_id) from visit") == CHILDREN
                        ? ", of as many children"
                        : ", doubled")
                + (count("select count(*) from visit where harm = 77") == 0
                        ? ", harm worked out of all"
                        : ", harm not worked out of all"));
    }

    private String night() {
        long renewed = count("select sum(renewed) from night_work where work = 'recall-nightly'");
        var amid = renewed >= RecallNight.CHUNK && renewed < CHILDREN;
        return (amid ? "amid" : Long.toString(renewed))
                + (count("select count(*) from night_work where work = 'recall-nightly' and not finished") == 0
                        ? ", finished"
                        : ", unfinished");
    }

    private long count(String sql) {
        return network.owner().sql(sql).query(Long.class).single();
    }
}
