package org.espalier.followup;

import java.util.Optional;
import org.espalier.access.SiteId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What letters say of each hospital. */
@Repository
class JdbcLetterheadRepository {

    private static final String ONE = "select address, phone, staff_mail from letterhead where site_id = :site";
    private static final String SAVE = """
            insert into letterhead (site_id, address, phone, staff_mail) values (:site, :address, :phone, :staffMail)
            on conflict (site_id) do update set address = excluded.address, phone = excluded.phone,
                staff_mail = excluded.staff_mail, version = letterhead.version + 1
            """;

    private final JdbcClient jdbc;

    JdbcLetterheadRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Optional<Letterhead> of(SiteId site) {
        return jdbc.sql(ONE)
                .param("site", site.value())
                .query((row, number) ->
                        new Letterhead(row.getString("address"), row.getString("phone"), row.getString("staff_mail")))
                .optional();
    }

    /** Where a word about the recall goes; empty when it goes nowhere. */
    Optional<String> staffMail(SiteId site) {
        return of(site).flatMap(Letterhead::mailbox);
    }

    void save(SiteId site, Letterhead letterhead) {
        jdbc.sql(SAVE)
                .param("site", site.value())
                .param("address", letterhead.address())
                .param("phone", letterhead.phone())
                .param("staffMail", letterhead.staffMail())
                .update();
    }
}
