package org.espalier.demo;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.espalier.access.SiteService;
import org.espalier.film.FilmOrderId;
import org.espalier.film.FilmOrderService;
import org.espalier.film.FilmProtocol;
import org.espalier.film.FilmWish;
import org.espalier.followup.Appointment;
import org.espalier.followup.Attempt;
import org.espalier.followup.AttemptOutcome;
import org.espalier.followup.Channel;
import org.espalier.followup.Family;
import org.espalier.followup.FamilyService;
import org.espalier.followup.Happening;
import org.espalier.followup.LetterService;
import org.espalier.followup.Letterhead;
import org.espalier.followup.Phone;
import org.espalier.followup.RecallService;
import org.espalier.followup.Visit;
import org.espalier.followup.VisitService;
import org.espalier.patient.AffectedSides;
import org.espalier.patient.ChildId;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/**
 * The families of the demonstration: how they are reached, who comes on the first day and for which film, what was
 * tried.
 */
@Component
@Profile("demo")
class DemoFamilies {

    private static final List<String> LANGUAGES = List.of("en", "es", "ar", "fr", "pt");
    private static final int COMES_TODAY = 5;
    private static final int WAS_CALLED = 4;

    private final FamilyService families;
    private final VisitService visits;
    private final RecallService recall;
    private final LetterService letters;
    private final FilmOrderService orders;
    private final SiteService sites;

    DemoFamilies(
            FamilyService families,
            VisitService visits,
            RecallService recall,
            LetterService letters,
            FilmOrderService orders,
            SiteService sites) {
        this.families = families;
        this.visits = visits;
        this.recall = recall;
        this.letters = letters;
        this.orders = orders;
        this.sites = sites;
    }

    /** What letters say of the hospital. */
    void tellWhere(DemoHospital hospital, DemoTeam team) {
        var head = new Letterhead(hospital.address(), hospital.phone());
        Callers.runAs(new Caller.Staff(team.nurse().value()), () -> letters.saveLetterhead(team.site(), head));
    }

    /** Tells of one family; each of these is told once. */
    void tell(DemoStory story, DemoTeam team, LocalDate firstDay, int place) {
        var child = new ChildId(DemoIds.of("child", story.number()));
        Callers.runAs(new Caller.Staff(team.nurse().value()), () -> {
            families.save(team.site(), child, family(place));
            visits.of(child).open().ifPresent(visit -> tell(visit, dayAt(team, firstDay), place));
        });
    }

    /**
     * The first day, or the next where the hospital's clock is past midnight already: no film is asked for yesterday.
     */
    private LocalDate dayAt(DemoTeam team, LocalDate firstDay) {
        var today = sites.today(team.site());
        return today.isAfter(firstDay) ? today : firstDay;
    }

    private void tell(Visit visit, LocalDate firstDay, int place) {
        if (place % COMES_TODAY == 0) {
            var time = LocalTime.of(9, 0).plusMinutes(10L * (place % 30));
            visits.record(visit, new Happening.Booked(Appointment.of(firstDay, time)));
            orders.order(
                    new FilmOrderId(DemoIds.of("film", visit.child().value().toString())),
                    visit.child(),
                    firstDay,
                    new FilmWish.Film(AffectedSides.BOTH, FilmProtocol.LONG_STANDING, null, true, null));
        } else if (place % WAS_CALLED == 1 && visit.isLate(firstDay)) {
            recall.tried(
                    visit,
                    new Attempt(
                            firstDay.minusDays(2),
                            Channel.CALL,
                            AttemptOutcome.NO_ANSWER,
                            Optional.empty(),
                            Optional.empty(),
                            Optional.of(new Attempt.Next("send a message", Optional.of(firstDay.plusDays(1))))));
        }
    }

    /** Numbers that are nobody's. */
    private static Family family(int place) {
        var language = LANGUAGES.get(place % LANGUAGES.size());
        var number = String.format(Locale.ROOT, "000 555 %04d", 100 + place);
        return new Family(
                0,
                List.of(new Phone(number, place % 2 == 0 ? "mother" : "father", language)),
                language,
                !language.equals("en"),
                place % 3 == 0 ? "bus, two hours" : null,
                null,
                null,
                null);
    }
}
