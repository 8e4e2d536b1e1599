package org.espalier.prognosis;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.science.alignment.ChangeLimit;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.forecast.Cause;
import org.espalier.science.forecast.CentreRates;
import org.espalier.science.forecast.Deformity;
import org.espalier.science.forecast.LimbForecast;
import org.espalier.science.forecast.PhysisSite;
import org.espalier.science.growth.Maturity;
import org.espalier.science.growth.PlateWindow;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Side;
import org.espalier.treatment.PhysisKey;
import org.espalier.treatment.PhysisStanding;
import org.espalier.treatment.PhysisState;

/** Reckons a child's prognosis from the facts. */
final class Reckoning {

    private static final int MONTHS_A_FILM_TELLS = 12;

    private final ChildFacts facts;
    private final UsedRates rates;
    private final InputBuilder inputs;
    private final Optional<GrowthReckoning> growth;

    Reckoning(ChildFacts facts, UsedRates rates) {
        this.facts = facts;
        this.rates = rates;
        inputs = new InputBuilder(facts, rates.learnt().map(UsedRates.Learnt::id));
        growth = facts.growthAge(facts.today()).map(age -> new GrowthReckoning(facts, age));
    }

    Prognosis prognosis() {
        List<PhysisPrognosis> physes =
                facts.treatment().physes().stream().map(this::physis).toList();
        var age = facts.growthAge(facts.today());
        return new Prognosis(
                facts.child(),
                facts.today(),
                rates,
                age,
                age.map(Maturity::of),
                physes,
                Stream.of(Side.RIGHT, Side.LEFT)
                        .flatMap(side -> limb(side, physes).stream())
                        .toList(),
                Stream.of(Side.RIGHT, Side.LEFT)
                        .flatMap(side -> NaturalOutlook.of(facts, side).stream())
                        .toList(),
                LengthOutlook.of(facts),
                early());
    }

    private PhysisPrognosis physis(PhysisStanding standing) {
        var key = standing.physis();
        var site = Plates.site(key);
        var last = site.flatMap(one -> facts.films().latest(key.side(), Plates.angle(one)));
        var deformity = site.flatMap(one -> last.flatMap(film -> deformity(one, standing.targetAngle(), film)));
        return new PhysisPrognosis(
                key,
                standing.state(),
                standing.targetAngle(),
                last,
                site.map(one -> outlook(one, standing, last, deformity))
                        .orElseGet(() -> new Outlook.None(Outlook.Reason.NOT_AT_THE_KNEE)),
                growth.map(reckoned -> reckoned.left(key)).orElse(List.of()),
                site.flatMap(one -> window(one, standing, last, deformity)));
    }

    private Outlook outlook(
            PhysisSite site, PhysisStanding standing, Optional<FilmAngle> last, Optional<Deformity> deformity) {
        if (standing.state() == PhysisState.MATURE) {
            return new Outlook.None(Outlook.Reason.MATURE);
        }
        if (facts.sex().isEmpty()) {
            return new Outlook.None(Outlook.Reason.SEX_UNKNOWN);
        }
        var placed = inputs.placed(site, standing);
        if (placed.isPresent()) {
            return Forecast.of(placed.get(), true, rates.rates());
        }
        return switch (standing.state()) {
            case TETHERED -> new Outlook.None(Outlook.Reason.NOT_TO_A_SIDE);
            case PARKED, RELEASED -> resting(site, standing, last);
            default -> ifPlacedToday(site, standing, last, deformity);
        };
    }

    private Outlook resting(PhysisSite site, PhysisStanding standing, Optional<FilmAngle> last) {
        return inputs.last(site, standing)
                .<Outlook>map(held -> Resting.of(
                        held,
                        last.filter(film -> film.on().isAfter(held.to())),
                        standing.state() == PhysisState.PARKED,
                        rates.rates()))
                .orElseGet(() -> new Outlook.None(Outlook.Reason.NEVER_HELD_TO_A_SIDE));
    }

    private Outlook ifPlacedToday(
            PhysisSite site, PhysisStanding standing, Optional<FilmAngle> last, Optional<Deformity> deformity) {
        LocalDate since = facts.today().minusMonths(MONTHS_A_FILM_TELLS);
        if (last.filter(film -> !film.on().isBefore(since)).isEmpty()) {
            return new Outlook.None(Outlook.Reason.NO_RECENT_FILM);
        }
        return deformity
                .flatMap(bend -> inputs.ifPlacedToday(site, standing, bend))
                .<Outlook>map(made -> Forecast.of(made, false, rates.rates()))
                .orElseGet(() -> new Outlook.None(Outlook.Reason.AT_TARGET));
    }

    /** Which way the joint is bent from its target; empty within reader error of it. */
    static Optional<Deformity> deformity(PhysisSite site, Angle target, FilmAngle film) {
        Angle read = new Angle(film.value());
        Angle reader = ChangeLimit.of(Plates.angle(site), ChangeLimit.STRAIGHT)
                .map(ChangeLimit::reader)
                .orElseThrow();
        return read.minus(target).abs().compareTo(reader) <= 0
                ? Optional.empty()
                : Stream.of(Deformity.values())
                        .filter(bend -> bend.degreesLeft(site, read, target) > 0)
                        .findFirst();
    }

    /**
     * With a plate in it is the time in which another could still do what this one does not; none where the joint lies
     * past its target, or is held to no side.
     */
    private Optional<PlateWindow> window(
            PhysisSite site, PhysisStanding standing, Optional<FilmAngle> last, Optional<Deformity> deformity) {
        boolean elsewhere = standing.state() == PhysisState.TETHERED
                && inputs.placed(site, standing)
                        .map(ForecastInputs::deformity)
                        .filter(corrected -> deformity.isEmpty() || deformity.get() == corrected)
                        .isEmpty();
        if (elsewhere || standing.state() == PhysisState.MATURE) {
            return Optional.empty();
        }
        return growth.flatMap(reckoned -> last.map(film -> reckoned.window(
                site,
                standing.physis(),
                deformity
                        .map(bend -> new Angle(bend.degreesLeft(site, new Angle(film.value()), standing.targetAngle())))
                        .orElse(Angle.ZERO))));
    }

    private Optional<LimbOutlook> limb(Side side, List<PhysisPrognosis> physes) {
        List<PhysisPrognosis> ofLimb =
                physes.stream().filter(one -> one.physis().side() == side).toList();
        var femur = bone(PhysisSite.DISTAL_FEMUR, ofLimb);
        var tibia = bone(PhysisSite.PROXIMAL_TIBIA, ofLimb);
        var ends = ofLimb.stream()
                .flatMap(one -> one.forecast().filter(Forecast::isPlaced).stream())
                .map(Forecast::growthEnds)
                .filter(day -> day.isAfter(facts.today()))
                .max(Comparator.naturalOrder());
        double jlca =
                facts.films().latest(side, Quantity.JLCA).map(FilmAngle::value).orElse(0.0);
        return ends.flatMap(day -> femur.flatMap(upper -> tibia.map(
                lower -> new LimbOutlook(side, facts.today(), new LimbForecast(upper, lower), new Angle(jlca), day))));
    }

    private Optional<LimbForecast.Bone> bone(PhysisSite site, List<PhysisPrognosis> ofLimb) {
        return ofLimb.stream()
                .filter(one -> Plates.site(one.physis()).filter(site::equals).isPresent())
                .findFirst()
                .flatMap(one -> one.last()
                        .map(film -> new LimbForecast.Bone(
                                new Angle(film.value()),
                                rates.rates()
                                        .filmError(
                                                site,
                                                one.forecast()
                                                        .map(Forecast::cause)
                                                        .orElse(Cause.IDIOPATHIC_VALGUS)),
                                one.forecast()
                                        .filter(Forecast::isPlaced)
                                        .map(placed -> placed.tether(facts.today())))));
    }

    /** While tibia vara that began early is held by nothing. */
    private Optional<EarlyDecision> early() {
        boolean held = facts.treatment().physes().stream()
                .anyMatch(one -> one.state().hasTether() || one.state() == PhysisState.RELEASED);
        var standing = facts.examination().diagnoses().standing();
        boolean early = Stream.of(Side.values())
                .anyMatch(side -> Causes.of(standing, side, Deformity.VARUS).cause() == Cause.INFANTILE_TIBIA_VARA);
        var decision = EarlyDecision.of(facts.birth());
        return early && !held && !facts.today().isAfter(decision.cutBefore())
                ? Optional.of(decision)
                : Optional.empty();
    }

    /**
     * What could be done at the knee of a side, and where each step leads; empty while none of its physes is followed.
     */
    Optional<LimbAhead> ahead(Side side) {
        return ahead(side, PhysisSite.DISTAL_FEMUR).flatMap(femur -> ahead(side, PhysisSite.PROXIMAL_TIBIA)
                .map(tibia -> new LimbAhead(side, femur, tibia)));
    }

    private Optional<PhysisAhead> ahead(Side side, PhysisSite site) {
        return facts.treatment().physes().stream()
                .filter(standing -> standing.physis().side() == side)
                .filter(standing ->
                        Plates.site(standing.physis()).filter(site::equals).isPresent())
                .findFirst()
                .map(standing -> new PhysisAhead(site, standing, facts, inputs, rates.rates()));
    }

    /** The inputs of every plate at the knee that holds or held a physis. */
    List<KeptInputs> plates() {
        return facts.treatment().physes().stream()
                .flatMap(standing -> Plates.site(standing.physis()).stream()
                        .flatMap(site -> inputs.all(site, standing).stream())
                        .map(made -> new KeptInputs(standing.physis(), made)))
                .toList();
    }

    /** The inputs of one plate and where it lies. */
    record KeptInputs(PhysisKey physis, ForecastInputs inputs) {

        /** A plate that is out is kept by published rates, once. */
        CentreRates ratesOf(UsedRates used) {
            return inputs.rates() == null ? CentreRates.published() : used.rates();
        }
    }
}
