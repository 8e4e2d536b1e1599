package org.espalier.access;

import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.espalier.platform.Ids;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/**
 * Writes down who looked at whose record. A look is written in the transaction that reads what is shown, so that
 * neither stands without the other; such a transaction must not be read-only.
 */
@Component
public class AccessLog {

    private final JdbcAccessLogRepository entries;
    private final CurrentStaff currentStaff;
    private final Ids ids;
    private final Clock clock;

    AccessLog(JdbcAccessLogRepository entries, CurrentStaff currentStaff, Ids ids, Clock clock) {
        this.entries = entries;
        this.currentStaff = currentStaff;
        this.ids = ids;
        this.clock = clock;
    }

    /**
     * A child's record was opened; one entry a transaction and child, whatever is read of it there.
     *
     * @param subject what of it, in a word that names nobody: {@code course}, {@code identity}
     */
    @Transactional
    public void opened(ChildRef child, String subject) {
        if (isFirstLook(child)) {
            add(AccessDeed.OPENED, child.site(), subject, List.of(child.child()), null);
        }
    }

    /**
     * A list of children was shown; one entry a site, with the children of that site.
     *
     * @param subject which list, in a word that names nobody
     */
    @Transactional
    public void listed(String subject, Collection<ChildRef> shown) {
        var bySite = shown.stream()
                .collect(Collectors.groupingBy(
                        ChildRef::site, Collectors.mapping(ChildRef::child, Collectors.toList())));
        bySite.forEach((site, children) -> add(AccessDeed.LISTED, site, subject, children, null));
    }

    /** A film, or a part of it, was shown; one entry a person, film and hour. */
    @Transactional
    public void film(ChildRef child, UUID film) {
        add(AccessDeed.FILM, child.site(), "film", List.of(child.child()), film);
    }

    /**
     * The caller was refused. Stands although the refused work is rolled back; readable at every site the caller works
     * at.
     *
     * @param subject what was refused: a service method, request or route, without what it was asked about
     */
    @Transactional(propagation = Propagation.REQUIRES_NEW)
    public void denied(String subject) {
        if (currentStaff.standing().isPresent()) {
            var sites = entries.sitesOfCaller();
            sites.forEach(site -> add(AccessDeed.DENIED, site, subject, List.of(), null));
            if (sites.isEmpty()) {
                add(AccessDeed.DENIED, null, subject, List.of(), null);
            }
        }
    }

    /**
     * The operator changed something.
     *
     * @param subject what, in words that name nobody
     * @param site the site it touches; null for the network
     * @param about whom it touches; null for nobody
     */
    @Transactional
    void managed(String subject, @Nullable SiteId site, @Nullable StaffId about) {
        add(AccessDeed.MANAGED, site, subject, List.of(), null, about);
    }

    /**
     * Somebody of another hospital asked for a child in an emergency; the hospital asked about reads it.
     *
     * @param children the one that was opened; empty when nobody was found
     */
    @Transactional
    void emergency(SiteId site, List<UUID> children, String subject) {
        add(AccessDeed.EMERGENCY, site, subject, children, null);
    }

    /** A privacy officer reviewed what somebody did with a child. */
    @Transactional
    void reviewed(ChildRef child, StaffId about) {
        add(AccessDeed.REVIEWED, child.site(), "emergency access", List.of(child.child()), null, about);
    }

    /** Seals all entries whose transactions are over, and says how many. */
    @Transactional
    public long seal() {
        return entries.seal(clock.instant());
    }

    /** Seals what can be sealed, computes every seal again, and keeps what came of it. */
    @Transactional
    public SealCheck checkSeals() {
        seal();
        return entries.check(ids.next(), clock.instant().truncatedTo(ChronoUnit.MICROS));
    }

    /** A child that was opened in this transaction; the note goes with it. */
    private record Look(ChildRef child, Optional<Caller> by) implements TransactionSynchronization {}

    private static boolean isFirstLook(ChildRef child) {
        var look = new Look(child, Callers.current());
        boolean first = !TransactionSynchronizationManager.getSynchronizations().contains(look);
        if (first) {
            TransactionSynchronizationManager.registerSynchronization(look);
        }
        return first;
    }

    private void add(AccessDeed deed, @Nullable SiteId site, String subject, List<UUID> children, @Nullable UUID film) {
        add(deed, site, subject, children, film, null);
    }

    private void add(
            AccessDeed deed,
            @Nullable SiteId site,
            String subject,
            List<UUID> children,
            @Nullable UUID film,
            @Nullable StaffId about) {
        entries.add(new AccessEntry(
                ids.next(),
                clock.instant().truncatedTo(ChronoUnit.MICROS),
                currentStaff.find().orElse(null),
                site,
                deed,
                subject,
                children,
                film,
                about));
    }
}
