package org.espalier.followup;

import java.io.IOException;
import org.espalier.NightCutShort;
import org.espalier.TestNetwork;
import org.springframework.context.ConfigurableApplicationContext;

/** A night's recall that is cut short, in a process of its own. */
public final class DoomedRecall implements NightCutShort.Story {

    static final int CHILDREN = 2_000;

    private static final NightCutShort.Work WORK =
            new NightCutShort.Work(RecallNight.PURPOSE, "renewed", RecallNight.CHUNK, CHILDREN);

    public static void main(String[] arguments) throws IOException {
        NightCutShort.live(arguments, WORK, new DoomedRecall());
    }

    @Override
    public void begin(ConfigurableApplicationContext house) {
        var network = house.getBean(TestNetwork.class);
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
    }

    @Override
    public String end(TestNetwork network) {
        return "open visits " + network.count("select count(*) from visit where closed_at is null")
                + (network.count("select count(distinct child_id) from visit") == CHILDREN
                        ? ", of as many children"
                        : ", doubled")
                + (network.count("select count(*) from visit where harm = 77") == 0
                        ? ", harm worked out of all"
                        : ", harm not worked out of all");
    }
}
