package org.espalier.demo;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.patient.ChildId;
import org.espalier.patient.ExaminationService;
import org.espalier.patient.FactId;
import org.espalier.patient.TibiaVaraStage;
import org.espalier.plan.ComparisonId;
import org.espalier.plan.Intent;
import org.espalier.plan.Option;
import org.espalier.plan.OptionOutlook;
import org.espalier.plan.PlanService;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Side;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** What the surgeons of the demonstration compared, meant and expected, and the stages two of them read. */
@Component
@Profile("demo")
class DemoComparisons {

    /** The first of these that stands in the table is what was meant; a choice of the story, no advice. */
    private static final List<Option> MEANT =
            List.of(Option.TAKE_OUT_AT_TARGET, Option.PLATE_TIBIA, Option.PLATE_FEMUR, Option.BRACE, Option.WATCH);

    private static final int YEARS = 2;

    private final PlanService plans;
    private final ExaminationService examinations;

    DemoComparisons(PlanService plans, ExaminationService examinations) {
        this.plans = plans;
        this.examinations = examinations;
    }

    /** Keeps a comparison of each limb, and the stages of infantile tibia vara; told again it changes nothing. */
    void tell(DemoStory story, DemoTeam team, LocalDate firstDay) {
        if (story.diagnosis() == DemoDiagnosis.INFANTILE_TIBIA_VARA) {
            var film = story.dayOf(story.visits().getLast(), firstDay);
            stage(story, team.surgeon().value(), film, TibiaVaraStage.Stage.II);
            team.secondReader().ifPresent(second -> stage(story, second.value(), film, second(story)));
        }
        Callers.runAs(new Caller.Staff(team.surgeon().value()), () -> {
            for (var side : Side.values()) {
                compare(story, side, firstDay);
            }
        });
    }

    /** Readers differ in the middle stages: one stage apart in every other child. */
    private static TibiaVaraStage.Stage second(DemoStory story) {
        return story.ageNowMonths() % 2 == 0 ? TibiaVaraStage.Stage.II : TibiaVaraStage.Stage.III;
    }

    private void stage(DemoStory story, UUID reader, LocalDate film, TibiaVaraStage.Stage stage) {
        Callers.runAs(new Caller.Staff(reader), () -> {
            for (var side : Side.values()) {
                examinations.record(
                        child(story),
                        new FactId(DemoIds.of("stage", story.number(), reader.toString(), side.name())),
                        new TibiaVaraStage(film, side, stage));
            }
        });
    }

    private void compare(DemoStory story, Side side, LocalDate firstDay) {
        plans.options(child(story), side)
                .flatMap(options -> meant(options.open()))
                .ifPresent(option -> plans.keep(
                        child(story),
                        side,
                        new ComparisonId(DemoIds.of("comparison", story.number(), side.name())),
                        new Intent(
                                option,
                                "Invented: a straight leg that stays straight.",
                                "Invented: within two degrees of straight in two years, one operation to take out.",
                                new Angle(0),
                                firstDay.plusYears(YEARS))));
    }

    private static Optional<Option> meant(List<OptionOutlook> open) {
        return MEANT.stream()
                .filter(option -> open.stream().anyMatch(one -> one.option() == option))
                .findFirst();
    }

    private static ChildId child(DemoStory story) {
        return new ChildId(DemoIds.of("child", story.number()));
    }
}
