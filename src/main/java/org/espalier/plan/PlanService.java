package org.espalier.plan;

import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.prognosis.Ahead;
import org.espalier.prognosis.LimbAhead;
import org.espalier.prognosis.PrognosisService;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The options of a limb side by side, and comparisons as they were kept with what was meant and expected. */
@Service
@Transactional
public class PlanService {

    private final PrognosisService prognoses;
    private final PatientService patients;
    private final JdbcComparisonRepository comparisons;
    private final OptionsDesk desk;
    private final CurrentStaff staff;
    private final Clock clock;

    PlanService(
            PrognosisService prognoses,
            PatientService patients,
            JdbcComparisonRepository comparisons,
            OptionsDesk desk,
            CurrentStaff staff,
            Clock clock) {
        this.prognoses = prognoses;
        this.patients = patients;
        this.comparisons = comparisons;
        this.desk = desk;
        this.staff = staff;
        this.clock = clock;
    }

    /** Empty when there is no such child that the caller may see, or neither physis of the knee is followed. */
    public Optional<Options> options(ChildId child, Side side) {
        return prognoses.ahead(child).flatMap(ahead -> desk.of(ahead, side));
    }

    /**
     * Of the limb that asks for it first: one that a plate turns, else one with something to correct, else the right.
     */
    public Optional<Options> options(ChildId child) {
        return prognoses.ahead(child).flatMap(ahead -> desk.of(ahead, first(ahead)));
    }

    private static Side first(Ahead ahead) {
        return Stream.<Predicate<LimbAhead>>of(LimbAhead::isHeld, LimbAhead::isBent)
                .flatMap(asks -> ahead.limbs().stream().filter(asks))
                .map(LimbAhead::side)
                .findFirst()
                .orElse(Side.RIGHT);
    }

    /** Comparisons of a child, the newest first. */
    public List<SavedComparison> saved(ChildId child) {
        return patients.open(child, "plan").map(_ -> comparisons.all(child)).orElse(List.of());
    }

    /**
     * Keeps the options of a limb as they stand today. Sent again with the same id it is kept once.
     *
     * @param intent what the surgeon means to do and expects; null where only the options are kept
     * @throws IllegalArgumentException when there is no such child that the caller may see
     */
    public void keep(ChildId child, Side side, ComparisonId id, @Nullable Intent intent) {
        var options = options(child, side)
                .orElseThrow(() -> new IllegalArgumentException("no options of " + side + " of " + child));
        if (!staff.has(Role.SURGEON, options.ahead().prognosis().child().site())) {
            throw new AccessDeniedException("a surgeon says what is meant");
        }
        comparisons.add(
                child,
                new SavedComparison(
                        id,
                        side,
                        options.ahead().today(),
                        Optional.ofNullable(intent),
                        words(options),
                        staff.find(),
                        staff.name(),
                        clock.instant().truncatedTo(ChronoUnit.MICROS)));
    }

    private static List<OptionCells> words(Options options) {
        return options.open().stream()
                .map(option -> OptionWords.of(options, option))
                .toList();
    }
}
