package org.espalier.access;

import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.espalier.platform.Ids;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * A child of another hospital in an emergency: a surgeon who knows its number and day of birth reads its record for 24
 * hours. Its hospital is told at once; its privacy officer reviews each case, and one that was not justified ends with
 * that.
 */
@Service
@Transactional
public class EmergencyService {

    /** The fewest signs of a reason. */
    public static final int SHORTEST_REASON = 10;

    private static final Duration TOLD_FOR = Duration.ofDays(14);

    private final JdbcEmergencyRepository emergencies;
    private final CurrentStaff currentStaff;
    private final AccessLog log;
    private final ApplicationEventPublisher events;
    private final Ids ids;
    private final Clock clock;

    EmergencyService(
            JdbcEmergencyRepository emergencies,
            CurrentStaff currentStaff,
            AccessLog log,
            ApplicationEventPublisher events,
            Ids ids,
            Clock clock) {
        this.emergencies = emergencies;
        this.currentStaff = currentStaff;
        this.log = log;
        this.events = events;
        this.ids = ids;
        this.clock = clock;
    }

    /** Opens the child of the number and day of birth at the hospital to the caller, and writes down every question. */
    public EmergencyAnswer take(SiteId at, String number, LocalDate birthDate, String reason) {
        if (reason.strip().length() < SHORTEST_REASON) {
            throw new IllegalArgumentException(
                    "no reason for emergency access: " + reason.strip().length() + " signs");
        }
        var now = clock.instant().truncatedTo(ChronoUnit.MICROS);
        var answer = emergencies.take(ids.next(), at, number.strip(), birthDate, reason.strip(), now);
        switch (answer) {
            case EmergencyAnswer.Taken(var child, var until) -> {
                log.emergency(at, List.of(child), "emergency access taken");
                events.publishEvent(new EmergencyTaken(at));
            }
            case EmergencyAnswer.NotFound none -> log.emergency(at, List.of(), "emergency access: nobody found");
            case EmergencyAnswer.Wait wait -> log.emergency(at, List.of(), "emergency access: asked too often");
        }
        return answer;
    }

    /** The caller's own that have not ended, the newest first. */
    public List<EmergencyAccess> mine() {
        return emergencies.of(currentStaff.id(), clock.instant());
    }

    /**
     * Those at the hospitals where the caller treats or watches over privacy: not reviewed yet, or of the last 14 days.
     */
    public List<EmergencyAccess> told() {
        return emergencies.at(watched(), clock.instant().minus(TOLD_FOR));
    }

    /**
     * Says whether it was justified; if not, it ends now.
     *
     * @return false when it is not there to be reviewed, or was reviewed before
     */
    public boolean review(UUID emergency, boolean justified, String note) {
        var found = emergencies.at(officeOf(), clock.instant().minus(TOLD_FOR)).stream()
                .filter(one -> one.id().equals(emergency) && one.review() == null)
                .findFirst();
        found.ifPresent(one -> {
            emergencies.review(ids.next(), one, justified, note.strip(), currentStaff.id(), clock.instant());
            log.reviewed(new ChildRef(one.site(), one.child()), one.staff());
        });
        return found.isPresent();
    }

    private List<SiteId> officeOf() {
        return sitesAs(Stream.of(Role.PRIVACY_OFFICER));
    }

    private List<SiteId> watched() {
        return sitesAs(Stream.of(Role.PRIVACY_OFFICER, Role.SURGEON, Role.NURSE));
    }

    private List<SiteId> sitesAs(Stream<Role> roles) {
        return roles.flatMap(role -> currentStaff.standing().map(one -> one.sitesAs(role)).orElse(Set.of()).stream())
                .distinct()
                .toList();
    }
}
