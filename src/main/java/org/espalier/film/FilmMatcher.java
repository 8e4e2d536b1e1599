package org.espalier.film;

import java.util.Optional;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.springframework.stereotype.Component;

/** Gives a film to the child whose local number and birth date it carries, both exactly; every other film waits. */
@Component
class FilmMatcher {

    private final PatientService patients;
    private final FilmAssignmentRepository assignments;

    FilmMatcher(PatientService patients, FilmAssignmentRepository assignments) {
        this.patients = patients;
        this.assignments = assignments;
    }

    Optional<ChildId> match(Arrival arrival) {
        var label = arrival.tags().label();
        var number = label.localNumber();
        if (number == null || label.birthDate() == null) {
            return Optional.empty();
        }
        var child = patients.match(arrival.site(), number, label.birthDate());
        child.ifPresent(match -> assignments.addFirst(arrival, match));
        return child;
    }
}
