package org.espalier.patient;

import java.time.LocalDate;

/** What is measured or found on a child on a day. */
public sealed interface Finding
        permits BodySize,
                BoneAge,
                Diagnosis,
                ClinicalExamination,
                LabResult,
                BoneDisease,
                ImagingReport,
                TibiaVaraStage {

    /** The day it was measured or found. */
    LocalDate on();
}
