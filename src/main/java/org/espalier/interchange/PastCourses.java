package org.espalier.interchange;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.espalier.science.forecast.Cause;
import org.espalier.science.forecast.Deformity;
import org.espalier.science.forecast.PhysisSite;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Sex;

/** A folder of past courses: children, limbs, films and events, each a file. */
final class PastCourses {

    private static final String LIMB_ID = "limb_id";
    private static final String CHILD_ID = "child_id";
    private static final Map<String, Sex> SEXES = ordered("F", Sex.FEMALE, "M", Sex.MALE);
    private static final Map<String, PhysisSite> SITES =
            ordered("distal femur", PhysisSite.DISTAL_FEMUR, "proximal tibia", PhysisSite.PROXIMAL_TIBIA);
    private static final Map<String, PhysisSite> ANGLES =
            ordered("mLDFA", PhysisSite.DISTAL_FEMUR, "mMPTA", PhysisSite.PROXIMAL_TIBIA);
    private static final Map<String, Deformity> DIRECTIONS =
            ordered("varus", Deformity.VARUS, "valgus", Deformity.VALGUS);
    private static final Map<String, Boolean> EVENTS = ordered("plate removed", false, "broken screw seen", true);
    private static final Map<String, Cause> CAUSES = causes();

    /** Whether a film of this phase shows what the plate does. */
    private static final Map<String, Boolean> PHASES = phases();

    private final Path folder;
    private final List<FileProblem> problems;
    private final Map<String, PastLimb.Child> children = new LinkedHashMap<>();
    private final Map<String, PastLimb> limbs = new LinkedHashMap<>();

    private PastCourses(Path folder, List<FileProblem> problems) {
        this.folder = folder;
        this.problems = problems;
    }

    /**
     * Reads the four files of a folder.
     *
     * @param problems takes what is wrong with them
     * @return the good limbs by name, in the order of the file
     */
    static Map<String, PastLimb> read(Path folder, List<FileProblem> problems) throws IOException {
        var courses = new PastCourses(folder, problems);
        courses.each("children.csv", List.of(CHILD_ID, "sex", "birth_date", "diagnosis"), courses::child);
        courses.each(
                "limbs.csv",
                List.of(LIMB_ID, CHILD_ID, "side", "plate_date", "site", "direction", "bone_age_at_plate"),
                courses::limb);
        courses.each("films.csv", List.of(LIMB_ID, "date", "angle_name", "angle_deg", "phase"), courses::film);
        courses.each("events.csv", List.of(LIMB_ID, "date", "event"), courses::event);
        return courses.limbs;
    }

    private void each(String name, List<String> columns, Consumer<Cells> taker) throws IOException {
        each(folder.resolve(name), columns, problems, taker);
    }

    static void each(Path file, List<String> columns, List<FileProblem> problems, Consumer<Cells> taker)
            throws IOException {
        CsvTable table = CsvTable.read(file.toString(), Files.readAllBytes(file), columns);
        problems.addAll(table.problems());
        table.rows().forEach(row -> taker.accept(new Cells(file.toString(), row, problems)));
    }

    private void child(Cells cells) {
        Optional<String> id = cells.name(CHILD_ID);
        Optional<Sex> sex = cells.oneOf("sex", SEXES);
        Optional<LocalDate> birth = cells.date("birth_date");
        Optional<Cause> cause = cells.oneOf("diagnosis", CAUSES);
        if (id.isPresent() && sex.isPresent() && birth.isPresent() && cause.isPresent()) {
            var child =
                    new PastLimb.Child(id.orElseThrow(), sex.orElseThrow(), birth.orElseThrow(), cause.orElseThrow());
            keepOnce(cells, CHILD_ID, children, child.id(), child);
        }
    }

    private void limb(Cells cells) {
        Optional<String> id = cells.name(LIMB_ID);
        Optional<PastLimb.Child> child = cells.named(CHILD_ID, children, "children.csv");
        Optional<LocalDate> plate = cells.date("plate_date");
        Optional<PhysisSite> site = cells.oneOf("site", SITES);
        Optional<Deformity> deformity = cells.oneOf("direction", DIRECTIONS);
        Optional<Double> boneAge =
                cells.isEmpty("bone_age_at_plate") ? Optional.of(-1.0) : cells.number("bone_age_at_plate", 0, 25);
        if (id.isPresent()
                && child.isPresent()
                && plate.isPresent()
                && site.isPresent()
                && deformity.isPresent()
                && boneAge.isPresent()) {
            if (plate.orElseThrow().isBefore(child.orElseThrow().birth())
                    || plate.orElseThrow().isAfter(child.orElseThrow().birth().plusYears(25))) {
                cells.refuse("plate_date", FileReason.PLATE_DAY_IMPOSSIBLE);
                return;
            }
            double years = boneAge.orElseThrow();
            var limb = new PastLimb(
                    child.orElseThrow(),
                    plate.orElseThrow(),
                    site.orElseThrow(),
                    deformity.orElseThrow(),
                    years < 0 ? OptionalDouble.empty() : OptionalDouble.of(years));
            keepOnce(cells, LIMB_ID, limbs, id.orElseThrow(), limb);
        }
    }

    private void film(Cells cells) {
        Optional<PastLimb> limb = cells.named(LIMB_ID, limbs, "limbs.csv");
        Optional<LocalDate> day = cells.date("date");
        Optional<PhysisSite> angleOf = cells.oneOf("angle_name", ANGLES);
        Optional<Double> degrees = cells.number("angle_deg", 30, 150);
        Optional<Boolean> tells = cells.oneOf("phase", PHASES);
        if (limb.isPresent() && day.isPresent() && angleOf.isPresent() && degrees.isPresent() && tells.isPresent()) {
            if (angleOf.orElseThrow() != limb.orElseThrow().site()) {
                cells.refuse("angle_name", FileReason.ANGLE_OF_OTHER_BONE);
            } else if (tells.orElseThrow()) {
                limb.orElseThrow().add(new PastLimb.Film(day.orElseThrow(), Angle.ofDegrees(degrees.orElseThrow())));
            }
        }
    }

    private void event(Cells cells) {
        Optional<PastLimb> limb = cells.named(LIMB_ID, limbs, "limbs.csv");
        Optional<LocalDate> day = cells.date("date");
        Optional<Boolean> broken = cells.oneOf("event", EVENTS);
        if (limb.isPresent() && day.isPresent() && broken.orElse(false)) {
            limb.orElseThrow().sawBroken(day.orElseThrow());
        }
    }

    private static <T> void keepOnce(Cells cells, String column, Map<String, T> all, String id, T value) {
        if (all.putIfAbsent(id, value) != null) {
            cells.refuse(column, FileReason.STANDS_TWICE, id);
        }
    }

    private static <T> Map<String, T> ordered(String first, T firstValue, String second, T secondValue) {
        var map = new LinkedHashMap<String, T>();
        map.put(first, firstValue);
        map.put(second, secondValue);
        return map;
    }

    private static Map<String, Boolean> phases() {
        var phases = new LinkedHashMap<String, Boolean>();
        phases.put("before", true);
        phases.put("plate", true);
        phases.put("after removal", false);
        return phases;
    }

    private static Map<String, Cause> causes() {
        var causes = new LinkedHashMap<String, Cause>();
        causes.put("idiopathic valgus", Cause.IDIOPATHIC_VALGUS);
        causes.put("idiopathic varus", Cause.IDIOPATHIC_VARUS);
        causes.put("infantile tibia vara", Cause.INFANTILE_TIBIA_VARA);
        causes.put("late-onset tibia vara", Cause.LATE_ONSET_TIBIA_VARA);
        causes.put("skeletal dysplasia", Cause.SKELETAL_DYSPLASIA);
        causes.put("rickets", Cause.RICKETS);
        return causes;
    }
}
