package org.espalier;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.kagkarlsson.scheduler.SchedulerClient;
import com.github.kagkarlsson.scheduler.task.TaskInstanceId;
import com.github.kagkarlsson.scheduler.task.helper.RecurringTask;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import org.awaitility.Awaitility;
import org.springframework.context.ConfigurableApplicationContext;

/**
 * A night's work on many children in the whole application in a process of its own, which dies amid it as a killed
 * process does; and the next start, which tells what it finds and what it leaves.
 */
public final class NightCutShort {

    private static final Duration LONG = Duration.ofMinutes(3);

    /** What a house lives to see. */
    private enum Life {
        KILLED_AMID_THE_NIGHT,
        THE_NEXT_START
    }

    /**
     * The work of a night.
     *
     * @param name of the job, and of its work in the table of nights
     * @param counted the column of that table that counts the children done
     * @param chunk so many are done in one transaction
     * @param children so many there are
     */
    public record Work(String name, String counted, int chunk, int children) {}

    /** What there is before the night, and what the night has made of it. */
    public interface Story {

        void begin(ConfigurableApplicationContext house);

        String end(TestNetwork network);
    }

    private final Work work;
    private final PrintStream said;
    private final TestNetwork network;
    private final ConfigurableApplicationContext house;

    private NightCutShort(Work work, PrintStream said, ConfigurableApplicationContext house) {
        this.work = work;
        this.said = said;
        this.house = house;
        network = house.getBean(TestNetwork.class);
    }

    /** Runs a program that lives such a night, kills it amid the work, starts it again; what the next start said. */
    public static List<String> of(Class<?> program, Path folder) throws IOException, InterruptedException {
        assertThat(DoomedProcess.run(program, folder, Life.KILLED_AMID_THE_NIGHT))
                .isEqualTo(DoomedProcess.KILLED);
        assertThat(DoomedProcess.run(program, folder, Life.THE_NEXT_START)).isZero();
        return DoomedProcess.said(folder, Life.THE_NEXT_START);
    }

    /** Within the process: lives what its arguments say. */
    public static void live(String[] arguments, Work work, Story story) throws IOException {
        DoomedProcess.live(arguments, (house, said) -> {
            var night = new NightCutShort(work, said, house);
            switch (Life.valueOf(arguments[1])) {
                case KILLED_AMID_THE_NIGHT -> night.beginAndDie(story);
                case THE_NEXT_START -> night.waitUntilItIsFinished(story);
            }
        });
    }

    private void beginAndDie(Story story) {
        story.begin(house);
        house.getBean(SchedulerClient.class)
                .reschedule(
                        TaskInstanceId.of(work.name(), RecurringTask.INSTANCE),
                        house.getBean(Clock.class).instant());
        while (done() < work.chunk()) {
            Thread.onSpinWait();
        }
        DoomedProcess.die();
    }

    private void waitUntilItIsFinished(Story story) {
        said.println("found " + night());
        Awaitility.await().atMost(LONG).until(this::isFinished);
        said.println("left " + night());
        said.println(story.end(network));
    }

    private String night() {
        long done = done();
        var amid = done >= work.chunk() && done < work.children();
        return (amid ? "amid" : Long.toString(done)) + (isFinished() ? ", finished" : ", unfinished");
    }

    private long done() {
        return network.count(
                "select coalesce(sum(" + work.counted() + "), 0) from night_work where work = ?", work.name());
    }

    private boolean isFinished() {
        return network.count("select count(*) from night_work where work = ? and not finished", work.name()) == 0;
    }
}
