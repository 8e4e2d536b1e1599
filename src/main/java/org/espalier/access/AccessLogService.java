package org.espalier.access;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The access log for whoever watches over it: the privacy officer of a site, and the operator for what has no site. */
@Service
public class AccessLogService {

    private static final int MOST_LINES = 300;
    private static final int MOST_LOOKS = 1_000;

    private final JdbcAccessLogRepository entries;
    private final CurrentStaff currentStaff;
    private final AccessLog log;

    AccessLogService(JdbcAccessLogRepository entries, CurrentStaff currentStaff, AccessLog log) {
        this.entries = entries;
        this.currentStaff = currentStaff;
        this.log = log;
    }

    /** What was done last at the officer's sites, and with no site for the operator. */
    @Transactional
    public AccessReport recent() {
        return report(
                currentStaff.isOperator() ? entries.ofNoSite(MOST_LINES) : entries.recent(watched(), null, MOST_LINES));
    }

    /** Who saw the child with the local number; empty when none at the officer's sites has it. */
    @Transactional
    public Optional<AccessReport> ofChild(String number) {
        return entries.childrenOfNumber(number.strip()).stream()
                .findFirst()
                .map(child -> report(entries.recent(List.of(child.site()), child.child(), MOST_LINES)));
    }

    /** Every look at the child's record; empty for whoever has no business to know, and that is not written down. */
    @Transactional
    public Optional<WhoSaw> whoSaw(UUID child) {
        var looks = entries.whoSaw(child, MOST_LOOKS + 1);
        if (looks.isEmpty()) {
            return Optional.empty();
        }
        log.opened(new ChildRef(looks.getFirst().caredAt(), child), "who saw");
        boolean complete = looks.size() <= MOST_LOOKS;
        return Optional.of(new WhoSaw(complete ? looks : looks.subList(0, MOST_LOOKS), complete));
    }

    /** Seals what can be sealed, checks all seals, and says the first that does not hold. */
    @Transactional
    public SealCheck check() {
        return log.checkSeals();
    }

    /** What the last check found, the nightly one too; empty before the first. */
    @Transactional
    public Optional<SealCheck> lastCheck() {
        return entries.lastCheck();
    }

    /** Looking at who looked is a look, too. */
    private AccessReport report(List<AccessLine> lines) {
        var shown = lines.stream().flatMap(AccessLogService::children).collect(Collectors.toSet());
        log.listed("access log", shown);
        var numbers = entries.numbersOf(shown.stream().map(ChildRef::child).toList());
        return new AccessReport(lines, numbers, lines.size() < MOST_LINES);
    }

    private static Stream<ChildRef> children(AccessLine line) {
        var site = line.site();
        return site == null ? Stream.empty() : line.children().stream().map(child -> new ChildRef(site, child));
    }

    private Set<SiteId> watched() {
        return currentStaff
                .standing()
                .map(one -> one.sitesAs(Role.PRIVACY_OFFICER))
                .orElse(Set.of());
    }
}
