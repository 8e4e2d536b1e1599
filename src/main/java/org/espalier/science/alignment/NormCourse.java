package org.espalier.science.alignment;

import java.util.Optional;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Sex;

/** One quantity over the ages of childhood as one study found it by one method. */
public record NormCourse(NormStudy study, NormQuantity quantity, NormMethod method) {

    /** What the study says of an age; empty where it printed nothing. */
    public Optional<Norm> at(Sex sex, Age age) {
        return NormForAge.of(study, quantity, method, sex, age);
    }

    /** Its name in an address. */
    public String code() {
        return study.code() + "." + method.name() + "." + quantity.name();
    }

    /** The course with this name. */
    public static Optional<NormCourse> ofCode(String code) {
        return NormForAge.courses().stream()
                .filter(course -> course.code().equals(code))
                .findFirst();
    }
}
