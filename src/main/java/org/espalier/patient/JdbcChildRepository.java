package org.espalier.patient;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.access.StaffId;
import org.espalier.kit.Who;
import org.espalier.science.quantity.Sex;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Children and who they are. */
@Repository
class JdbcChildRepository {

    private static final String ADD_CHILD = """
            insert into child
                (id, site_id, recorded_site, initials, birth_month, sex, recorded_by, recorded_at, open_visit)
            values (:child, :site, :site, :initials, :birthMonth, :sex, :by, :at, :visit)
            """;
    private static final String ADD_IDENTITY = """
            insert into child_identity
                (child_id, site_id, family_name, given_name, birth_date, local_number, sort_name)
            values (:child, :site, :familyName, :givenName, :birthDate, :localNumber, :sortName)
            """;
    private static final String CHANGE_CHILD = """
            update child set version = version + 1, initials = :initials, birth_month = :birthMonth, sex = :sex
            where id = :child and version = :version
            """;
    private static final String CHANGE_IDENTITY = """
            update child_identity
            set family_name = :familyName, given_name = :givenName, birth_date = :birthDate,
                local_number = :localNumber, sort_name = :sortName
            where child_id = :child
            """;
    private static final String COLUMNS = """
            select c.id, c.site_id, c.version, c.initials, c.birth_month, c.sex,
                i.family_name, i.given_name, i.birth_date, i.local_number
            """;
    private static final String ONE = COLUMNS + """
            from child c left join child_identity i on i.child_id = c.id
            where c.id = :child
            """;
    private static final String SOME = COLUMNS + """
            from child c left join child_identity i on i.child_id = c.id
            where c.site_id = :site and c.id = any(cast(:children as uuid[]))
            """;
    private static final String WITH_NUMBER = COLUMNS + """
            from child_identity i join child c on c.id = i.child_id
            where i.site_id = :site and i.local_number = :localNumber
            """;
    private static final String BY_NAME = COLUMNS + """
            from child_identity i join child c on c.id = i.child_id
            where i.site_id = :site and c.site_id = :site
            order by i.sort_name, i.birth_date, c.id offset :from limit :most
            """;
    private static final String YOUNGEST = COLUMNS + """
            from child_identity i join child c on c.id = i.child_id
            where i.site_id = :site and c.site_id = :site
            order by i.birth_date desc, i.sort_name, c.id offset :from limit :most
            """;
    private static final String LATEST = COLUMNS + """
            from child c join child_identity i on i.child_id = c.id
            where i.site_id = :site and c.site_id = :site
            order by c.recorded_at desc, c.id desc offset :from limit :most
            """;

    /** Each word and each code must be met; the nearest comes first. */
    private static final String FIND = COLUMNS + """
            from (
                select id.*,
                    (select min(greatest(extensions.word_similarity(w.word, id.sort_name),
                            case when id.sort_name ~ w.slip then 0.75 else 0 end))
                        from unnest(cast(:words as text[]), cast(:wordSlips as text[])) as w (word, slip)) as by_word,
                    (select min(case
                            when lower(id.local_number) = lower(k.number) or digits.day ~ k.days then 1
                            when lower(id.local_number) ~ lower(k.number_slip) or digits.day ~ k.day_slips then 0.8
                            else 0 end)
                        from unnest(cast(:numbers as text[]), cast(:numberSlips as text[]), cast(:days as text[]),
                            cast(:daySlips as text[])) as k (number, number_slip, days, day_slips)) as by_code
                from child_identity id, lateral (select to_char(id.birth_date, 'DDMMYYYY') as day) digits
                where id.site_id = :site
            ) i join child c on c.id = i.child_id
            where coalesce(i.by_word, 1) >= :nearWord and coalesce(i.by_code, 1) > 0
            order by coalesce(i.by_word, 0) + coalesce(i.by_code, 0) desc, i.sort_name, c.id limit :most
            """;

    private static final double NEAR_WORD = 0.5;

    private final JdbcClient jdbc;

    JdbcChildRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * Adds a child.
     *
     * @param visit the child's first visit, to be opened in the same transaction
     */
    void add(ChildId child, SiteId site, ChildData data, @Nullable StaffId by, Instant at, UUID visit) {
        jdbc.sql(ADD_CHILD)
                .param("child", child.value())
                .param("site", site.value())
                .param("initials", PlainName.initials(data))
                .param("birthMonth", data.birthDate().withDayOfMonth(1))
                .param("sex", name(data.sex()))
                .param("by", by == null ? null : by.value())
                .param("at", at.atOffset(ZoneOffset.UTC))
                .param("visit", visit)
                .update();
        identity(ADD_IDENTITY, child, data).param("site", site.value()).update();
    }

    /** Whether the version was still the one that is kept; nothing is changed otherwise. */
    boolean change(ChildId child, long version, ChildData data) {
        int changed = jdbc.sql(CHANGE_CHILD)
                .param("child", child.value())
                .param("version", version)
                .param("initials", PlainName.initials(data))
                .param("birthMonth", data.birthDate().withDayOfMonth(1))
                .param("sex", name(data.sex()))
                .update();
        return changed == 1 && identity(CHANGE_IDENTITY, child, data).update() == 1;
    }

    Optional<Child> find(ChildId child) {
        return jdbc.sql(ONE)
                .param("child", child.value())
                .query(JdbcChildRepository::toChild)
                .optional();
    }

    List<Child> all(SiteId site, Collection<ChildId> children) {
        return jdbc.sql(SOME)
                .param("site", site.value())
                .param("children", children.stream().map(ChildId::value).toArray(UUID[]::new))
                .query(JdbcChildRepository::toChild)
                .list();
    }

    Optional<Child> withNumber(SiteId site, String localNumber) {
        return jdbc.sql(WITH_NUMBER)
                .param("site", site.value())
                .param("localNumber", localNumber)
                .query(JdbcChildRepository::toChild)
                .optional();
    }

    List<Child> list(SiteId site, ChildOrder order, int from, int most) {
        var sql =
                switch (order) {
                    case NAME -> BY_NAME;
                    case YOUNGEST -> YOUNGEST;
                    case LATEST -> LATEST;
                };
        return jdbc.sql(sql)
                .param("site", site.value())
                .param("from", from)
                .param("most", most)
                .query(JdbcChildRepository::toChild)
                .list();
    }

    List<Child> find(SiteId site, ChildSearch search, int most) {
        var codes = search.codes();
        return jdbc.sql(FIND)
                .param("site", site.value())
                .param("words", search.words().toArray(String[]::new))
                .param("wordSlips", search.wordSlips().toArray(String[]::new))
                .param("numbers", codes.stream().map(ChildSearch.Code::number).toArray(String[]::new))
                .param(
                        "numberSlips",
                        codes.stream().map(ChildSearch.Code::numberSlip).toArray(String[]::new))
                .param("days", codes.stream().map(ChildSearch.Code::exactDays).toArray(String[]::new))
                .param(
                        "daySlips",
                        codes.stream().map(ChildSearch.Code::daySlips).toArray(String[]::new))
                .param("nearWord", NEAR_WORD)
                .param("most", most)
                .query(JdbcChildRepository::toChild)
                .list();
    }

    private JdbcClient.StatementSpec identity(String sql, ChildId child, ChildData data) {
        return jdbc.sql(sql)
                .param("child", child.value())
                .param("familyName", data.familyName())
                .param("givenName", data.givenName())
                .param("birthDate", data.birthDate())
                .param("localNumber", data.localNumber())
                .param("sortName", PlainName.of(data));
    }

    private static Child toChild(ResultSet row, int number) throws SQLException {
        return new Child(
                new ChildId(row.getObject("id", UUID.class)),
                new SiteId(row.getObject("site_id", UUID.class)),
                row.getLong("version"),
                toWho(row));
    }

    private static Who toWho(ResultSet row) throws SQLException {
        var sexName = row.getString("sex");
        var sex = sexName == null ? null : Sex.valueOf(sexName);
        var familyName = row.getString("family_name");
        if (familyName == null) {
            var month = YearMonth.from(row.getObject("birth_month", LocalDate.class));
            return new Who.Initialled(row.getString("initials"), month, sex);
        }
        return new Who.Named(
                familyName,
                row.getString("given_name"),
                row.getObject("birth_date", LocalDate.class),
                sex,
                row.getString("local_number"));
    }

    private static @Nullable String name(@Nullable Sex sex) {
        return sex == null ? null : sex.name();
    }
}
