package org.espalier.followup;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.patient.ChildId;
import org.espalier.prognosis.Forecast;
import org.espalier.prognosis.PhysisPrognosis;
import org.espalier.prognosis.PrognosisService;
import org.espalier.science.growth.PlateWindow;
import org.espalier.treatment.LimbCondition;
import org.espalier.treatment.PhysisKey;
import org.espalier.treatment.PhysisStanding;
import org.espalier.treatment.PhysisState;
import org.espalier.treatment.StandingPlan;
import org.espalier.treatment.Tether;
import org.espalier.treatment.Treatment;
import org.espalier.treatment.TreatmentService;
import org.springframework.stereotype.Component;

/** Gathers what the rules need to know of a child. */
@Component
class CareReader {

    private final JdbcCareRepository care;
    private final JdbcLimitsRepository limits;
    private final TreatmentService treatments;
    private final PrognosisService prognoses;
    private final SiteService sites;

    CareReader(
            JdbcCareRepository care,
            JdbcLimitsRepository limits,
            TreatmentService treatments,
            PrognosisService prognoses,
            SiteService sites) {
        this.care = care;
        this.treatments = treatments;
        this.prognoses = prognoses;
        this.limits = limits;
        this.sites = sites;
    }

    SiteId site(ChildId child) {
        return care.child(child).site();
    }

    CareFacts read(ChildId child, Optional<LocalDate> asked) {
        var row = care.child(child);
        var filmed = care.lastFilms(child);
        var treated = treatments.of(child);
        var prognosis = prognoses.of(child);
        List<PlateFacts> plates = treated.physes().stream()
                .filter(CareReader::isFollowed)
                .map(standing -> facts(
                        standing,
                        treated,
                        row.since(),
                        filmed,
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
                waitMonths(row.site()));
    }

    /** The site's own wait from asking for theatre to theatre; its limit while its records are too few to tell. */
    private double waitMonths(SiteId site) {
        return care.waitMonths(site, sites.today(site).minusYears(2))
                .orElseGet(() -> limits.of(site).waitMonths());
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
            Optional<PhysisPrognosis> prognosis) {
        var key = standing.physis();
        var last = filmed.stream()
                .filter(film -> film.side() == key.side())
                .map(JdbcCareRepository.Filmed::on)
                .findFirst();
        var window = prognosis.flatMap(CareReader::window);
        return new PlateFacts(
                new GrowthPlate(key.side(), key.bone(), key.end()),
                following(standing, treated),
                isListed(key, treated),
                standing.since().orElse(inCareSince),
                last,
                window.map(PlateWindow.Dates::by),
                window.flatMap(PlateWindow.Dates::notBefore),
                standing.tethersIn().stream().anyMatch(Tether::isInDoubt),
                prognosis
                        .flatMap(PhysisPrognosis::forecast)
                        .filter(Forecast::isPlaced)
                        .map(ForecastOutlook::new));
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

    private static Following following(PhysisStanding standing, Treatment treated) {
        var conditions = treated.limb(standing.physis().side()).conditions();
        boolean healing =
                conditions.containsKey(LimbCondition.IN_CAST) || conditions.containsKey(LimbCondition.IN_FRAME);
        return switch (standing.state()) {
            case TETHERED -> Following.TETHERED;
            case PARKED -> Following.PARKED;
            case PLANNED -> Following.PLANNED;
            case RELEASED -> healing ? Following.HEALING : Following.RELEASED;
            case BRACED -> Following.BRACED;
            case WATCHED -> healing ? Following.HEALING : Following.WATCHED;
            case MATURE -> Following.MATURE;
        };
    }
}
