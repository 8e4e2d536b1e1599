package org.espalier.demo;

import static org.espalier.demo.PhysisTale.femur;
import static org.espalier.demo.PhysisTale.tibia;
import static org.espalier.science.quantity.Side.RIGHT;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Young adults whose care ended this year or the last, so that costs and outcomes have whole courses to compare. Their
 * films are small copies, quickly drawn.
 */
final class EndedStories {

    /** Of fewer than five children nothing is told. */
    static final int A_YEAR = 6;

    private static final int YEARS = 2;
    private static final int COURSES = 5;

    /** Degrees a month by which plates of the later courses turn faster, some past their target. */
    private static final double FASTER = 0.06;

    private static final int GROWN_MONTHS = 219;

    private static final List<String> FAMILIES = List.of(
            "Ansgard",
            "Borrevik",
            "Dagsland",
            "Eskemoor",
            "Falkenholt",
            "Gudvoll",
            "Heiberry",
            "Isfjelde",
            "Kvamsund",
            "Lindarvik",
            "Morkholt",
            "Nesterby");
    private static final List<String> GIVEN = List.of(
            "Alvina", "Bertram", "Cosima", "Dorian", "Elfrida", "Florian", "Gudula", "Hadrian", "Idonea", "Joachim",
            "Kendra", "Lambert");

    private EndedStories() {}

    static List<DemoStory> all() {
        var all = new ArrayList<DemoStory>();
        for (var hospital : DemoHospital.values()) {
            for (int child = 0; child < YEARS * A_YEAR; child++) {
                all.add(tale(hospital, child).told());
            }
        }
        return all;
    }

    /** The day care ended: spread over this year until today, and over the same days of the year before. */
    static LocalDate endOf(DemoStory story, LocalDate firstDay) {
        int child = FAMILIES.indexOf(story.familyName());
        int day = 1 + child % A_YEAR * (firstDay.getDayOfYear() - 1) / A_YEAR;
        return firstDay.minusYears(child / A_YEAR).withDayOfYear(day);
    }

    private static Tale tale(DemoHospital hospital, int child) {
        var number = hospital.code().charAt(0) + "-" + (9000 + child * 7);
        var given = GIVEN.get(Math.floorMod(child + hospital.code().hashCode(), GIVEN.size()));
        int now = GROWN_MONTHS + child;
        var born = child % 2 == 0
                ? Tale.girl(hospital, number, FAMILIES.get(child), given, now)
                : Tale.boy(hospital, number, FAMILIES.get(child), given, now);
        var tale = born.by(DemoStory.Filming.COPIED);
        double faster = FASTER * (child / COURSES);
        return switch (child % COURSES) {
            case 0 ->
                tale.withBoth(femur(RIGHT, 130, 81).plated(133, 149, 0.45 + faster, 0.1))
                        .filmed(130, 140, 148, 173);
            case 1 ->
                tale.with(femur(RIGHT, 138, 80).plated(141, 158, 0.5 + faster, 0.4))
                        .filmed(138, 147, 157, 182);
            case 2 ->
                tale.withBoth(femur(RIGHT, 118, 80).plated(120, 134, 0.5, 0.4).plated(142, 156, 0.4, 0))
                        .filmed(118, 126, 133, 141, 155);
            case 3 ->
                tale.has(DemoDiagnosis.IDIOPATHIC_VARUS)
                        .withBoth(tibia(RIGHT, 144, 80).plated(146, 164, 0.4, 0))
                        .filmed(144, 152, 163)
                        .missed(158);
            default ->
                tale.has(DemoDiagnosis.IDIOPATHIC_VARUS)
                        .with(tibia(RIGHT, 140, 77).plated(142, 168, 0.4 + faster, 0))
                        .filmed(140, 148, 156, 167);
        };
    }
}
