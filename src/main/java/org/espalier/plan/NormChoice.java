package org.espalier.plan;

import java.util.List;
import java.util.Optional;
import org.espalier.science.alignment.NormCourse;
import org.espalier.science.alignment.NormForAge;

/** The study, with its method, by whose norms the course of an age is drawn; nothing is chosen beforehand. */
public record NormChoice(NormCourse course) {

    /** Its name in the address of a sheet. */
    public static final String NAME = "norm";

    /** Every one there is, method by method. */
    public static List<NormChoice> all() {
        return NormForAge.courses().stream().map(NormChoice::new).toList();
    }

    static Optional<NormChoice> of(SheetInputs inputs) {
        return inputs.text(NAME).flatMap(NormCourse::ofCode).map(NormChoice::new);
    }

    /** As the address holds it. */
    public String code() {
        return course.code();
    }

    /** Method, what is measured, and the study. */
    public String words() {
        return NormText.course(course);
    }
}
