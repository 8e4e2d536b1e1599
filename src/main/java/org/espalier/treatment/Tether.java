package org.espalier.treatment;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What holds a physis, from placing to removal.
 *
 * @param implant empty for a permanent arrest, which nothing takes out
 * @param placed by what it came
 * @param side the side of the bone, now or at the end; empty where the whole physis is held
 * @param what in words, as recorded when it was placed
 * @param elsewhere placed at another hospital, or before this record began
 * @param to empty while it is in
 * @param periods how it held, the first first, without gaps
 * @param findings what was seen of it, the first first
 */
public record Tether(
        Optional<ImplantId> implant,
        ProcedureKind placed,
        PhysisKey physis,
        Optional<PlateSide> side,
        String what,
        int count,
        boolean elsewhere,
        LocalDate from,
        Optional<LocalDate> to,
        List<TetherPeriod> periods,
        List<ImplantFinding> findings) {

    private static final Set<ImplantFinding.Seen> DOUBTS =
            Set.of(ImplantFinding.Seen.BENT, ImplantFinding.Seen.BROKEN, ImplantFinding.Seen.LOOSE);

    public Tether {
        periods = List.copyOf(periods);
        findings = List.copyOf(findings);
    }

    public boolean isIn() {
        return to.isEmpty();
    }

    public boolean isPermanent() {
        return implant.isEmpty();
    }

    /** How it holds, now or at the end. */
    public Hold hold() {
        return periods.getLast().hold();
    }

    Optional<TetherPeriod> on(LocalDate day) {
        return periods.stream().filter(period -> period.isOn(day)).findFirst();
    }

    /** What was seen last of each part. */
    public Map<ImplantFinding.Part, ImplantFinding> lastSeen() {
        var last = new EnumMap<ImplantFinding.Part, ImplantFinding>(ImplantFinding.Part.class);
        findings.forEach(finding -> last.put(finding.part(), finding));
        return last;
    }

    /** Whether a part was last seen bent, broken or loose. */
    public boolean isInDoubt() {
        return lastSeen().values().stream().anyMatch(finding -> DOUBTS.contains(finding.seen()));
    }

    /** The fragment that was left in, if one was. */
    public Optional<ImplantFinding> retainedFragment() {
        return findings.stream()
                .filter(finding -> finding.seen() == ImplantFinding.Seen.FRAGMENT_RETAINED)
                .reduce((earlier, later) -> later);
    }
}
