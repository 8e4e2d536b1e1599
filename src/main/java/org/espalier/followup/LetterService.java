package org.espalier.followup;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.espalier.access.Site;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.kit.Who;
import org.espalier.patient.Child;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Letters and calendar files for families, in their language and with no more of the child than its given name. None is
 * written when the child has died, care has ended, or the family is not to be contacted.
 */
@Service
@Transactional
public class LetterService {

    private final LetterPress press;
    private final JdbcLetterheadRepository letterheads;
    private final JdbcVisitRepository visits;
    private final JdbcVisitStepRepository steps;
    private final JdbcFamilyRepository families;
    private final PatientService patients;
    private final SiteService sites;
    private final Clock clock;

    LetterService(
            LetterPress press,
            JdbcLetterheadRepository letterheads,
            JdbcVisitRepository visits,
            JdbcVisitStepRepository steps,
            JdbcFamilyRepository families,
            PatientService patients,
            SiteService sites,
            Clock clock) {
        this.press = press;
        this.letterheads = letterheads;
        this.visits = visits;
        this.steps = steps;
        this.families = families;
        this.patients = patients;
        this.sites = sites;
        this.clock = clock;
    }

    /** The letter as PDF; empty when there is no such child that the caller may see. */
    public Optional<LetterOutcome> letter(ChildId child, LetterKind kind, LetterLanguage language) {
        return write(child, kind, language, (visit, letter) -> press.print(letter));
    }

    /** The date as a calendar file; empty when there is no such child that the caller may see. */
    public Optional<LetterOutcome> calendar(ChildId child, LetterLanguage language) {
        return write(
                child,
                LetterKind.INVITATION,
                language,
                (visit, letter) -> CalendarFile.of(
                        visit,
                        visit.appointment().orElseThrow(),
                        letter,
                        sites.get(visit.site()).zone(),
                        clock.instant()));
    }

    /** What letters say of the hospital; empty while nobody wrote it down. */
    public Optional<Letterhead> letterhead(SiteId site) {
        return letterheads.of(site);
    }

    /** Keeps what letters say of the hospital. */
    public void saveLetterhead(SiteId site, Letterhead letterhead) {
        letterheads.save(site, letterhead);
    }

    /** Each kind of letter and whether it can be written; none for a child of whom the caller may know nothing. */
    public List<LetterOffer> offers(Child child) {
        boolean known =
                visits.findOpen(child.id()).isPresent() || steps.end(child.id()).isPresent();
        return Stream.of(LetterKind.values())
                .filter(kind -> known)
                .map(kind -> new LetterOffer(kind, refusal(child, kind)))
                .toList();
    }

    private Optional<LetterOutcome> write(
            ChildId id, LetterKind kind, LetterLanguage language, BiFunction<Visit, Letter, byte[]> writer) {
        return patients.open(id, "letter").map(child -> {
            var refusal = refusal(child, kind);
            if (refusal.isPresent()) {
                return new LetterOutcome.Refused(refusal.get());
            }
            var visit = visits.findOpen(id).orElseThrow();
            return new LetterOutcome.Written(writer.apply(visit, letter(child, visit, kind, language)));
        });
    }

    private Letter letter(Child child, Visit visit, LetterKind kind, LetterLanguage language) {
        Site site = sites.get(child.site());
        var name = child.who() instanceof Who.Named named ? named.givenName() : null;
        return new Letter(
                kind,
                name,
                site.name(),
                letterheads.of(child.site()).orElseThrow(),
                visit.appointment(),
                visit.due().lookBy(),
                language);
    }

    private Optional<LetterRefusal> refusal(Child child, LetterKind kind) {
        var end = steps.end(child.id());
        var visit = visits.findOpen(child.id());
        if (end.filter(CareEnd::stopsLetters).isPresent()) {
            return Optional.of(LetterRefusal.DIED);
        }
        if (visit.isEmpty()) {
            return Optional.of(LetterRefusal.NOT_IN_CARE);
        }
        if (!families.of(child.id()).mayBeContacted()) {
            return Optional.of(LetterRefusal.DO_NOT_CONTACT);
        }
        if (letterheads.of(child.site()).isEmpty()) {
            return Optional.of(LetterRefusal.NO_LETTERHEAD);
        }
        if (!(child.who() instanceof Who.Named)) {
            return Optional.of(LetterRefusal.NO_NAME);
        }
        boolean dateMissing =
                kind.needsDate() && visit.flatMap(Visit::appointment).isEmpty();
        return dateMissing ? Optional.of(LetterRefusal.NO_DATE) : Optional.empty();
    }
}
