package org.espalier.access;

import java.util.Optional;
import java.util.Set;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/** Who asks. Roles are read afresh in each transaction, so that one taken away is gone at the next question. */
@Component
public class CurrentStaff {

    private final JdbcStandingRepository standings;

    CurrentStaff(JdbcStandingRepository standings) {
        this.standings = standings;
    }

    /** The member of staff who asks; empty for a job of the house, and when nobody is signed in. */
    public Optional<StaffId> find() {
        return Callers.current()
                .filter(Caller.Staff.class::isInstance)
                .map(caller -> new StaffId(((Caller.Staff) caller).staff()));
    }

    /**
     * The member of staff who asks.
     *
     * @throws IllegalStateException when a job of the house asks, or nobody
     */
    public StaffId id() {
        return find().orElseThrow(() -> new IllegalStateException("no member of staff asks"));
    }

    /** Their name, as colleagues read it. */
    public String name() {
        return standing().map(Standing::name).orElseThrow(() -> new IllegalStateException("no member of staff asks"));
    }

    /** The sites the caller works at; of a job, the one it works for. */
    public Set<SiteId> sites() {
        return jobSite()
                .map(Set::of)
                .orElseGet(() -> standing().map(Standing::sites).orElse(Set.of()));
    }

    /** Whether the caller holds the role at the site. */
    public boolean has(Role role, SiteId site) {
        return standing().filter(one -> one.holds(role, site)).isPresent();
    }

    /** Whether the caller holds the role at any site. */
    public boolean has(Role role) {
        return standing().filter(one -> one.holds(role)).isPresent();
    }

    /** Whether the caller runs the network: sites, staff and tokens, and no child. */
    public boolean isOperator() {
        return standing().filter(Standing::operator).isPresent();
    }

    Optional<Standing> standing() {
        return find().flatMap(this::standing);
    }

    private Optional<Standing> standing(StaffId staff) {
        if (!TransactionSynchronizationManager.isSynchronizationActive()) {
            return standings.find(staff);
        }
        return readBefore(staff).orElseGet(() -> read(staff)).standing();
    }

    private ReadInTransaction read(StaffId staff) {
        var read = new ReadInTransaction(staff, standings.find(staff));
        TransactionSynchronizationManager.registerSynchronization(read);
        return read;
    }

    private static Optional<ReadInTransaction> readBefore(StaffId staff) {
        return TransactionSynchronizationManager.getSynchronizations().stream()
                .filter(ReadInTransaction.class::isInstance)
                .map(ReadInTransaction.class::cast)
                .filter(read -> read.staff().equals(staff))
                .findFirst();
    }

    /** A standing as one transaction read it; it goes with the transaction, and another does not see it. */
    private record ReadInTransaction(StaffId staff, Optional<Standing> standing)
            implements TransactionSynchronization {}

    private static Optional<SiteId> jobSite() {
        return Callers.current()
                .filter(Caller.SystemAtSite.class::isInstance)
                .map(caller -> new SiteId(((Caller.SystemAtSite) caller).site()));
    }
}
