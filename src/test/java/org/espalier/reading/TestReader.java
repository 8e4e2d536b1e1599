package org.espalier.reading;

import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.espalier.TestNetwork;
import org.espalier.film.FilmId;
import org.espalier.film.FilmService;
import org.espalier.film.TestDoor;
import org.espalier.film.TestFilm;
import org.espalier.patient.ChildData;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.platform.Ids;
import org.espalier.science.exposure.FilmConditions.Marker;
import org.espalier.science.exposure.FilmConditions.Ossification;
import org.espalier.science.exposure.FilmConditions.Patella;
import org.espalier.science.exposure.FilmConditions.Stance;
import org.espalier.science.exposure.FilmConditions.Technique;
import org.espalier.science.exposure.FilmConditions.View;
import org.espalier.science.quantity.Sex;
import org.espalier.science.quantity.Side;
import org.springframework.stereotype.Component;

/** Surgeons at sites of their own, with children, films and readings of known geometry. */
@Component
public class TestReader {

    private static final AtomicInteger COUNT = new AtomicInteger();

    private final TestNetwork network;
    private final TestDoor door;
    private final PatientService patients;
    private final FilmService films;
    private final DraftService drafts;
    private final ReadingService readings;
    private final Ids ids;

    TestReader(
            TestNetwork network,
            TestDoor door,
            PatientService patients,
            FilmService films,
            DraftService drafts,
            ReadingService readings,
            Ids ids) {
        this.network = network;
        this.door = door;
        this.patients = patients;
        this.films = films;
        this.drafts = drafts;
        this.readings = readings;
        this.ids = ids;
    }

    /** A surgeon at a new site. */
    public TestDoor.Sender surgeon() {
        return door.at("SURGEON");
    }

    /** Another surgeon at the same site. */
    public TestDoor.Sender colleague(TestDoor.Sender surgeon) {
        return new TestDoor.Sender(network.staff(surgeon.site().value(), "SURGEON"), surgeon.site());
    }

    /** A child born on the day. */
    public ChildId child(TestDoor.Sender surgeon, LocalDate birth) {
        var id = new ChildId(ids.next());
        var number = "R" + COUNT.incrementAndGet();
        surgeon.does(() ->
                patients.register(surgeon.site(), id, new ChildData("Invented", "Child", birth, Sex.FEMALE, number)));
        return id;
    }

    /** A film of the child, 0.2 mm a pixel at the detector, once it can be shown. */
    public FilmId film(TestDoor.Sender surgeon, ChildId child, LocalDate takenOn) {
        var bytes = TestFilm.of(60, 80).text(0x00181164, "DS", "0.2\\0.2").bytes();
        return arrived(surgeon, child, takenOn, bytes);
    }

    /** The same, large enough to hold both limbs of the reference geometry. */
    public FilmId wholeFilm(TestDoor.Sender surgeon, ChildId child, LocalDate takenOn) {
        var bytes = TestFilm.of(2400, 2300).text(0x00181164, "DS", "0.2\\0.2").bytes();
        return arrived(surgeon, child, takenOn, bytes);
    }

    /** A film of the child that comes as a file, once it can be shown. */
    public FilmId arrived(TestDoor.Sender surgeon, ChildId child, LocalDate takenOn, byte[] bytes) {
        var id = TestDoor.taken(door.send(surgeon, bytes, "legs.dcm"));
        var settled = door.settled(surgeon, id);
        return surgeon.does(() -> films.assign(id, settled.version(), child, takenOn, null))
                .orElseThrow()
                .id();
    }

    /** A film in the tray. */
    public FilmId filmOfNobody(TestDoor.Sender surgeon) {
        var id = TestDoor.taken(door.send(surgeon, TestFilm.of(60, 80).bytes(), "legs.dcm"));
        door.settled(surgeon, id);
        return id;
    }

    /** A signed reading of both limbs of a film, of the reference limb. */
    public ReadingId signed(TestDoor.Sender surgeon, FilmId film) {
        return signed(surgeon, film, 0);
    }

    /** A signed reading of the reference limb, the tibia of both straightened by so many degrees about the knee. */
    public ReadingId signed(TestDoor.Sender surgeon, FilmId film, double straightened) {
        return signed(surgeon, film, bothLimbs(straightened));
    }

    /** The same with shafts and metaphyses of both bones marked. */
    public ReadingId signedWithShafts(TestDoor.Sender surgeon, FilmId film, double straightened) {
        var limbs = bothLimbs(straightened);
        var shafts = Stream.of(
                        new ReferenceLimb(Side.RIGHT, 700, 0.2, 0.2), new ReferenceLimb(Side.LEFT, 1600, 0.2, 0.2))
                .map(limb -> limb.straightened(straightened))
                .flatMap(limb -> Stream.concat(limb.shafts().stream(), limb.metaphyses().stream()));
        return signed(
                surgeon,
                film,
                new Marks(Stream.concat(limbs.points().stream(), shafts).toList(), limbs.edges()));
    }

    /**
     * A second reading of the film, blind to the first, by a surgeon who has not read it, with all that can be chosen
     * chosen.
     */
    public ReadingId signedAgain(TestDoor.Sender surgeon, ReadingId first, double straightened) {
        return surgeon.does(() -> {
            var draft = drafts.readBlind(first);
            var taken = new FilmTaken(
                    Stance.STANDING_ALONE,
                    View.AP,
                    Technique.STITCHED,
                    2,
                    Seen.NO,
                    Seen.NOT_RECORDED,
                    Seen.NOT_RECORDED,
                    LimbsShown.BOTH,
                    12.5,
                    Side.LEFT,
                    Patella.FORWARD,
                    Patella.NOT_RECORDED,
                    5,
                    null,
                    25.4,
                    null,
                    Marker.NOT_RECORDED,
                    Ossification.NOT_RECORDED);
            var screw = ScrewSeen.asked(Side.RIGHT, ScrewSeen.Plate.DISTAL_FEMUR, ScrewSeen.Screw.METAPHYSIS)
                    .withBent(Seen.NO)
                    .withBroken(Seen.YES);
            drafts.choose(draft.id(), draft.settings().withTaken(taken).withScrews(List.of(screw)));
            drafts.measure(draft.id(), commit(draft.revision() + 1, bothLimbs(straightened)));
            readings.sign(draft.id(), draft.revision() + 2, null);
            return draft.id();
        });
    }

    /** A signed reading whose reader said this of the screws. */
    public ReadingId signedWithScrews(TestDoor.Sender surgeon, FilmId film, List<ScrewSeen> screws) {
        return surgeon.does(() -> {
            var draft = drafts.begin(film);
            var chosen = drafts.choose(draft.id(), draft.settings().withScrews(screws))
                    .orElseThrow();
            drafts.measure(draft.id(), commit(chosen.revision(), bothLimbs()));
            readings.sign(draft.id(), chosen.revision() + 1, null);
            return draft.id();
        });
    }

    /**
     * A signed reading of a tibia from the side, the child lying, its shaft bent by so many degrees, the apex in front.
     */
    public ReadingId signedFromTheSide(TestDoor.Sender surgeon, FilmId film, Side side, double procurvatum) {
        double bend = Math.toRadians(procurvatum);
        var points = List.of(
                new PlacedPoint(side, "plateau_anterior", 270, 190),
                new PlacedPoint(side, "plateau_posterior", 330, 200),
                new PlacedPoint(side, "tibia_shaft_proximal", 300, 250),
                new PlacedPoint(side, "tibia_shaft_bend", 300, 450),
                new PlacedPoint(side, "tibia_shaft_distal", 300 + 200 * Math.sin(bend), 450 + 200 * Math.cos(bend)));
        return surgeon.does(() -> {
            var draft = drafts.begin(film);
            var settings =
                    Taken.but("\"view\": \"LATERAL\", \"stance\": \"SUPINE\"").withLimbs(List.of(side));
            var chosen = drafts.choose(draft.id(), settings).orElseThrow();
            drafts.measure(draft.id(), commit(chosen.revision(), new Marks(points, List.of())));
            readings.sign(draft.id(), chosen.revision() + 1, null);
            return draft.id();
        });
    }

    private ReadingId signed(TestDoor.Sender surgeon, FilmId film, Marks marks) {
        return surgeon.does(() -> {
            var draft = drafts.begin(film);
            drafts.measure(draft.id(), commit(draft.revision(), marks));
            readings.sign(draft.id(), draft.revision() + 1, null);
            return draft.id();
        });
    }

    /** What the film room asks while a hand moves on a film with both limbs marked. */
    public MeasureRequest movingHand(ReadingDraft draft) {
        return ask(draft.revision(), bothLimbs());
    }

    /** What a hand sets on a film with both limbs marked. */
    public Marks movingHand() {
        return bothLimbs();
    }

    static Marks bothLimbs() {
        return bothLimbs(0);
    }

    static Marks bothLimbs(double straightened) {
        var right = new ReferenceLimb(Side.RIGHT, 700, 0.2, 0.2).straightened(straightened);
        var left = new ReferenceLimb(Side.LEFT, 1600, 0.2, 0.2).straightened(straightened);
        return new Marks(
                Stream.concat(right.points().stream(), left.points().stream()).toList(),
                List.of(right.head(240), left.head(240)));
    }

    static MeasureRequest commit(long revision, Marks marks) {
        return new MeasureRequest(1, revision, marks.points(), marks.edges(), true);
    }

    static MeasureRequest ask(long revision, Marks marks) {
        return new MeasureRequest(1, revision, marks.points(), marks.edges(), null);
    }
}
