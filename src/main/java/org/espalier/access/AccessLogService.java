package org.espalier.access;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The access log for whoever watches over it: the privacy officer of a site, and the operator for what has no site. */
@Service
public class AccessLogService {

    private static final int MOST_LINES = 300;

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

    /** Seals what can be sealed, checks all seals, and says the first that does not hold. */
    @Transactional
    public OptionalLong check() {
        log.seal();
        return log.firstBrokenSeal();
    }

    /** The newest seal; empty before there is any. */
    @Transactional
    public Optional<Seal> lastSeal() {
        return entries.lastSeal();
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
