package org.espalier.treatment;

import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.SecondPerson;
import org.espalier.access.SiteId;
import org.espalier.access.StaffId;
import org.espalier.patient.ChildId;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Deliberate reversals: a surgeon asks with a reason, and a second person consents, under their own sign-in or by their
 * own password. The database takes a consent only from the person who gives it, and never from the one who asked.
 */
@Service
public class ReversalService {

    /** What came of asking for the second person's word. */
    public enum Consent {
        GIVEN,
        /** Name or password is wrong. */
        WRONG,
        /** Too many wrong ones: wait before the next. */
        WAIT,
        /** It must be another person than the one who asked. */
        SAME_PERSON,
        /** A surgeon or nurse of the hospital consents, nobody else. */
        NOT_TREATING
    }

    private final JdbcReversalRepository reversals;
    private final JdbcProcedureRepository procedures;
    private final SecondPerson secondPerson;
    private final CurrentStaff staff;
    private final TransactionTemplate transactions;
    private final Clock clock;

    ReversalService(
            JdbcReversalRepository reversals,
            JdbcProcedureRepository procedures,
            SecondPerson secondPerson,
            CurrentStaff staff,
            TransactionTemplate transactions,
            Clock clock) {
        this.reversals = reversals;
        this.procedures = procedures;
        this.secondPerson = secondPerson;
        this.staff = staff;
        this.transactions = transactions;
        this.clock = clock;
    }

    /** Asks for a reversal. Sent again with the same id it is asked once. */
    @Transactional
    public Reversal ask(ChildId child, UUID id, PhysisKey physis, PlateSide plateSide, String because) {
        var why = Written.required(because, TreatmentFact.REMARK_LENGTH);
        var now = clock.instant().truncatedTo(ChronoUnit.MICROS);
        reversals.ask(child, id, physis, plateSide, why, staff.id(), now);
        return find(child, id).orElseThrow(() -> new IllegalArgumentException("no such child: " + child));
    }

    /** Consents under one's own sign-in. */
    @Transactional
    public Consent consent(ChildId child, UUID reversal) {
        return consent(child, reversal, staff.id(), false);
    }

    /** Takes the consent of a second person who stands beside, by their own name and password. */
    @Transactional(propagation = Propagation.NOT_SUPPORTED)
    public Consent consentBeside(ChildId child, UUID reversal, String login, String password) {
        transactions.executeWithoutResult(status -> site(child));
        return switch (secondPerson.confirm(login, password)) {
            case SecondPerson.Answer.Wrong() -> Consent.WRONG;
            case SecondPerson.Answer.Wait() -> Consent.WAIT;
            case SecondPerson.Answer.Confirmed(var second) ->
                Callers.callAs(new Caller.Staff(second.value()), () -> asSecond(child, reversal, second));
        };
    }

    /** A person who may not see the child is told no more than that. */
    private Consent asSecond(ChildId child, UUID reversal, StaffId second) {
        var consent = transactions.execute(status -> procedures
                .site(child)
                .map(site -> consent(child, reversal, second, true))
                .orElse(Consent.NOT_TREATING));
        return Optional.ofNullable(consent).orElse(Consent.NOT_TREATING);
    }

    private SiteId site(ChildId child) {
        return procedures.site(child).orElseThrow(() -> new IllegalArgumentException("no such child: " + child));
    }

    private Consent consent(ChildId child, UUID id, StaffId second, boolean byPassword) {
        var site = site(child);
        if (!staff.has(Role.SURGEON, site) && !staff.has(Role.NURSE, site)) {
            return Consent.NOT_TREATING;
        }
        var reversal = find(child, id).orElseThrow(() -> new IllegalArgumentException("no such reversal: " + id));
        if (reversal.askedBy().equals(second)) {
            return Consent.SAME_PERSON;
        }
        reversals.consent(child, id, second, clock.instant().truncatedTo(ChronoUnit.MICROS), byPassword);
        return Consent.GIVEN;
    }

    private Optional<Reversal> find(ChildId child, UUID id) {
        return reversals.all(child).stream().filter(one -> one.id().equals(id)).findFirst();
    }
}
