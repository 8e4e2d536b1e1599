package org.espalier.safety;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.espalier.access.AccessLog;
import org.espalier.access.ChildRef;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.Site;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.kit.Texts;
import org.espalier.patient.ChildId;
import org.espalier.stock.Lot;
import org.espalier.stock.Movement;
import org.espalier.stock.ProductKind;
import org.espalier.stock.UseService;
import org.espalier.treatment.ImplantFinding;
import org.espalier.treatment.ImplantId;
import org.espalier.treatment.Procedure;
import org.espalier.treatment.ProcedureId;
import org.espalier.treatment.Tether;
import org.espalier.treatment.Treatment;
import org.espalier.treatment.TreatmentService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What was found broken in a child becomes a report with its lot, as far as the stock knows it. */
@Service
@Transactional
public class IncidentService {

    private final JdbcIncidentRepository incidents;
    private final TreatmentService treatments;
    private final UseService uses;
    private final SiteService sites;
    private final CurrentStaff currentStaff;
    private final AccessLog log;
    private final Clock clock;

    IncidentService(
            JdbcIncidentRepository incidents,
            TreatmentService treatments,
            UseService uses,
            SiteService sites,
            CurrentStaff currentStaff,
            AccessLog log,
            Clock clock) {
        this.incidents = incidents;
        this.treatments = treatments;
        this.uses = uses;
        this.sites = sites;
        this.log = log;
        this.currentStaff = currentStaff;
        this.clock = clock;
    }

    /** Everything that was found broken in the child, the first first. */
    public List<BrokenPart> broken(ChildId child) {
        var treatment = treatments.of(child);
        var reported = incidents.of(child);
        return treatment.tethers().stream()
                .flatMap(tether -> tether.findings().stream()
                        .filter(finding -> finding.seen() == ImplantFinding.Seen.BROKEN)
                        .map(finding -> broken(treatment, tether, finding, reported)))
                .toList();
    }

    /** What was seen broken in children in the caller's care and not reported, the longest ago first. */
    public List<UnreportedBreak> unreported() {
        var breaks = incidents.unreported(treats());
        log.listed(
                "broken implants",
                breaks.stream()
                        .map(one -> new ChildRef(one.site(), one.child().value()))
                        .toList());
        return breaks;
    }

    /** Reports of the caller's hospitals, the latest first; they name nobody. */
    public List<DeviceIncident> all() {
        return incidents.of(treats());
    }

    /** A report by its number. */
    public Optional<DeviceIncident> find(UUID id) {
        return incidents.find(id);
    }

    /** Reports of the child, the latest first. */
    public List<DeviceIncident> of(ChildId child) {
        return incidents.of(child);
    }

    /**
     * Reports what was found broken.
     *
     * @param what what was seen and what was done, without who the child is
     * @return false when it was reported before
     */
    public boolean report(ChildId child, UUID id, ImplantFinding finding, String what) {
        var treatment = treatments.of(child);
        return broken(child).stream()
                .filter(one -> one.finding().equals(finding))
                .findFirst()
                .map(one -> incidents.add(
                        id, treatment.site(), child, one, what.strip(), currentStaff.id(), clock.instant()))
                .orElse(false);
    }

    private List<SiteId> treats() {
        return sites.mine().stream()
                .map(Site::id)
                .filter(site -> currentStaff.has(Role.SURGEON, site) || currentStaff.has(Role.NURSE, site))
                .toList();
    }

    private BrokenPart broken(
            Treatment treatment, Tether tether, ImplantFinding finding, List<DeviceIncident> reported) {
        var used = treatment.procedures().stream()
                .filter(procedure -> putIn(procedure, finding.implant()))
                .map(procedure -> first(treatment, procedure))
                .distinct()
                .flatMap(procedure -> uses.usedFor(procedure.value()).stream())
                .filter(movement -> isOfPart(movement, finding.part()))
                .toList();
        boolean known = reported.stream()
                .anyMatch(one -> one.implant().equals(finding.implant())
                        && one.part() == finding.part()
                        && one.seenOn().equals(finding.on()));
        return new BrokenPart(finding, product(used, tether), lots(used), known);
    }

    /** The stock keeps what an operation took under its first record, whatever came in its place. */
    private static ProcedureId first(Treatment treatment, Procedure procedure) {
        return procedure
                .supersedes()
                .flatMap(earlier -> treatment.procedures().stream()
                        .filter(one -> one.id().equals(earlier))
                        .findFirst())
                .map(earlier -> first(treatment, earlier))
                .orElse(procedure.id());
    }

    private static boolean putIn(Procedure procedure, ImplantId implant) {
        return procedure.data().stream()
                .flatMap(data -> data.acts().stream())
                .anyMatch(act -> implant.equals(act.implant()));
    }

    private static boolean isOfPart(Movement movement, ImplantFinding.Part part) {
        boolean screw = movement.product().data().kind() == ProductKind.SCREW;
        return screw == (part != ImplantFinding.Part.BODY);
    }

    private static String product(List<Movement> used, Tether tether) {
        return used.isEmpty()
                ? tether.what()
                : used.stream()
                        .map(movement -> movement.product().data().name() + " · "
                                + movement.product().data().reference())
                        .distinct()
                        .limit(3)
                        .collect(Collectors.joining("; "));
    }

    private static String lots(List<Movement> used) {
        var lots = used.stream()
                .flatMap(movement -> movement.lots().stream())
                .map(Lot::number)
                .distinct()
                .toList();
        return switch (lots.size()) {
            case 0 -> Texts.text("safety.lot-not-known");
            case 1 -> lots.getFirst();
            default -> Texts.text("safety.one-of", String.join(", ", lots.subList(0, Math.min(lots.size(), 8))));
        };
    }
}
