package org.espalier.followup;

import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Site;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.kit.Who;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.platform.Ids;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Children cared for by two hospitals of the network. The one that has care asks; once the other accepts, its surgeons,
 * nurses and radiographers read the record with the name and change nothing in it, until either hospital ends it or the
 * child passes on.
 */
@Service
@Transactional
public class SharedCareService {

    private final JdbcSharedCareRepository shared;
    private final PatientService patients;
    private final SiteService sites;
    private final CurrentStaff currentStaff;
    private final Ids ids;
    private final Clock clock;

    SharedCareService(
            JdbcSharedCareRepository shared,
            PatientService patients,
            SiteService sites,
            CurrentStaff currentStaff,
            Ids ids,
            Clock clock) {
        this.shared = shared;
        this.patients = patients;
        this.sites = sites;
        this.currentStaff = currentStaff;
        this.ids = ids;
        this.clock = clock;
    }

    /** Asks another hospital to share the care. It is told name and day of birth, to know the family by. */
    public SharedCare ask(ChildId id, SiteId with, String why) {
        var child = patients.open(id, "shared care")
                .orElseThrow(() -> new IllegalArgumentException("no such child: " + id));
        if (!(child.who() instanceof Who.Named named)) {
            throw new IllegalArgumentException("only who knows the child by name can share its care: " + id);
        }
        var asked = new SharedCare(
                ids.next(),
                id,
                child.site(),
                with,
                named.familyName() + (named.givenName() == null ? "" : ", " + named.givenName()),
                named.birthDate(),
                why,
                SharedCare.State.ASKED,
                sites.today(child.site()));
        shared.ask(asked, currentStaff.id(), clock.instant());
        return asked;
    }

    /** Those that wait for an answer and those that run, from or with the caller's hospitals. */
    public List<SharedCare> open() {
        return shared.open(sites.mine().stream().map(Site::id).toList());
    }

    /** Those of the child that wait for an answer or run. */
    public List<SharedCare> of(ChildId child) {
        return shared.open(child);
    }

    /** Accepts for the hospital that was asked. */
    public boolean accept(UUID id) {
        return shared.answer(id, true, "", currentStaff.id(), clock.instant());
    }

    /** Declines for the hospital that was asked, and why. */
    public boolean decline(UUID id, String why) {
        return shared.answer(id, false, why, currentStaff.id(), clock.instant());
    }

    /** Ends it for either hospital, or takes back a question that has no answer yet. */
    public boolean end(UUID id, String why) {
        return shared.end(id, why, currentStaff.id(), clock.instant());
    }
}
