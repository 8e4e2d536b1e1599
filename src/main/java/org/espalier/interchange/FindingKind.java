package org.espalier.interchange;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.espalier.patient.BodySize;
import org.espalier.patient.BoneAge;
import org.espalier.patient.BoneDisease;
import org.espalier.patient.ClinicalExamination;
import org.espalier.patient.Diagnosis;
import org.espalier.patient.Examination;
import org.espalier.patient.Finding;
import org.espalier.patient.History;
import org.espalier.patient.ImagingReport;
import org.espalier.patient.LabResult;
import org.espalier.patient.TibiaVaraStage;

/** The kinds of findings, as the file names them. */
enum FindingKind {
    BODY_SIZE(BodySize.class, Examination::sizes),
    BONE_AGE(BoneAge.class, Examination::boneAges),
    DIAGNOSIS(Diagnosis.class, Examination::diagnoses),
    EXAMINATION(ClinicalExamination.class, Examination::visits),
    LABORATORY(LabResult.class, Examination::labs),
    BONE_DISEASE(BoneDisease.class, Examination::boneDisease),
    IMAGING(ImagingReport.class, Examination::imaging),
    STAGE(TibiaVaraStage.class, Examination::stages);

    static final Map<String, FindingKind> BY_WORDS = Arrays.stream(values())
            .collect(Collectors.toMap(Words::of, kind -> kind, (one, other) -> one, LinkedHashMap::new));

    private final Class<? extends Finding> type;
    private final Function<Examination, History<? extends Finding>> history;

    FindingKind(Class<? extends Finding> type, Function<Examination, History<? extends Finding>> history) {
        this.type = type;
        this.history = history;
    }

    Class<? extends Finding> type() {
        return type;
    }

    /** Those that stand, by their day. */
    List<? extends Finding> of(Examination examination) {
        return history.apply(examination).findings();
    }
}
