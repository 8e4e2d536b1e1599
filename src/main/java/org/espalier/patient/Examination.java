package org.espalier.patient;

/** All that was measured and found on a child. */
public record Examination(History<BodySize> sizes, History<BoneAge> boneAges, History<Diagnosis> diagnoses) {}
