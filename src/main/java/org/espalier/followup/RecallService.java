package org.espalier.followup;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.access.CurrentStaff;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.patient.Child;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.platform.Ids;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Who is late, who has no date, what was tried, what is next. */
@Service
@Transactional
public class RecallService {

    /** The most children one look at the recall shows. */
    public static final int PAGE = 50;

    private final JdbcRecallRepository recall;
    private final JdbcFamilyRepository families;
    private final PatientService patients;
    private final SiteService sites;
    private final CurrentStaff currentStaff;
    private final ApplicationEventPublisher events;
    private final Ids ids;
    private final Clock clock;

    RecallService(
            JdbcRecallRepository recall,
            JdbcFamilyRepository families,
            PatientService patients,
            SiteService sites,
            CurrentStaff currentStaff,
            ApplicationEventPublisher events,
            Ids ids,
            Clock clock) {
        this.recall = recall;
        this.families = families;
        this.patients = patients;
        this.sites = sites;
        this.currentStaff = currentStaff;
        this.events = events;
        this.ids = ids;
        this.clock = clock;
    }

    /**
     * Children late or without a date at the hospitals, a page from the given place on, the worst harm of waiting
     * first.
     */
    public Recall late(Collection<SiteId> at, int from) {
        var todays = todays(at);
        var rows = recall.late(todays, from, PAGE);
        var visits = rows.stream().map(JdbcRecallRepository.Row::visit).toList();
        var children = children(visits, "recall");
        var known = families(visits);
        var lines = rows.stream()
                .filter(row -> children.containsKey(row.visit().child()))
                .map(row -> line(row, children, known, todays))
                .toList();
        return new Recall(lines, recall.count(todays));
    }

    /** Families of the hospital to be reminded of their date, the nearest date first. */
    public List<Reminder> reminders(SiteId site) {
        var visits = recall.toRemind(site, sites.today(site), PAGE);
        var children = children(visits, "reminders");
        var known = families(visits);
        return visits.stream()
                .flatMap(visit -> Stream.ofNullable(children.get(visit.child()))
                        .map(child -> new Reminder(child, visit, known.getOrDefault(visit.child(), Family.UNKNOWN))))
                .toList();
    }

    /** Writes an attempt to reach the family down. */
    public void tried(Visit visit, Attempt attempt) {
        boolean open = families.of(visit.child()).mayBeContacted() || attempt.channel() == Channel.SAFEGUARDING_LEAD;
        if (!open) {
            throw new IllegalArgumentException("the family is not to be contacted, but by the safeguarding lead");
        }
        recall.add(ids.next(), visit, attempt, currentStaff.find().orElse(null), clock.instant());
        events.publishEvent(new FamilyTried(visit.child(), visit.site(), attempt.channel()));
    }

    /** What was tried for any visit of the child, the last first. */
    public List<Attempt> attempts(ChildId child) {
        return recall.of(child);
    }

    private Map<SiteId, LocalDate> todays(Collection<SiteId> at) {
        var todays = new LinkedHashMap<SiteId, LocalDate>();
        at.forEach(site -> todays.put(site, sites.today(site)));
        return todays;
    }

    private Map<ChildId, Child> children(List<Visit> visits, String list) {
        return bySite(visits).entrySet().stream()
                .flatMap(site -> patients.all(site.getKey(), site.getValue(), list).stream())
                .collect(Collectors.toMap(Child::id, child -> child));
    }

    private Map<ChildId, Family> families(List<Visit> visits) {
        var known = new HashMap<ChildId, Family>();
        bySite(visits).forEach((site, children) -> known.putAll(families.of(site, children)));
        return known;
    }

    private static Map<SiteId, List<ChildId>> bySite(List<Visit> visits) {
        return visits.stream()
                .collect(Collectors.groupingBy(Visit::site, Collectors.mapping(Visit::child, Collectors.toList())));
    }

    private static RecallLine line(
            JdbcRecallRepository.Row row,
            Map<ChildId, Child> children,
            Map<ChildId, Family> known,
            Map<SiteId, LocalDate> todays) {
        var visit = row.visit();
        var family = known.getOrDefault(visit.child(), Family.UNKNOWN);
        return new RecallLine(
                Stream.ofNullable(children.get(visit.child())).findFirst().orElseThrow(),
                visit,
                Stream.ofNullable(todays.get(visit.site())).findFirst().orElseThrow(),
                row.notBrought(),
                row.last(),
                row.tried().size(),
                Escalation.next(family, row.tried()),
                family);
    }
}
