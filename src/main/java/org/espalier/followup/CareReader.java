package org.espalier.followup;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.patient.ChildId;
import org.espalier.prognosis.Forecast;
import org.espalier.prognosis.PhysisPrognosis;
import org.espalier.prognosis.PrognosisService;
import org.espalier.science.growth.PlateWindow;
import org.espalier.science.quantity.Side;
import org.espalier.treatment.ImplantInPlace;
import org.espalier.treatment.ImplantService;
import org.espalier.treatment.LimbCondition;
import org.espalier.treatment.PhysisKey;
import org.espalier.treatment.PhysisStanding;
import org.espalier.treatment.PhysisState;
import org.espalier.treatment.StandingPlan;
import org.espalier.treatment.Treatment;
import org.espalier.treatment.TreatmentService;
import org.springframework.stereotype.Component;

/** Gathers what the rules need to know of a child. */
@Component
class CareReader {

    /** A plated osteotomy of the tibia had healed by then (11 limbs, PMC8578239). */
    private static final int MONTHS_TO_HEAL = 3;

    private static final List<LimbCondition> HELD_BONES = List.of(LimbCondition.IN_CAST, LimbCondition.IN_FRAME);

    private final JdbcCareRepository care;
    private final JdbcLimitsRepository limits;
    private final TreatmentService treatments;
    private final ImplantService implants;
    private final PrognosisService prognoses;
    private final SiteService sites;

    CareReader(
            JdbcCareRepository care,
            JdbcLimitsRepository limits,
            TreatmentService treatments,
            ImplantService implants,
            PrognosisService prognoses,
            SiteService sites) {
        this.care = care;
        this.treatments = treatments;
        this.implants = implants;
        this.prognoses = prognoses;
        this.limits = limits;
        this.sites = sites;
    }

    SiteId site(ChildId child) {
        return care.child(child).site();
    }

    /** What a hospital's dates rest on beside the children's facts. */
    SiteRules rules(SiteId site) {
        var signed = limits.of(site);
        return new SiteRules(signed, ownWait(site).orElse(signed.waitMonths()));
    }

    /** The site's own wait from asking for theatre to theatre; empty while its records are too few to tell. */
    Optional<Double> ownWait(SiteId site) {
        return care.waitMonths(site, sites.today(site).minusYears(2));
    }

    CareFacts read(ChildId child, Optional<LocalDate> asked, double waitMonths) {
        var row = care.child(child);
        var filmed = care.lastFilms(child);
        var treated = treatments.of(child);
        var prognosis = prognoses.of(child);
        var inDoubt = inDoubt(treated);
        List<PlateFacts> plates = treated.physes().stream()
                .filter(CareReader::isFollowed)
                .map(standing -> facts(
                        standing,
                        treated,
                        row.since(),
                        filmed,
                        inDoubt.contains(standing.physis()),
                        prognosis.flatMap(all -> all.physis(standing.physis()))))
                .toList();
        return new CareFacts(
                sites.today(row.site()),
                row.birth(),
                row.since(),
                row.lastSeen(),
                row.boneDisease(),
                row.tibiaVara(),
                plates,
                asked,
                waitMonths);
    }

    /** Those that bear on the knee, and any other to which something was done. */
    private static boolean isFollowed(PhysisStanding standing) {
        return PhysisKey.ofKnee(standing.physis().side()).contains(standing.physis())
                || standing.state().hasTether()
                || standing.state() == PhysisState.PLANNED
                || standing.state() == PhysisState.RELEASED;
    }

    private static PlateFacts facts(
            PhysisStanding standing,
            Treatment treated,
            LocalDate inCareSince,
            List<JdbcCareRepository.Filmed> filmed,
            boolean inDoubt,
            Optional<PhysisPrognosis> prognosis) {
        var key = standing.physis();
        var last = filmed.stream()
                .filter(film -> film.side() == key.side())
                .map(JdbcCareRepository.Filmed::on)
                .findFirst();
        var window = prognosis.flatMap(CareReader::window);
        return new PlateFacts(
                new GrowthPlate(key.side(), key.bone(), key.end()),
                following(standing.state()),
                isListed(key, treated),
                standing.since().orElse(inCareSince),
                last,
                window.map(PlateWindow.Dates::by),
                window.flatMap(PlateWindow.Dates::notBefore),
                inDoubt,
                prognosis
                        .flatMap(PhysisPrognosis::forecast)
                        .filter(Forecast::isPlaced)
                        .map(ForecastOutlook::new),
                healing(treated, key.side()));
    }

    private static Optional<PlateWindow.Dates> window(PhysisPrognosis prognosis) {
        return prognosis.window().filter(PlateWindow.Dates.class::isInstance).map(PlateWindow.Dates.class::cast);
    }

    /** Whether something is decided or asked for there and not done yet. */
    private static boolean isListed(PhysisKey key, Treatment treated) {
        return treated.waiting().stream()
                .map(StandingPlan::plan)
                .anyMatch(plan -> plan.physis().filter(key::equals).isPresent());
    }

    private static Following following(PhysisState state) {
        return switch (state) {
            case TETHERED -> Following.TETHERED;
            case PARKED -> Following.PARKED;
            case PLANNED -> Following.PLANNED;
            case RELEASED -> Following.RELEASED;
            case BRACED -> Following.BRACED;
            case WATCHED -> Following.WATCHED;
            case MATURE -> Following.MATURE;
        };
    }

    /** Physes with a screw or plate in doubt, by what was found or by a reading. */
    private Set<PhysisKey> inDoubt(Treatment treated) {
        return treated.tethersIn().isEmpty()
                ? Set.of()
                : implants.of(treated.child()).stream()
                        .filter(ImplantInPlace::isInDoubt)
                        .map(one -> one.tether().physis())
                        .collect(Collectors.toSet());
    }

    /** A limb in cast or frame, and one that was cut, until a bone has healed. */
    private static Optional<PlateFacts.Healing> healing(Treatment treated, Side side) {
        var conditions = treated.limb(side).conditions();
        var cut = treated.lastCut(side)
                .filter(day -> day.plusMonths(MONTHS_TO_HEAL).isAfter(treated.today()));
        return cut.or(() -> HELD_BONES.stream()
                        .flatMap(condition -> Optional.ofNullable(conditions.get(condition)).stream())
                        .max(Comparator.naturalOrder()))
                .map(since -> new PlateFacts.Healing(since, conditions.containsKey(LimbCondition.IN_FRAME)));
    }
}
