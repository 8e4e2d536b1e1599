package org.espalier.interchange;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.espalier.patient.Examination;
import org.espalier.patient.Finding;
import org.espalier.patient.History;

/** The kinds of findings, as the file names them. */
enum FindingKind {
    BODY_SIZE(Examination::sizes),
    BONE_AGE(Examination::boneAges),
    DIAGNOSIS(Examination::diagnoses),
    EXAMINATION(Examination::visits),
    LABORATORY(Examination::labs),
    BONE_DISEASE(Examination::boneDisease),
    IMAGING(Examination::imaging),
    STAGE(Examination::stages);

    static final Map<String, FindingKind> BY_WORDS = Arrays.stream(values())
            .collect(Collectors.toMap(Words::of, kind -> kind, (one, other) -> one, LinkedHashMap::new));

    private final Function<Examination, History<? extends Finding>> history;

    FindingKind(Function<Examination, History<? extends Finding>> history) {
        this.history = history;
    }

    /** Those that stand, by their day. */
    List<? extends Finding> of(Examination examination) {
        return history.apply(examination).findings();
    }
}
