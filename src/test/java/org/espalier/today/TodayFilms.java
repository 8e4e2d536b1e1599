package org.espalier.today;

import java.time.LocalDate;
import java.util.UUID;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.espalier.platform.Ids;
import org.jspecify.annotations.Nullable;

/** Films as they lie in the database, without their pictures. */
final class TodayFilms {

    private static final String ADD = """
            insert into film (id, site_id, recorded_site, child_id, state, kind, sha256, size_bytes, taken_on,
                width, height, scale_source, aside_reason, recorded_at)
            values (:id, :site, :site, :child, :state, 'DICOM', :sha256, 1, :takenOn, 10, 10, 'NONE',
                case when :state = 'KEPT_ASIDE' then 'UNREADABLE' end, current_timestamp)
            """;

    private TodayFilms() {}

    static UUID add(
            TestNetwork network,
            Ids ids,
            SiteId site,
            @Nullable ChildId child,
            String state,
            @Nullable LocalDate takenOn) {
        var id = ids.next();
        network.owner()
                .sql(ADD)
                .param("id", id)
                .param("site", site.value())
                .param("child", child == null ? null : child.value())
                .param("state", state)
                .param("sha256", id.toString().replace("-", "").repeat(2))
                .param("takenOn", takenOn)
                .update();
        return id;
    }
}
