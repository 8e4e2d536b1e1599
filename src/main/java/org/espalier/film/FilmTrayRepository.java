package org.espalier.film;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

@Repository
class FilmTrayRepository {

    private static final int MOST = 200;

    private static final String OF_SITE = """
            select film.id, film.version, film.state, film.kind, film.taken_on, film.aside_reason, film.recorded_at,
                label.original_name, label.patient_name, label.local_number, label.birth_date, label.sex,
                label.accession_number, label.study_description, label.series_description
            from film join film_label label on label.film_id = film.id
            where film.site_id = :site and (film.child_id is null or film.state = 'KEPT_ASIDE')
            order by film.recorded_at desc, film.id desc
            limit :most""";

    private final JdbcClient jdbc;

    FilmTrayRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<TrayItem> of(SiteId site) {
        return jdbc.sql(OF_SITE)
                .param("site", site.value())
                .param("most", MOST)
                .query(FilmTrayRepository::item)
                .list();
    }

    private static TrayItem item(ResultSet row, int number) throws SQLException {
        return new TrayItem(
                new FilmId(row.getObject("id", UUID.class)),
                row.getLong("version"),
                FilmState.valueOf(row.getString("state")),
                FilmKind.valueOf(row.getString("kind")),
                row.getString("original_name"),
                label(row),
                Optional.ofNullable(row.getObject("taken_on", LocalDate.class)),
                Optional.ofNullable(row.getString("aside_reason")).map(AsideReason::valueOf),
                row.getTimestamp("recorded_at").toInstant());
    }

    private static FilmLabel label(ResultSet row) throws SQLException {
        return new FilmLabel(
                row.getString("patient_name"),
                row.getString("local_number"),
                row.getObject("birth_date", LocalDate.class),
                row.getString("sex"),
                row.getString("accession_number"),
                row.getString("study_description"),
                row.getString("series_description"));
    }
}
