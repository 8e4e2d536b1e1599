package org.espalier.reading;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.film.FilmId;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.statistics.PairedReadings;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Films read by two. A second reading that was corrected later still counts as it was read blind. */
@Repository
class DoubleReadings {

    private static final String PAIRS = """
            select one.quantity, one.value as first, other.value as second
            from reading r
            join reading_number other on other.reading_id = r.id
            join reading_number one
                on one.reading_id = r.second_of and one.side = other.side and one.quantity = other.quantity
            where r.site_id = :site and r.second_of is not null and r.supersedes is null
            order by r.signed_at, r.id, one.side
            """;

    private static final String UNPAIRED = """
            select r.film_id, r.id, f.taken_on, s.name
            from reading r
            join film f on f.id = r.film_id and f.child_id = r.child_id
            join staff s on s.id = r.reader
            where r.site_id = :site and r.second_of is null
                and not exists (select from reading later where later.supersedes = r.id)
                and not exists (select from reading mine where mine.film_id = r.film_id and mine.reader =
                    current_staff())
                and not exists (select from reading second where second.second_of = r.id)
            order by r.signed_at desc, r.id
            limit 30
            """;

    private final JdbcClient jdbc;

    DoubleReadings(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Map<Quantity, List<PairedReadings>> of(SiteId site) {
        Map<Quantity, List<PairedReadings>> pairs = new EnumMap<>(Quantity.class);
        jdbc.sql(PAIRS).param("site", site.value()).query(row -> {
            pairs.computeIfAbsent(Quantity.ofCode(row.getString("quantity")).orElseThrow(), any -> new ArrayList<>())
                    .add(new PairedReadings(row.getDouble("first"), row.getDouble("second")));
        });
        return pairs;
    }

    List<UnpairedFilm> unpaired(SiteId site) {
        return jdbc.sql(UNPAIRED)
                .param("site", site.value())
                .query((row, number) -> new UnpairedFilm(
                        new FilmId(row.getObject("film_id", UUID.class)),
                        new ReadingId(row.getObject("id", UUID.class)),
                        Optional.ofNullable(row.getObject("taken_on", LocalDate.class)),
                        row.getString("name")))
                .list();
    }
}
