package org.espalier;

import java.lang.reflect.Method;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.EmergencyService;
import org.espalier.access.Membership;
import org.espalier.access.Role;
import org.espalier.access.SiteData;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.access.StaffId;
import org.espalier.cost.TestCost;
import org.espalier.film.FilmId;
import org.espalier.film.FilmService;
import org.espalier.film.TestDoor.Sender;
import org.espalier.film.TestFilm;
import org.espalier.film.TestOrders;
import org.espalier.film.TestPictures;
import org.espalier.followup.Appointment;
import org.espalier.followup.Attempt;
import org.espalier.followup.AttemptOutcome;
import org.espalier.followup.CareEnd;
import org.espalier.followup.Channel;
import org.espalier.followup.DueByService;
import org.espalier.followup.EndReason;
import org.espalier.followup.Family;
import org.espalier.followup.Happening;
import org.espalier.followup.LetterKind;
import org.espalier.followup.LetterLanguage;
import org.espalier.followup.LetterService;
import org.espalier.followup.Letterhead;
import org.espalier.followup.Limits;
import org.espalier.followup.RecallService;
import org.espalier.followup.SharedCareService;
import org.espalier.followup.TransferService;
import org.espalier.followup.Visit;
import org.espalier.followup.VisitService;
import org.espalier.interchange.ClinicFolder;
import org.espalier.interchange.Portion;
import org.espalier.interchange.TestRecords;
import org.espalier.opinion.TestOpinion;
import org.espalier.opinion.ThreadId;
import org.espalier.outcomes.Measure;
import org.espalier.outcomes.Span;
import org.espalier.patient.BodySize;
import org.espalier.patient.Bone;
import org.espalier.patient.BoneEnd;
import org.espalier.patient.ChildData;
import org.espalier.patient.ChildId;
import org.espalier.patient.ChildOrder;
import org.espalier.patient.ExaminationService;
import org.espalier.patient.Fact;
import org.espalier.patient.FactId;
import org.espalier.patient.Finding;
import org.espalier.patient.PatientService;
import org.espalier.patient.TibiaVaraStage;
import org.espalier.plan.ComparisonId;
import org.espalier.plan.CutRequest;
import org.espalier.plan.Intent;
import org.espalier.plan.Option;
import org.espalier.plan.PlanService;
import org.espalier.plan.SheetInputs;
import org.espalier.plan.SheetKind;
import org.espalier.platform.Ids;
import org.espalier.prognosis.RateSource;
import org.espalier.reading.DraftService;
import org.espalier.reading.MeasureRequest;
import org.espalier.reading.Reading;
import org.espalier.reading.ReadingDraft;
import org.espalier.reading.ReadingId;
import org.espalier.reading.ReadingService;
import org.espalier.reading.TestReader;
import org.espalier.safety.TestSafety;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Sex;
import org.espalier.science.quantity.Side;
import org.espalier.stock.TestStock;
import org.espalier.treatment.TestTreatment;
import org.springframework.stereotype.Component;

/**
 * A hospital with a child of every kind of record, and with an argument for every parameter of every service method, so
 * that each method can be asked about that child by anybody. A new kind of parameter gets its line here.
 */
@Component
public class TestWorld {

    /** Who the child of each such hospital is; nobody without need, no log and no other hospital may be told. */
    public static final ChildData CHILD =
            new ChildData("Zaunkoenig-Canary", "Quirina-Canary", LocalDate.of(2016, 5, 20), Sex.FEMALE, "CANARY-7731");

    private static final LocalDate DAY = LocalDate.of(2025, 7, 1);

    private final TestReader reader;
    private final PatientService patients;
    private final ExaminationService examinations;
    private final FilmService films;
    private final DraftService drafts;
    private final ReadingService readings;
    private final VisitService visits;
    private final DueByService dueBy;
    private final RecallService recall;
    private final LetterService letters;
    private final TransferService transfers;
    private final SharedCareService sharedCare;
    private final EmergencyService emergencies;
    private final SiteService sites;
    private final TestTreatment treatment;
    private final TestOrders orders;
    private final TestPictures pictures;
    private final TestStock stock;
    private final TestSafety safety;
    private final TestCost costs;
    private final PlanService plans;
    private final TestRecords records;
    private final TestOpinion opinion;
    private final Ids ids;

    TestWorld(
            TestReader reader,
            PatientService patients,
            ExaminationService examinations,
            FilmService films,
            DraftService drafts,
            ReadingService readings,
            VisitService visits,
            DueByService dueBy,
            RecallService recall,
            LetterService letters,
            TransferService transfers,
            SharedCareService sharedCare,
            EmergencyService emergencies,
            SiteService sites,
            TestTreatment treatment,
            TestOrders orders,
            TestPictures pictures,
            TestStock stock,
            TestSafety safety,
            TestCost costs,
            PlanService plans,
            TestRecords records,
            TestOpinion opinion,
            Ids ids) {
        this.reader = reader;
        this.patients = patients;
        this.examinations = examinations;
        this.films = films;
        this.drafts = drafts;
        this.readings = readings;
        this.visits = visits;
        this.dueBy = dueBy;
        this.recall = recall;
        this.letters = letters;
        this.transfers = transfers;
        this.sharedCare = sharedCare;
        this.emergencies = emergencies;
        this.sites = sites;
        this.treatment = treatment;
        this.orders = orders;
        this.pictures = pictures;
        this.stock = stock;
        this.safety = safety;
        this.costs = costs;
        this.plans = plans;
        this.records = records;
        this.opinion = opinion;
        this.ids = ids;
    }

    /**
     * One hospital and its child.
     *
     * @param surgeon who read the film and has a draft of another
     * @param who who the child is
     * @param byType an argument for each type of parameter
     * @param byMethod arguments that a type does not settle, by {@code Service.method}
     * @param byPlace what stands in an address: by the name of the place, {@code {child}}, or by the word before a
     *     star; for one address alone with the address before it
     */
    public record Hospital(
            SiteId site,
            UUID surgeon,
            ChildData who,
            ChildId child,
            FilmId film,
            Map<Class<?>, Object> byType,
            Map<String, Object[]> byMethod,
            Map<String, UUID> byPlace) {

        /** What nobody elsewhere may be told: the names and ids of the child and its records. */
        public List<String> secrets() {
            return List.of(
                    String.valueOf(who.localNumber()),
                    who.familyName(),
                    child.value().toString(),
                    film.value().toString(),
                    ((ReadingId) argument(ReadingId.class)).value().toString());
        }

        /** An address with its places filled by what belongs to this hospital's child. */
        public String addressOf(String template) {
            var parts = template.split("/", -1);
            for (int at = 0; at < parts.length; at++) {
                if (parts[at].matches("[*]|[{].+[}]")) {
                    var place = parts[at].equals("*") ? parts[at - 1] : parts[at].replaceAll("[{}]", "");
                    var usual = byPlace.getOrDefault(place, child.value());
                    parts[at] =
                            byPlace.getOrDefault(template + " " + place, usual).toString();
                }
            }
            return String.join("/", parts).replace("/**", "");
        }

        public Object[] argumentsOf(Method method) {
            var name = method.getDeclaringClass().getSimpleName() + "." + method.getName();
            var own = byMethod.get(name);
            return own != null
                    ? own
                    : Arrays.stream(method.getParameterTypes())
                            .map(this::argument)
                            .toArray();
        }

        private Object argument(Class<?> type) {
            var argument = byType.get(type);
            if (argument == null) {
                throw new AssertionError("TestWorld has no argument of type " + type.getName());
            }
            return argument;
        }
    }

    /** A new hospital with a child, who has facts, a film with a signed reading, and another with a draft. */
    public Hospital hospital() {
        return hospital(CHILD);
    }

    /** Such a hospital, of a child of that name and number. */
    public Hospital hospital(ChildData data) {
        var surgeon = reader.surgeon();
        var child = new ChildId(ids.next());
        surgeon.does(() -> patients.register(surgeon.site(), child, data));
        var fact = new FactId(ids.next());
        var size = new BodySize(LocalDate.of(2024, 5, 20), Length.ofCentimetres(131.5), null);
        surgeon.does(() -> {
            examinations.record(child, fact, size);
            return fact;
        });
        surgeon.does(() -> {
            dueBy.signLimits(surgeon.site(), Limits.DEFAULTS, "as agreed");
            letters.saveLetterhead(surgeon.site(), new Letterhead("Lantern Road 5", "555-0142"));
            return child;
        });
        List.of(surgeon, reader.colleague(surgeon)).forEach(one -> stage(one, child));
        surgeon.does(() -> {
            plans.keep(child, Side.RIGHT, new ComparisonId(ids.next()), null);
            return child;
        });
        var film = reader.film(surgeon, child, LocalDate.of(2025, 5, 20));
        var signed = reader.signed(surgeon, film);
        var begun = reader.film(surgeon, child, LocalDate.of(2025, 6, 20));
        var draft = surgeon.does(() -> drafts.begin(begun));
        reader.filmOfNobody(surgeon);
        var treated = new HashMap<>(surgeon.does(() -> treatment.arrange(child)));
        treated.putAll(orders.arrange(surgeon.site(), child, DAY));
        var clip = pictures.arrange(surgeon, child, DAY);
        treated.putAll(clip.arguments());
        var stocked = stock.arrange(surgeon.site());
        treated.putAll(stocked.arguments());
        treated.putAll(safety.arrange(surgeon.site(), surgeon.staff(), child));
        treated.putAll(costs.arrange(surgeon.site(), child));
        treated.putAll(opinion.arrange(surgeon, child, film));
        var types = byType(surgeon, child, data, film, signed);
        types.putAll(stocked.types());
        types.put(ClinicFolder.class, records.arrange(surgeon, data));
        return new Hospital(
                surgeon.site(),
                surgeon.staff(),
                data,
                child,
                film,
                types,
                byMethod(surgeon, child, fact, draft, film, treated),
                places(
                        Map.of(
                                "film", film.value(),
                                "films", film.value(),
                                "other", begun.value(),
                                "pictures", clip.picture().value(),
                                "/api/pictures/*/info pictures", clip.photo().value(),
                                "/api/pictures/*/rendered pictures",
                                        clip.photo().value(),
                                "readings", draft.id().value()),
                        treated));
    }

    private void stage(Sender by, ChildId child) {
        var stage = new TibiaVaraStage(LocalDate.of(2024, 5, 20), Side.LEFT, TibiaVaraStage.Stage.III);
        by.does(() -> {
            examinations.record(child, new FactId(ids.next()), stage);
            return stage;
        });
    }

    /** With the discussion that is open, its film, and the one that has a summary. */
    private static Map<String, UUID> places(Map<String, UUID> usual, Map<String, Object[]> arguments) {
        var places = new HashMap<>(usual);
        var open = Objects.requireNonNull(arguments.get("OpinionFilmService.open"));
        var closed = Objects.requireNonNull(arguments.get("ClosingService.summary"));
        var thread = ((ThreadId) open[0]).value();
        places.put("thread", thread);
        places.put("opinions", thread);
        places.put("/opinion/{thread}/film/{film} film", (UUID) open[1]);
        for (var of : List.of("info", "rendered", "thumbnail", "dicom")) {
            places.put("/api/opinions/*/films/*/" + of + " films", (UUID) open[1]);
        }
        var clip = Objects.requireNonNull(arguments.get("OpinionFilmService.clip"));
        places.put("/api/opinions/*/clips/* clips", (UUID) clip[1]);
        places.put("/api/opinions/*/summary opinions", ((ThreadId) closed[0]).value());
        return places;
    }

    /** A row about the child, as the booking system writes it, by a number nobody elsewhere has. */
    private static String bookings(LocalDate today) {
        return "number,booking,date,time,outcome\n" + CHILD.localNumber() + ",B-1," + today + ",09:30,\n";
    }

    /** An emergency in which somebody of another hospital opened the child. */
    private UUID taken(Sender surgeon, ChildId child) {
        var elsewhere = reader.surgeon();
        var who = surgeon.does(
                () -> patients.open(child, "course").orElseThrow().data().orElseThrow());
        var why = "bleeding, no record at hand";
        elsewhere.does(() -> emergencies.take(surgeon.site(), String.valueOf(who.localNumber()), who.birthDate(), why));
        return surgeon.does(() -> emergencies.told().getFirst().id());
    }

    /** A child of the hospital whose care ended. */
    private ChildId endedChild(Sender surgeon, LocalDate today) {
        var child = reader.child(surgeon, CHILD.birthDate());
        var end = new CareEnd(Optional.of(EndReason.DECLINED), today, "");
        surgeon.does(() -> visits.record(visits.of(child).open().orElseThrow(), new Happening.CareEnded(end)));
        return child;
    }

    private Map<Class<?>, Object> byType(Sender surgeon, ChildId child, ChildData data, FilmId film, ReadingId signed) {
        var values = new HashMap<Class<?>, Object>();
        values.put(SiteId.class, surgeon.site());
        values.put(StaffId.class, new StaffId(surgeon.staff()));
        values.put(UUID.class, UUID.randomUUID());
        values.put(ChildId.class, child);
        values.put(ChildData.class, data);
        values.put(
                org.espalier.patient.Child.class,
                surgeon.does(() -> patients.open(child, "letter")).orElseThrow());
        values.put(java.util.Set.class, java.util.Set.of());
        values.put(ChildOrder.class, ChildOrder.NAME);
        values.put(FilmId.class, film);
        values.put(ReadingId.class, signed);
        values.put(LetterKind.class, LetterKind.PLEASE_CALL);
        values.put(LetterLanguage.class, LetterLanguage.FRENCH);
        values.put(Letterhead.class, new Letterhead("Lantern Road 6", "555-0143"));
        values.put(Side.class, Side.RIGHT);
        values.put(SheetKind.class, SheetKind.OSTEOTOMY);
        values.put(SheetInputs.class, SheetInputs.NONE);
        values.put(CutRequest.class, new CutRequest(1, Side.RIGHT, 10, 900, 900, 900, 500, 900, 5, null));
        values.put(ComparisonId.class, new ComparisonId(UUID.randomUUID()));
        values.put(Intent.class, new Intent(Option.WATCH, "a straight leg", "it straightens by itself", null, null));
        values.put(Bone.class, Bone.TIBIA);
        values.put(Measure.class, Measure.STRAIGHT);
        values.put(Span.class, Span.upTo(DAY));
        values.put(BoneEnd.class, BoneEnd.PROXIMAL);
        values.put(LocalDate.class, DAY);
        values.put(String.class, String.valueOf(data.localNumber()));
        values.put(int.class, 0);
        values.put(Portion.class, Portion.ALL);
        values.put(long.class, 1L);
        values.put(java.util.Locale.class, java.util.Locale.ENGLISH);
        values.put(java.io.InputStream.class, TestFilm.of(60, 80).stream());
        values.put(SiteData.class, new SiteData("CHANGED", "Changed hospital", "Europe/Lisbon"));
        values.put(
                Membership.class,
                new Membership(surgeon.site(), Role.NURSE, LocalDate.of(2026, 1, 1), LocalDate.of(2030, 1, 1)));
        return values;
    }

    private Map<String, Object[]> byMethod(
            Sender surgeon,
            ChildId child,
            FactId fact,
            ReadingDraft draft,
            FilmId film,
            Map<String, Object[]> treated) {
        Reading reading = surgeon.does(() -> readings.ofFilm(film)).getFirst();
        long version = surgeon.does(() -> films.find(film)).orElseThrow().version();
        var settings = draft.settings();
        var request = new MeasureRequest(1, draft.revision(), java.util.List.of(), java.util.List.of(), true);
        Finding size = new BodySize(LocalDate.of(2025, 1, 1), Length.ofCentimetres(135), null);
        var visit = surgeon.does(() -> visits.of(child)).open().orElseThrow();
        var today = surgeon.does(() -> sites.today(surgeon.site()));
        var asked = new Visit.Asked(today.plusDays(30), "bowed again");
        var ended = endedChild(surgeon, today);
        var call = new Attempt(
                today, Channel.CALL, AttemptOutcome.NO_ANSWER, Optional.empty(), Optional.empty(), Optional.empty());
        surgeon.does(() -> {
            recall.tried(visit, call);
            return visit;
        });
        var bookedSoon = new Happening.Booked(Appointment.of(today.plusDays(10), null));
        var moving = reader.child(surgeon, CHILD.birthDate());
        surgeon.does(() -> visits.record(visits.of(moving).open().orElseThrow(), bookedSoon));
        var elsewhere = reader.surgeon();
        var coming = reader.child(elsewhere, CHILD.birthDate());
        var leaves = surgeon.does(() -> transfers.ask(moving, elsewhere.site(), "the family moved"));
        var comes = elsewhere.does(() -> transfers.ask(coming, surgeon.site(), "the family moved"));
        var moved = reader.child(surgeon, CHILD.birthDate());
        var handed = surgeon.does(() -> transfers.ask(moved, elsewhere.site(), "the family moved"));
        elsewhere.does(() -> transfers.accept(handed.id()));
        var shares = surgeon.does(() -> sharedCare.ask(moving, elsewhere.site(), "seen there, too"));
        var offered = elsewhere.does(() -> sharedCare.ask(coming, surgeon.site(), "seen there, too"));
        Fact<?> kept =
                surgeon.does(() -> examinations.of(child)).sizes().standing().getFirst();
        var methods = new HashMap<String, Object[]>(treated);
        methods.putAll(Map.ofEntries(
                Map.entry("ExaminationService.record", new Object[] {child, new FactId(ids.next()), size}),
                Map.entry("ExaminationService.recordTogether", new Object[] {child, Map.of(new FactId(ids.next()), size)
                }),
                Map.entry(
                        "ExaminationService.correct",
                        new Object[] {child, fact, new FactId(ids.next()), size, "typed wrongly"}),
                Map.entry("ExaminationService.withdraw", new Object[] {child, kept, new FactId(ids.next()), "not theirs"
                }),
                Map.entry("AccessLogService.whoSaw", new Object[] {child.value()}),
                Map.entry("PatientService.open", new Object[] {child, "course"}),
                Map.entry("PatientService.all", new Object[] {surgeon.site(), java.util.List.of(child), "course"}),
                Map.entry(
                        "PatientService.match", new Object[] {surgeon.site(), CHILD.localNumber(), CHILD.birthDate()}),
                Map.entry("FilmService.assign", new Object[] {film, version, child, null, "it is theirs"}),
                Map.entry("FilmService.layBack", new Object[] {film, version, "not theirs"}),
                Map.entry("ComparisonService.open", new Object[] {film, draft.film()}),
                Map.entry("DraftService.find", new Object[] {draft.film()}),
                Map.entry("DraftService.begin", new Object[] {draft.film()}),
                Map.entry("DraftService.measure", new Object[] {draft.id(), request}),
                Map.entry("DraftService.answer", new Object[] {draft}),
                Map.entry("DraftService.choose", new Object[] {draft.id(), settings}),
                Map.entry("DraftService.discard", new Object[] {draft.id()}),
                Map.entry("ReadingService.sign", new Object[] {draft.id(), draft.revision(), "read anew"}),
                Map.entry("VisitService.record", new Object[] {visit, new Happening.Arrived(today, Optional.empty())}),
                Map.entry("VisitService.resume", new Object[] {ended, surgeon.site(), asked}),
                Map.entry("DueByService.signLimits", new Object[] {surgeon.site(), Limits.DEFAULTS, "as agreed"}),
                Map.entry("BookingService.preview", new Object[] {surgeon.site(), bookings(today)}),
                Map.entry("BookingService.take", new Object[] {surgeon.site(), bookings(today)}),
                Map.entry("FamilyService.save", new Object[] {surgeon.site(), child, Family.UNKNOWN}),
                Map.entry("TheatreService.next", new Object[] {surgeon.site(), DAY.minusDays(1)}),
                Map.entry("RecallService.late", new Object[] {List.of(surgeon.site()), 0}),
                Map.entry("RecallService.tried", new Object[] {visit, call}),
                Map.entry("EmergencyService.review", new Object[] {taken(surgeon, child), true, "it was right"}),
                Map.entry("SharedCareService.ask", new Object[] {child, elsewhere.site(), "seen there, too"}),
                Map.entry("SharedCareService.of", new Object[] {moving}),
                Map.entry("SharedCareService.accept", new Object[] {offered.id()}),
                Map.entry("SharedCareService.decline", new Object[] {offered.id(), "no place"}),
                Map.entry("SharedCareService.end", new Object[] {shares.id(), "seen here alone"}),
                Map.entry("TransferService.ask", new Object[] {child, elsewhere.site(), "the family moved"}),
                Map.entry("TransferService.of", new Object[] {moving}),
                Map.entry("TransferService.accept", new Object[] {comes.id()}),
                Map.entry("TransferService.decline", new Object[] {comes.id(), "no place"}),
                Map.entry("TransferService.withdraw", new Object[] {leaves.id(), "they stay"}),
                Map.entry("RatesService.choose", new Object[] {surgeon.site(), RateSource.PUBLISHED, "to compare"}),
                Map.entry("ReadingService.answer", new Object[] {reading})));
        return methods;
    }
}
