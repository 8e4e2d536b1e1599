package org.espalier.prognosis;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.espalier.science.forecast.Deformity;
import org.espalier.science.forecast.PhysisSite;
import org.espalier.science.growth.GrowthAge;
import org.espalier.treatment.Hold;
import org.espalier.treatment.ImplantFinding;
import org.espalier.treatment.PhysisStanding;
import org.espalier.treatment.Screw;
import org.espalier.treatment.Tether;
import org.espalier.treatment.TetherPeriod;
import org.jspecify.annotations.Nullable;

/**
 * Makes the inputs of forecasts from the facts. The forecast follows the plate as it lies: a lateral one corrects
 * varus, a medial one valgus, whatever the limb looks like.
 */
final class InputBuilder {

    private static final Set<Hold> HOLDING = EnumSet.of(Hold.HOLDS, Hold.BROKEN);

    /** A film before the plate tells of its beginning for so long. */
    private static final int MONTHS_BEFORE = 12;

    private final ChildFacts facts;
    private final @Nullable UUID rates;

    /** @param rates the centre's rates the forecasts are made by; empty for the published ones */
    InputBuilder(ChildFacts facts, Optional<UUID> rates) {
        this.facts = facts;
        this.rates = rates.orElse(null);
    }

    /** A time in which something on one side held the physis. */
    private record Stretch(Deformity corrects, LocalDate from, Optional<LocalDate> to, List<ImplantFinding> findings) {

        private Stretch until(LocalDate day) {
            return new Stretch(corrects, from, Optional.of(day), findings);
        }

        private Stretch since(LocalDate day) {
            return new Stretch(corrects, day, to, findings);
        }
    }

    /** Of what holds the physis to a side now, the first of several; empty when nothing does. */
    Optional<ForecastInputs> placed(PhysisSite site, PhysisStanding physis) {
        return stretches(site, physis).stream()
                .filter(stretch -> stretch.to.isEmpty())
                .min(Comparator.comparing(Stretch::from))
                .flatMap(stretch -> inputs(site, physis, stretch));
    }

    /** Of what last held the physis to a side, when nothing does any more. */
    Optional<Resting.Held> last(PhysisSite site, PhysisStanding physis) {
        return stretches(site, physis).stream()
                .filter(stretch -> stretch.to.isPresent())
                .max(Comparator.comparing(Stretch::from))
                .flatMap(stretch ->
                        inputs(site, physis, stretch).map(made -> new Resting.Held(made, stretch.to.orElseThrow())));
    }

    /** Of everything that holds or held the physis to a side. */
    List<ForecastInputs> all(PhysisSite site, PhysisStanding physis) {
        return stretches(site, physis).stream()
                .flatMap(stretch -> inputs(site, physis, stretch).stream())
                .toList();
    }

    /** Of a plate placed today. */
    Optional<ForecastInputs> ifPlacedToday(PhysisSite site, PhysisStanding physis, Deformity deformity) {
        return inputs(site, physis, new Stretch(deformity, facts.today(), Optional.empty(), List.of()));
    }

    private List<Stretch> stretches(PhysisSite site, PhysisStanding physis) {
        return physis.tethers().stream()
                .flatMap(tether -> stretches(tether).stream().flatMap(one -> mended(site, physis, tether, one)))
                .toList();
    }

    private static List<Stretch> stretches(Tether tether) {
        var found = new ArrayList<Stretch>();
        Optional<Stretch> running = Optional.empty();
        for (TetherPeriod period : tether.periods()) {
            var corrects = corrects(period);
            if (running.isPresent()
                    && corrects.filter(running.get().corrects::equals).isPresent()) {
                running = Optional.of(
                        new Stretch(running.get().corrects, running.get().from, period.to(), tether.findings()));
            } else {
                running.ifPresent(found::add);
                running = corrects.map(
                        deformity -> new Stretch(deformity, period.from(), period.to(), tether.findings()));
            }
        }
        running.ifPresent(found::add);
        return found;
    }

    /** With a new screw in place of a broken one it holds anew: what was broken says nothing of what comes. */
    private Stream<Stretch> mended(PhysisSite site, PhysisStanding physis, Tether tether, Stretch stretch) {
        var broken = brokenOn(site, physis, stretch);
        return broken == null
                ? Stream.of(stretch)
                : renewals(tether)
                        .filter(day -> !day.isBefore(broken))
                        .filter(day ->
                                stretch.to.filter(end -> !day.isBefore(end)).isEmpty())
                        .findFirst()
                        .map(day -> Stream.concat(
                                Stream.of(stretch.until(day)), mended(site, physis, tether, stretch.since(day))))
                        .orElseGet(() -> Stream.of(stretch));
    }

    private Stream<LocalDate> renewals(Tether tether) {
        return tether.implant().stream()
                .flatMap(implant ->
                        Stream.of(Screw.values()).flatMap(screw -> facts.treatment().renewals(implant, screw).stream()))
                .sorted();
    }

    /** What the period corrects; empty when it does not hold, or not to a side. */
    private static Optional<Deformity> corrects(TetherPeriod period) {
        return period.side().filter(side -> HOLDING.contains(period.hold())).flatMap(Plates::corrects);
    }

    private Optional<ForecastInputs> inputs(PhysisSite site, PhysisStanding physis, Stretch stretch) {
        return facts.growthAge(stretch.from).map(age -> {
            var causes = Causes.of(
                    facts.examination().diagnoses().standing(), physis.physis().side(), stretch.corrects);
            return new ForecastInputs(
                    site,
                    stretch.corrects,
                    causes.cause(),
                    causes.isStudied(),
                    age.sex(),
                    stretch.from,
                    age.byBirth().decimalYears(),
                    age.basis() == GrowthAge.Basis.BIRTH ? null : age.age().decimalYears(),
                    physis.targetAngle().degrees(),
                    films(site, physis, stretch),
                    brokenOn(site, physis, stretch),
                    stretch.to.isPresent() ? null : rates);
        });
    }

    /** The last film before the plate and those while it held. */
    private List<ForecastInputs.Film> films(PhysisSite site, PhysisStanding physis, Stretch stretch) {
        List<FilmAngle> all = facts.films().of(physis.physis().side(), Plates.angle(site)).stream()
                .filter(film -> !film.on().isBefore(stretch.from.minusMonths(MONTHS_BEFORE)))
                .filter(film -> stretch.to.filter(end -> film.on().isAfter(end)).isEmpty())
                .toList();
        long before =
                all.stream().filter(film -> film.on().isBefore(stretch.from)).count();
        return all.stream()
                .skip(Math.max(0, before - 1))
                .map(film -> new ForecastInputs.Film(film.on(), film.value()))
                .toList();
    }

    /** By what was seen of the implant, or of its screws on a film. */
    private @Nullable LocalDate brokenOn(PhysisSite site, PhysisStanding physis, Stretch stretch) {
        var found = stretch.findings().stream()
                .filter(finding -> finding.seen() == ImplantFinding.Seen.BROKEN)
                .map(ImplantFinding::on);
        var seen = facts.films().broken(physis.physis().side(), site).stream();
        return Stream.concat(found, seen)
                .filter(day -> day.isAfter(stretch.from))
                .filter(day -> stretch.to.filter(day::isAfter).isEmpty())
                .min(Comparator.naturalOrder())
                .orElse(null);
    }
}
