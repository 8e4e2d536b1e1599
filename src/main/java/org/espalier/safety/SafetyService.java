package org.espalier.safety;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;
import org.espalier.access.AccessLog;
import org.espalier.access.ChildRef;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.Site;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.patient.ChildId;
import org.espalier.stock.LotId;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * One action for a lot: everywhere to quarantine, who carries it found, and a notice that closes when each of them was
 * told. The whole network sees how far each hospital is, in numbers; the children are seen by those who have care of
 * them.
 */
@Service
@Transactional
public class SafetyService {

    private final JdbcSafetyRepository notices;
    private final SiteService sites;
    private final CurrentStaff currentStaff;
    private final AccessLog log;
    private final Clock clock;

    SafetyService(
            JdbcSafetyRepository notices, SiteService sites, CurrentStaff currentStaff, AccessLog log, Clock clock) {
        this.notices = notices;
        this.sites = sites;
        this.currentStaff = currentStaff;
        this.log = log;
        this.clock = clock;
    }

    /**
     * Opens a notice for a lot.
     *
     * @param id made by whoever asks
     * @param site where the caller works
     * @param source whose notice it is, and its number
     * @return how many pieces went to quarantine; empty when the lot has an open notice already
     */
    public OptionalInt open(UUID id, LotId lot, SiteId site, String source, String why) {
        return notices.open(id, lot, site, source.strip(), why.strip(), clock.instant());
    }

    /** Looks again for what was on its way or written down late; how many pieces went to quarantine now. */
    public OptionalInt lookAgain(UUID notice) {
        return notices.renew(notice, clock.instant());
    }

    /** Notices of the network, those open first. */
    public List<SafetyNotice> all() {
        return notices.all();
    }

    public Optional<SafetyNotice> notice(UUID id) {
        return notices.find(id);
    }

    /** How far each hospital is. */
    public List<SiteProgress> progress(UUID notice) {
        return notices.progress(notice);
    }

    /** The children in the caller's care who carry the lot, may, or did; those still to be told first. */
    public List<Carrier> carriers(UUID notice) {
        var carriers = notices.carriers(notice, treats());
        log.listed(
                "safety notice",
                carriers.stream()
                        .map(one -> new ChildRef(one.site(), one.child().value()))
                        .toList());
        return carriers;
    }

    /**
     * A family was told; the notice closes with the last of them.
     *
     * @param how in a few words: by whom, what was agreed
     * @return false when they were told before, or need not be
     */
    public boolean told(UUID notice, ChildId child, String how) {
        boolean told = notices.tell(notice, child, how.strip(), currentStaff.id(), clock.instant());
        if (told) {
            notices.close(notice, clock.instant());
        }
        return told;
    }

    /** Closes a notice; false when somebody is still to be told. */
    public boolean close(UUID notice) {
        return notices.close(notice, clock.instant());
    }

    private List<SiteId> treats() {
        return sites.mine().stream()
                .map(Site::id)
                .filter(site -> currentStaff.has(Role.SURGEON, site) || currentStaff.has(Role.NURSE, site))
                .toList();
    }
}
