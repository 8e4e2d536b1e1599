package org.espalier.film.internal.dicomweb;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.espalier.access.AccessLog;
import org.espalier.access.ChildRef;
import org.espalier.access.SiteId;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** Films as an archive asks for them: by UID and by label, within one site, those kept aside left out. */
@Repository
class InstanceRepository {

    private static final String FILTERED = """
            from film join film_label label on label.film_id = film.id
            where film.site_id = :site and film.kind = 'DICOM' and film.state <> 'KEPT_ASIDE'
                and (:study::text[] is null or film.study_uid = any(:study))
                and (:series::text[] is null or film.series_uid = any(:series))
                and (:instance::text[] is null or film.sop_instance_uid = any(:instance))
                and (:sopClass::text[] is null or film.sop_class_uid = any(:sopClass))
                and (:from::date is null or film.study_date >= :from)
                and (:to::date is null or film.study_date <= :to)
                and (:birthDate::date is null or label.birth_date = :birthDate)
                and (:accession::text is null or label.accession_number like :accession)
                and (:patientId::text is null or label.local_number like :patientId)
                and (:patientName::text is null or label.patient_name ilike :patientName)
                and (:modality::text is null or film.modality like :modality)
            """;

    private static final String COLUMNS = """
            film.id, film.child_id, film.sop_class_uid, film.sop_instance_uid, film.study_uid, film.series_uid,
            film.transfer_syntax_uid, film.modality, film.study_date, film.height, film.width,
            label.patient_name, label.local_number, label.birth_date, label.sex, label.accession_number,
            label.study_description, label.series_description
            """;

    private static final String INSTANCES = "select " + COLUMNS + FILTERED
            + " order by film.study_date desc nulls last, film.study_uid, film.series_uid, film.sop_instance_uid"
            + " limit :limit offset :offset";

    private static final String SERIES = """
            select first.*, counted.instances, 1 as series, array[first.modality] as modalities
            from (select distinct on (film.study_uid, film.series_uid) """ + COLUMNS + FILTERED + """
                    order by film.study_uid, film.series_uid, film.recorded_at) first
                cross join lateral (select count(*) as instances from film
                    where site_id = :site and study_uid = first.study_uid and series_uid = first.series_uid
                        and state <> 'KEPT_ASIDE') counted
            order by first.study_date desc nulls last, first.study_uid, first.series_uid
            limit :limit offset :offset""";

    private static final String STUDIES = """
            select first.*, counted.instances, counted.series, counted.modalities
            from (select distinct on (film.study_uid) """ + COLUMNS + FILTERED + """
                    order by film.study_uid, film.recorded_at) first
                cross join lateral (select count(*) as instances, count(distinct series_uid) as series,
                        array_agg(distinct modality) filter (where modality is not null) as modalities
                    from film
                    where site_id = :site and study_uid = first.study_uid and state <> 'KEPT_ASIDE') counted
            order by first.study_date desc nulls last, first.study_uid
            limit :limit offset :offset""";

    private static final String FILM = "select " + COLUMNS + """
            from film join film_label label on label.film_id = film.id
            where film.id = :film and film.sop_instance_uid is not null""";

    private final JdbcClient jdbc;
    private final AccessLog log;

    InstanceRepository(JdbcClient jdbc, AccessLog log) {
        this.jdbc = jdbc;
        this.log = log;
    }

    /** Instances that belong together, with their first one to speak for them. */
    record Group(Instance first, int instances, int series, List<String> modalities) {}

    @Transactional
    public List<Instance> instances(SiteId site, Query query) {
        var found = asked(INSTANCES, site, query)
                .query(InstanceRepository::instance)
                .list();
        listed(site, found.stream());
        return found;
    }

    @Transactional
    public List<Group> series(SiteId site, Query query) {
        var found = asked(SERIES, site, query).query(InstanceRepository::group).list();
        listed(site, found.stream().map(Group::first));
        return found;
    }

    @Transactional
    public List<Group> studies(SiteId site, Query query) {
        var found = asked(STUDIES, site, query).query(InstanceRepository::group).list();
        listed(site, found.stream().map(Group::first));
        return found;
    }

    /** The film as an archive names it; empty when it does not say how it is named. */
    @Transactional
    public Optional<Instance> find(UUID film) {
        return jdbc.sql(FILM)
                .param("film", film)
                .query(InstanceRepository::instance)
                .optional();
    }

    private void listed(SiteId site, Stream<Instance> found) {
        log.listed(
                "archive search",
                found.map(Instance::child)
                        .filter(Objects::nonNull)
                        .distinct()
                        .map(child -> new ChildRef(site, child))
                        .toList());
    }

    private JdbcClient.StatementSpec asked(String sql, SiteId site, Query query) {
        var modality = query.pattern("Modality");
        return jdbc.sql(sql)
                .param("site", site.value())
                .param("study", query.uids("StudyInstanceUID"))
                .param("series", query.uids("SeriesInstanceUID"))
                .param("instance", query.uids("SOPInstanceUID"))
                .param("sopClass", query.uids("SOPClassUID"))
                .param("from", query.from())
                .param("to", query.to())
                .param("birthDate", query.birthDate())
                .param("accession", query.pattern("AccessionNumber"))
                .param("patientId", query.pattern("PatientID"))
                .param("patientName", query.pattern("PatientName"))
                .param("modality", modality == null ? query.pattern("ModalitiesInStudy") : modality)
                .param("limit", query.limit())
                .param("offset", query.offset());
    }

    private static Group group(ResultSet row, int number) throws SQLException {
        var modalities = row.getArray("modalities");
        return new Group(
                instance(row, number),
                row.getInt("instances"),
                row.getInt("series"),
                modalities == null ? List.of() : known((String[]) modalities.getArray()));
    }

    private static List<String> known(@Nullable String[] modalities) {
        return Arrays.stream(modalities).filter(Objects::nonNull).toList();
    }

    private static Instance instance(ResultSet row, int number) throws SQLException {
        return new Instance(
                row.getObject("id", UUID.class),
                row.getObject("child_id", UUID.class),
                row.getString("sop_class_uid"),
                row.getString("sop_instance_uid"),
                row.getString("study_uid"),
                row.getString("series_uid"),
                row.getString("transfer_syntax_uid"),
                row.getString("modality"),
                row.getObject("study_date", LocalDate.class),
                row.getObject("height", Integer.class),
                row.getObject("width", Integer.class),
                row.getString("patient_name"),
                row.getString("local_number"),
                row.getObject("birth_date", LocalDate.class),
                row.getString("sex"),
                row.getString("accession_number"),
                row.getString("study_description"),
                row.getString("series_description"));
    }
}
