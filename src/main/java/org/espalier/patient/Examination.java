package org.espalier.patient;

import java.util.Optional;

/**
 * All that was measured and found on a child.
 *
 * @param child empty when there is none that the reader may see
 */
public record Examination(
        Optional<Child> child, History<BodySize> sizes, History<BoneAge> boneAges, History<Diagnosis> diagnoses) {}
