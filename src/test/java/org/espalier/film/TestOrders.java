package org.espalier.film;

import java.time.LocalDate;
import java.util.Map;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.espalier.platform.Ids;
import org.springframework.stereotype.Component;

/** Asks for films of a child, in the past too, where no door leads. */
@Component
public class TestOrders {

    private static final LocalDate LATER = LocalDate.of(2100, 1, 1);

    private final TestNetwork network;
    private final Ids ids;

    TestOrders(TestNetwork network, Ids ids) {
        this.network = network;
        this.ids = ids;
    }

    /** A film that was asked for on a day gone by and is not taken; arguments for the methods about it. */
    public Map<String, Object[]> arrange(SiteId site, ChildId child, LocalDate day) {
        var id = overdue(site, child, day);
        var none = new FilmWish.NoFilm("straight");
        return Map.of(
                "FilmOrderService.order",
                new Object[] {new FilmOrderId(ids.next()), child, LATER, none},
                "FilmOrderService.happened",
                new Object[] {id, ids.next(), new FilmHappening.Taken(null)});
    }

    FilmOrderId overdue(SiteId site, ChildId child, LocalDate day) {
        var id = new FilmOrderId(ids.next());
        network.owner()
                .sql("""
                        insert into film_order (id, site_id, recorded_site, child_id, asked_on, for_day, needed, sides,
                            protocol, ball, recorded_at)
                        values (?, ?, ?, ?, ?, ?, true, 'BOTH', 'LONG_STANDING', true, now())""")
                .params(id.value(), site.value(), site.value(), child.value(), day, day)
                .update();
        return id;
    }
}
