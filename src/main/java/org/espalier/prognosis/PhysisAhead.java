package org.espalier.prognosis;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.espalier.science.forecast.Cause;
import org.espalier.science.forecast.CentreRates;
import org.espalier.science.forecast.Deformity;
import org.espalier.science.forecast.PhysisSite;
import org.espalier.science.forecast.Spread;
import org.espalier.science.quantity.Angle;
import org.espalier.treatment.PhysisKey;
import org.espalier.treatment.PhysisStanding;
import org.espalier.treatment.PhysisState;

/** One physis of the knee with every step that could be taken there, and where each leads. */
public final class PhysisAhead {

    private static final int MONTHS_A_FILM_TELLS = 12;

    private final PhysisSite site;
    private final PhysisStanding standing;
    private final ChildFacts facts;
    private final InputBuilder inputs;
    private final CentreRates rates;
    private final Optional<FilmAngle> last;
    private final Optional<Deformity> left;
    private final Optional<ForecastInputs> held;
    private final Map<PhysisStep, Optional<Outlook>> outlooks = new EnumMap<>(PhysisStep.class);

    PhysisAhead(PhysisSite site, PhysisStanding standing, ChildFacts facts, InputBuilder inputs, CentreRates rates) {
        this.site = site;
        this.standing = standing;
        this.facts = facts;
        this.inputs = inputs;
        this.rates = rates;
        last = facts.films().latest(standing.physis().side(), Plates.angle(site));
        left = last.flatMap(film -> Reckoning.deformity(site, standing.targetAngle(), film));
        held = inputs.placed(site, standing);
    }

    public PhysisSite site() {
        return site;
    }

    public PhysisKey physis() {
        return standing.physis();
    }

    public PhysisState state() {
        return standing.state();
    }

    /** The joint angle it is guided to. */
    public Angle target() {
        return standing.targetAngle();
    }

    /** The joint angle as last read. */
    public Optional<FilmAngle> last() {
        return last;
    }

    /** Which way it is bent from its target by the last film; empty within reader error of it. */
    public Optional<Deformity> left() {
        return left;
    }

    /** What the plate that is in corrects; empty when nothing holds it to a side. */
    public Optional<Deformity> heldAgainst() {
        return held.map(ForecastInputs::deformity);
    }

    /** When a screw of what is in was seen broken, if one was. */
    public Optional<LocalDate> seenBroken() {
        return held.flatMap(made -> Optional.ofNullable(made.brokenOn()));
    }

    /** Where a step leads; empty where the step cannot be taken here, or nothing is known. */
    public Optional<Outlook> outlook(PhysisStep step) {
        return outlooks.computeIfAbsent(step, this::reckon);
    }

    /** Where it is going while a plate of the step is in. */
    public Optional<Forecast> forecast(PhysisStep step) {
        return outlook(step).filter(Forecast.class::isInstance).map(Forecast.class::cast);
    }

    private Optional<Outlook> reckon(PhysisStep step) {
        if (facts.sex().isEmpty() || standing.state() == PhysisState.MATURE) {
            return Optional.empty();
        }
        return switch (step) {
            case AS_IT_IS ->
                held.<Outlook>map(made -> Forecast.of(made, true, rates)).or(this::asReleased);
            case PLATE_TODAY -> left.filter(_ -> mayBePlated()).flatMap(this::plated);
            case EXCHANGED_TODAY -> held.flatMap(made -> plated(made.deformity()));
            case OUT_TODAY -> outOn(facts.today(), false);
            case OUT_AT_TARGET -> targetDay().flatMap(day -> outOn(day, false));
            case SCREW_OUT_TODAY -> held.isPresent() ? outOn(facts.today(), true) : Optional.empty();
            case MOVED_TODAY ->
                left.filter(now -> heldAgainst().filter(now::equals).isEmpty() && held.isPresent())
                        .flatMap(this::plated);
        };
    }

    private boolean mayBePlated() {
        var since = facts.today().minusMonths(MONTHS_A_FILM_TELLS);
        return !standing.state().hasTether()
                && last.filter(film -> !film.on().isBefore(since)).isPresent();
    }

    private Optional<Outlook> plated(Deformity deformity) {
        return inputs.ifPlacedToday(site, standing, deformity).map(made -> Forecast.of(made, false, rates));
    }

    private Optional<Outlook> outOn(LocalDate day, boolean parked) {
        return held.<Outlook>map(made -> Resting.of(new Resting.Held(made, day), Optional.empty(), parked, rates))
                .or(() -> standing.state() == PhysisState.PARKED ? resting(false) : Optional.empty());
    }

    private Optional<Outlook> asReleased() {
        return switch (standing.state()) {
            case PARKED -> resting(true);
            case RELEASED -> resting(false);
            default -> Optional.empty();
        };
    }

    private Optional<Outlook> resting(boolean parked) {
        return inputs.last(site, standing)
                .map(was -> Resting.of(was, last.filter(film -> film.on().isAfter(was.to())), parked, rates));
    }

    private Optional<LocalDate> targetDay() {
        return forecast(PhysisStep.AS_IT_IS).flatMap(this::targetDay);
    }

    private Optional<LocalDate> targetDay(Forecast forecast) {
        return forecast.arrival().middle().filter(day -> day.isAfter(facts.today()));
    }

    /**
     * How its joint angle is spread on a day from today on; empty while it was never read. A plate placed today comes
     * out on the day its target is as likely reached as not; one that is in stays unless the step takes it out.
     */
    Optional<Spread> joint(PhysisStep step, LocalDate day) {
        return on(step, day)
                .flatMap(outlook -> switch (outlook) {
                    case Forecast forecast -> Optional.of(forecast.spread(day));
                    case Resting resting -> Optional.of(resting.spread(day));
                    case Outlook.None none -> Optional.<Spread>empty();
                })
                .or(this::unmoved);
    }

    private Optional<Outlook> on(PhysisStep step, LocalDate day) {
        boolean stillIn = step == PhysisStep.OUT_AT_TARGET
                && targetDay().filter(day::isBefore).isPresent();
        var outlook = outlook(stillIn ? PhysisStep.AS_IT_IS : step);
        return outlook.filter(Forecast.class::isInstance)
                .map(Forecast.class::cast)
                .filter(forecast -> !forecast.isPlaced())
                .flatMap(forecast -> afterTarget(forecast, day))
                .or(() -> outlook);
    }

    private Optional<Outlook> afterTarget(Forecast forecast, LocalDate day) {
        return targetDay(forecast)
                .filter(target -> !day.isBefore(target))
                .map(target -> Resting.of(new Resting.Held(forecast.inputs(), target), Optional.empty(), false, rates));
    }

    private Optional<Spread> unmoved() {
        var cause = left.map(bend -> Causes.of(facts.examination().diagnoses().standing(), physis().side(), bend)
                        .cause())
                .orElse(Cause.IDIOPATHIC_VALGUS);
        return last.map(film -> Spread.ofNormal(film.value(), rates.filmError(site, cause)));
    }
}
