package org.espalier.today;

import java.time.Clock;
import java.time.Duration;
import java.time.Period;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.Site;
import org.espalier.access.SiteService;
import org.espalier.opinion.OpinionService;
import org.espalier.opinion.ThreadLine;
import org.espalier.patient.Child;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads what waits for the caller at each hospital they treat children at. */
@Service
@Transactional
public class TodayService {

    /** A child is looked at again within six months while growth lasts. */
    public static final Period LONG_WITHOUT_FILM = Period.ofMonths(6);

    private static final Duration GRACE_AFTER_REGISTERING = Duration.ofDays(28);
    private static final Period GROWN_UP = Period.ofYears(18);
    private static final int MOST = 20;

    private final JdbcTodayRepository waiting;
    private final CareTodayReader care;
    private final PatientService patients;
    private final OpinionService opinions;
    private final SiteService sites;
    private final CurrentStaff currentStaff;
    private final Clock clock;

    TodayService(
            JdbcTodayRepository waiting,
            CareTodayReader care,
            PatientService patients,
            OpinionService opinions,
            SiteService sites,
            CurrentStaff currentStaff,
            Clock clock) {
        this.waiting = waiting;
        this.care = care;
        this.patients = patients;
        this.opinions = opinions;
        this.sites = sites;
        this.currentStaff = currentStaff;
        this.clock = clock;
    }

    /** Questions of colleagues that wait for the caller's opinion, or say something new, those due first. */
    public List<ThreadLine> askedOfMe() {
        return opinions.mine().stream()
                .filter(line -> !line.mine() && !line.closed())
                .filter(line -> !line.answered() || line.unread() > 0)
                .toList();
    }

    /** The hospitals the caller treats children at, by name; empty for everybody else. */
    public List<SiteToday> open() {
        return sites.mine().stream()
                .filter(site -> Stream.of(Role.SURGEON, Role.NURSE, Role.RADIOGRAPHER)
                        .anyMatch(role -> currentStaff.has(role, site.id())))
                .map(this::at)
                .toList();
    }

    private SiteToday at(Site site) {
        var today = sites.today(site.id());
        List<JdbcTodayRepository.FilmRow> toRead =
                currentStaff.has(Role.SURGEON, site.id()) ? waiting.toRead(site.id(), MOST) : List.of();
        var drafts = waiting.drafts(site.id(), MOST);
        var unfilmed = waiting.withoutFilm(
                site.id(),
                today.minus(LONG_WITHOUT_FILM),
                clock.instant().minus(GRACE_AFTER_REGISTERING),
                today.minus(GROWN_UP),
                MOST);
        var cared = care.at(site.id(), today);
        var children = named(
                site,
                Stream.of(
                                cared.children(),
                                toRead.stream().map(JdbcTodayRepository.FilmRow::child),
                                drafts.stream().map(JdbcTodayRepository.DraftRow::child),
                                unfilmed.stream().map(JdbcTodayRepository.ChildRow::child))
                        .flatMap(Function.identity()));
        return new SiteToday(
                site,
                today,
                care.named(cared, children),
                new Listed<>(
                        toRead.stream().flatMap(row -> film(row, children)).toList(),
                        toRead.isEmpty() ? 0 : toRead.getFirst().all()),
                drafts.stream().map(row -> draft(row, children)).toList(),
                waiting.tray(site.id()),
                new Listed<>(
                        unfilmed.stream().flatMap(row -> without(row, children)).toList(),
                        unfilmed.isEmpty() ? 0 : unfilmed.getFirst().all()));
    }

    private Map<ChildId, Child> named(Site site, Stream<ChildId> ids) {
        var wanted = ids.filter(Objects::nonNull).collect(Collectors.toSet());
        return patients.all(site.id(), wanted, "today").stream()
                .collect(Collectors.toMap(Child::id, Function.identity()));
    }

    private static Stream<FilmToRead> film(JdbcTodayRepository.FilmRow row, Map<ChildId, Child> children) {
        return Stream.ofNullable(children.get(row.child()))
                .map(child -> new FilmToRead(row.film(), child, row.takenOn()));
    }

    private static Stream<WithoutFilm> without(JdbcTodayRepository.ChildRow row, Map<ChildId, Child> children) {
        return Stream.ofNullable(children.get(row.child())).map(child -> new WithoutFilm(child, row.lastFilm()));
    }

    private static OpenDraft draft(JdbcTodayRepository.DraftRow row, Map<ChildId, Child> children) {
        var child = Optional.ofNullable(row.child()).map(children::get);
        return new OpenDraft(row.kind(), row.subject(), child, row.typedName(), row.savedAt());
    }
}
