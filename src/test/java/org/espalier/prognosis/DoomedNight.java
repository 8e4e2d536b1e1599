package org.espalier.prognosis;

import java.io.IOException;
import java.time.Duration;
import org.awaitility.Awaitility;
import org.espalier.NightCutShort;
import org.espalier.TestNetwork;
import org.espalier.reading.TestReader;
import org.springframework.context.ConfigurableApplicationContext;

/** A night's forecasts that are cut short, in a process of its own. */
public final class DoomedNight implements NightCutShort.Story {

    static final int CHILDREN = 10_000;

    private static final NightCutShort.Work WORK =
            new NightCutShort.Work(Nightly.PURPOSE, "looked", Nightly.CHUNK, CHILDREN);

    public static void main(String[] arguments) throws IOException {
        NightCutShort.live(arguments, WORK, new DoomedNight());
    }

    @Override
    public void begin(ConfigurableApplicationContext house) {
        var network = house.getBean(TestNetwork.class);
        var surgeon = house.getBean(TestReader.class).surgeon();
        house.getBean(TestCourse.class).plated(surgeon);
        Awaitility.await()
                .atMost(Duration.ofMinutes(2))
                .until(() -> network.count("select count(*) from forecast") == 2);
        network.owner()
                .sql("""
                        insert into child (id, site_id, recorded_site, initials, birth_month, recorded_at, needs_visit)
                        select gen_random_uuid(), :site, :site, 'N', '2018-03-01', now(), false
                        from generate_series(2, :children)
                        """)
                .param("site", surgeon.site().value())
                .param("children", CHILDREN)
                .update();
    }

    @Override
    public String end(TestNetwork network) {
        return "marked " + network.count("select count(*) from forecast_mark") + ", forecasts "
                + network.count("select count(*) from forecast");
    }
}
