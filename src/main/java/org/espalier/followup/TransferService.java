package org.espalier.followup;

import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.AccessLog;
import org.espalier.access.ChildRef;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Site;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.kit.Who;
import org.espalier.patient.Child;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.platform.Ids;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Children whose family moved pass to another hospital of the network with their record. The old hospital keeps care,
 * visit and recall until the new one accepts.
 */
@Service
@Transactional
public class TransferService {

    private static final Duration SHOWN = Duration.ofDays(183);

    private final JdbcTransferRepository transfers;
    private final PatientService patients;
    private final SiteService sites;
    private final CurrentStaff currentStaff;
    private final AccessLog log;
    private final Ids ids;
    private final Clock clock;

    TransferService(
            JdbcTransferRepository transfers,
            PatientService patients,
            SiteService sites,
            CurrentStaff currentStaff,
            AccessLog log,
            Ids ids,
            Clock clock) {
        this.transfers = transfers;
        this.patients = patients;
        this.sites = sites;
        this.currentStaff = currentStaff;
        this.log = log;
        this.ids = ids;
        this.clock = clock;
    }

    /** Asks another hospital to take the child over. It is told name and day of birth, to know the family by. */
    public Transfer ask(ChildId id, SiteId to, String why) {
        var child =
                patients.open(id, "transfer").orElseThrow(() -> new IllegalArgumentException("no such child: " + id));
        if (!(child.who() instanceof Who.Named named)) {
            throw new IllegalArgumentException("only who knows the child by name can pass it on: " + id);
        }
        var transfer = new Transfer(
                ids.next(),
                id,
                child.site(),
                to,
                named.familyName() + (named.givenName() == null ? "" : ", " + named.givenName()),
                named.birthDate(),
                why,
                Transfer.State.ASKED,
                sites.today(child.site()),
                Optional.empty());
        transfers.ask(transfer, currentStaff.find().orElse(null), clock.instant());
        return transfer;
    }

    /** Those not answered yet from or to the caller's hospitals, the oldest first. */
    public List<Transfer> open() {
        return transfers.open(sites.mine().stream().map(Site::id).toList());
    }

    /** Children that other hospitals took over from the caller's in the last half year, the latest first. */
    public List<Transfer> handedOver() {
        var mine = sites.mine().stream().map(Site::id).toList();
        var handed = transfers.handedOver(mine, clock.instant().minus(SHOWN));
        log.listed(
                "handed over",
                handed.stream()
                        .map(one -> new ChildRef(one.from(), one.child().value()))
                        .toList());
        return handed;
    }

    /** The one of the child that is not answered yet. */
    public Optional<Transfer> of(ChildId child) {
        return transfers.open(child);
    }

    /** Takes the child over with its whole record; empty when it is not there to be taken any more. */
    public Optional<Child> accept(UUID transfer) {
        return transfers.accept(transfer, clock.instant()).flatMap(child -> patients.open(child, "transfer"));
    }

    /** Declines to take the child over, and why. */
    public boolean decline(UUID transfer, String why) {
        return answer(transfer, Transfer.State.DECLINED, why);
    }

    /** Takes the question back. */
    public boolean withdraw(UUID transfer, String why) {
        return answer(transfer, Transfer.State.WITHDRAWN, why);
    }

    private boolean answer(UUID transfer, Transfer.State state, String why) {
        return transfers.answer(transfer, state, why, currentStaff.find().orElse(null), clock.instant());
    }
}
