package org.espalier.demo;

import java.io.ByteArrayInputStream;
import java.time.LocalDate;
import java.util.List;
import org.espalier.access.StaffId;
import org.espalier.demo.drawn.DrawnFilm;
import org.espalier.demo.drawn.DrawnLabel;
import org.espalier.film.FilmId;
import org.espalier.film.FilmService;
import org.espalier.film.Received;
import org.espalier.patient.BodySize;
import org.espalier.patient.BoneAge;
import org.espalier.patient.BoneAgeMethod;
import org.espalier.patient.ChildData;
import org.espalier.patient.ChildId;
import org.espalier.patient.ExaminationService;
import org.espalier.patient.FactId;
import org.espalier.patient.Finding;
import org.espalier.patient.PatientService;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.espalier.reading.CalibrationChoice;
import org.espalier.reading.DraftService;
import org.espalier.reading.EdgePoints;
import org.espalier.reading.MeasureRequest;
import org.espalier.reading.Reading;
import org.espalier.reading.ReadingDraft;
import org.espalier.reading.ReadingService;
import org.espalier.reading.ReadingSettings;
import org.espalier.reading.SignOutcome;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Weight;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/**
 * Lets a story happen: the nurse registers and measures, the radiographer sends the film, the surgeon reads and signs.
 * Each step may be repeated; what is there already stays as it is.
 */
@Component
@Profile("demo")
class DemoCourse {

    /** The films of every so-many-th child are read by two. */
    private static final int READ_TWICE = 3;

    private final PatientService patients;
    private final ExaminationService examinations;
    private final FilmService films;
    private final DraftService drafts;
    private final ReadingService readings;

    DemoCourse(
            PatientService patients,
            ExaminationService examinations,
            FilmService films,
            DraftService drafts,
            ReadingService readings) {
        this.patients = patients;
        this.examinations = examinations;
        this.films = films;
        this.drafts = drafts;
        this.readings = readings;
    }

    /** Registers the child with what is known from the first visit on. */
    void register(DemoStory story, DemoTeam team, LocalDate firstDay) {
        ChildId child = child(story);
        ChildData data = new ChildData(
                story.familyName(), story.givenName(), story.birthDate(firstDay), story.sex(), story.number());
        LocalDate firstVisit = story.dayOf(story.visits().getFirst(), firstDay);
        as(team.nurse(), () -> patients.register(team.site(), child, data));
        as(team.surgeon(), () -> record(story, "diagnosis", story.diagnosis().on(firstVisit)));
    }

    /** Does all that happens on the day of a visit. */
    void visit(DemoStory story, DemoVisit visit, DemoTeam team, LocalDate firstDay) {
        LocalDate day = story.dayOf(visit, firstDay);
        as(team.nurse(), () -> measure(story, visit, day));
        for (DrawnFilm drawn : DemoFilms.draw(story, visit)) {
            byte[] file = DemoFilms.file(drawn, story, visit, firstDay);
            FilmId film = send(team, file, story.number() + "-" + day + legs(drawn) + ".dcm");
            if (visit.read() && !drawn.contrast()) {
                as(team.surgeon(), () -> read(film, drawn, story, visit));
                if (story.ageNowMonths() % READ_TWICE == 0) {
                    team.secondReader().ifPresent(second -> as(second, () -> readAgain(film, drawn, story, visit)));
                }
            }
        }
    }

    private static String legs(DrawnFilm drawn) {
        return drawn.shown().map(side -> "-" + side.letter()).orElse("");
    }

    /** Sends a film of these days that says the child wrongly, so that it lies in the tray. */
    void sendMistyped(DemoStory story, DemoTeam team, LocalDate firstDay) {
        send(team, DemoFilms.mistyped(story, story.today(), firstDay), "standing-" + story.ageNowMonths() + ".dcm");
    }

    private static ChildId child(DemoStory story) {
        return new ChildId(DemoIds.of("child", story.number()));
    }

    private void measure(DemoStory story, DemoVisit visit, LocalDate day) {
        String when = Integer.toString(visit.ageMonths());
        record(
                story,
                "size " + when,
                new BodySize(day, Length.ofCentimetres(visit.heightCm()), new Weight(visit.weightKg())));
        record(story, "examined " + when, DemoFinding.of(story, visit, day));
        visit.boneAgeMonths()
                .ifPresent(months -> record(
                        story, "bone age " + when, new BoneAge(day, Age.ofMonths(months), BoneAgeMethod.HAND_ATLAS)));
    }

    private void record(DemoStory story, String what, Finding finding) {
        examinations.record(child(story), new FactId(DemoIds.of(story.number(), what)), finding);
    }

    private FilmId send(DemoTeam team, byte[] file, String name) {
        Received received = Callers.callAs(
                new Caller.Staff(team.radiographer().value()),
                () -> films.receive(team.site(), new ByteArrayInputStream(file), name));
        return switch (received) {
            case Received.Taken taken -> taken.film();
            case Received.AlreadyHere here -> here.film();
            case Received.KeptAside aside ->
                throw new IllegalStateException(name + " was kept aside: " + aside.reason());
            case Received.Refused refused ->
                throw new IllegalStateException(name + " was refused: " + refused.reason());
        };
    }

    private void read(FilmId film, DrawnFilm drawn, DemoStory story, DemoVisit visit) {
        if (!readings.ofFilm(film).isEmpty()) {
            return;
        }
        DemoReader reader = new DemoReader(drawn, film.value().getLeastSignificantBits());
        ReadingDraft draft = drafts.begin(film);
        sign(film, choose(draft, drawn, story, visit), reader, isByBall(story));
    }

    /** A second reading, blind to the first. */
    private void readAgain(FilmId film, DrawnFilm drawn, DemoStory story, DemoVisit visit) {
        List<Reading> before = readings.ofFilm(film);
        if (before.size() == 1) {
            ReadingDraft draft = drafts.readBlind(before.getFirst().id());
            DemoReader reader = new DemoReader(drawn, film.value().getMostSignificantBits());
            sign(film, choose(draft, drawn, story, visit), reader, isByBall(story));
        }
    }

    private ReadingDraft choose(ReadingDraft draft, DrawnFilm drawn, DemoStory story, DemoVisit visit) {
        ReadingSettings asked = draft.settings()
                .withTaken(DemoTaken.of(drawn, visit.ageMonths()))
                .withScrews(DemoTaken.screws(visit, drawn));
        ReadingSettings settings = isByBall(story)
                ? asked.withCalibration(CalibrationChoice.BALL)
                        .withBallDiameter(drawn.ball().diameter().millimetres())
                : asked;
        return drafts.choose(draft.id(), settings).orElseThrow();
    }

    private static boolean isByBall(DemoStory story) {
        return story.hospital().spacing() == DrawnLabel.Spacing.DETECTOR;
    }

    private void sign(FilmId film, ReadingDraft draft, DemoReader reader, boolean byBall) {
        List<EdgePoints> edges = byBall ? List.of(reader.ball()) : List.of();
        drafts.measure(draft.id(), new MeasureRequest(1, draft.revision(), reader.points(), edges, true));
        long revision = drafts.find(film).orElseThrow().revision();
        if (readings.sign(draft.id(), revision, null) instanceof SignOutcome.Refused refused) {
            throw new IllegalStateException("the reading of " + film.value() + " was refused: " + refused.reason());
        }
    }

    private static void as(StaffId staff, Runnable work) {
        Callers.runAs(new Caller.Staff(staff.value()), work);
    }
}
