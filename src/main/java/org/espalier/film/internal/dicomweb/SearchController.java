package org.espalier.film.internal.dicomweb;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.espalier.film.internal.dicom.Tag;
import org.espalier.film.internal.dicom.Vr;
import org.espalier.film.internal.dicomweb.InstanceRepository.Group;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** QIDO-RS (PS3.18 section 10.6): studies, series and instances of the archive's own site. */
@RestController
class SearchController {

    private static final Tag INSTANCE_AVAILABILITY = new Tag(0x00080056);
    private static final Tag MODALITIES_IN_STUDY = new Tag(0x00080061);
    private static final Tag RETRIEVE_URL = new Tag(0x00081190);
    private static final Tag SERIES_IN_STUDY = new Tag(0x00201206);
    private static final Tag INSTANCES_IN_STUDY = new Tag(0x00201208);
    private static final Tag INSTANCES_IN_SERIES = new Tag(0x00201209);

    private final InstanceRepository instances;
    private final ArchiveSite site;

    SearchController(InstanceRepository instances, ArchiveSite site) {
        this.instances = instances;
        this.site = site;
    }

    @GetMapping("/dicom-web/studies")
    ResponseEntity<List<Map<String, Object>>> studies(HttpServletRequest request) {
        var query = Query.of(request.getParameterMap());
        return answer(query, instances.studies(site.get(), query), SearchController::study);
    }

    @GetMapping({"/dicom-web/series", "/dicom-web/studies/{study}/series"})
    ResponseEntity<List<Map<String, Object>>> series(
            @PathVariable(required = false) @Nullable String study, HttpServletRequest request) {
        var query = Query.of(request.getParameterMap()).within(study, null);
        return answer(query, instances.series(site.get(), query), SearchController::series);
    }

    @GetMapping({
        "/dicom-web/instances",
        "/dicom-web/studies/{study}/instances",
        "/dicom-web/studies/{study}/series/{series}/instances"
    })
    ResponseEntity<List<Map<String, Object>>> instances(
            @PathVariable(required = false) @Nullable String study,
            @PathVariable(required = false) @Nullable String series,
            HttpServletRequest request) {
        var query = Query.of(request.getParameterMap()).within(study, series);
        return answer(query, instances.instances(site.get(), query), SearchController::instance);
    }

    private static <T> ResponseEntity<List<Map<String, Object>>> answer(
            Query query, List<T> found, Function<T, DicomJson> form) {
        var answer = ResponseEntity.status(found.isEmpty() ? HttpStatus.NO_CONTENT : HttpStatus.OK)
                .contentType(DicomTypes.JSON);
        if (!query.ignored().isEmpty()) {
            answer.header(HttpHeaders.WARNING, "299 - \"Not searched by: some of the given attributes\"");
        }
        return answer.body(found.stream().map(form).map(DicomJson::attributes).toList());
    }

    private static DicomJson study(Group study) {
        return ofStudy(study.first())
                .add(MODALITIES_IN_STUDY, Vr.CS, study.modalities())
                .add(RETRIEVE_URL, Vr.UR, Addresses.study(study.first().study()))
                .add(SERIES_IN_STUDY, Vr.IS, study.series())
                .add(INSTANCES_IN_STUDY, Vr.IS, study.instances());
    }

    private static DicomJson series(Group series) {
        var first = series.first();
        return ofStudy(first)
                .add(Tag.MODALITY, Vr.CS, first.modality())
                .add(Tag.SERIES_DESCRIPTION, Vr.LO, first.seriesDescription())
                .add(Tag.SERIES_INSTANCE_UID, Vr.UI, first.series())
                .add(RETRIEVE_URL, Vr.UR, Addresses.series(first.study(), first.series()))
                .add(INSTANCES_IN_SERIES, Vr.IS, series.instances());
    }

    private static DicomJson instance(Instance instance) {
        return ofStudy(instance)
                .add(Tag.SOP_CLASS_UID, Vr.UI, instance.sopClass())
                .add(Tag.SOP_INSTANCE_UID, Vr.UI, instance.sopInstance())
                .add(Tag.MODALITY, Vr.CS, instance.modality())
                .add(Tag.SERIES_DESCRIPTION, Vr.LO, instance.seriesDescription())
                .add(Tag.SERIES_INSTANCE_UID, Vr.UI, instance.series())
                .add(Tag.ROWS, Vr.US, instance.rows())
                .add(Tag.COLUMNS, Vr.US, instance.columns())
                .add(RETRIEVE_URL, Vr.UR, Addresses.instance(instance));
    }

    private static DicomJson ofStudy(Instance instance) {
        return new DicomJson()
                .add(INSTANCE_AVAILABILITY, Vr.CS, "ONLINE")
                .addDate(Tag.STUDY_DATE, instance.studyDate())
                .add(Tag.ACCESSION_NUMBER, Vr.SH, instance.accessionNumber())
                .add(Tag.STUDY_DESCRIPTION, Vr.LO, instance.studyDescription())
                .addName(Tag.PATIENT_NAME, instance.patientName())
                .add(Tag.PATIENT_ID, Vr.LO, instance.patientId())
                .addDate(Tag.PATIENT_BIRTH_DATE, instance.birthDate())
                .add(Tag.PATIENT_SEX, Vr.CS, instance.sex())
                .add(Tag.STUDY_INSTANCE_UID, Vr.UI, instance.study());
    }

    @ExceptionHandler
    ProblemDetail notOfItsForm(IllegalArgumentException refused) {
        return ProblemDetail.forStatusAndDetail(HttpStatus.BAD_REQUEST, String.valueOf(refused.getMessage()));
    }
}
