package org.espalier.demo;

import static org.espalier.demo.DemoKnee.innerFemur;
import static org.espalier.demo.DemoKnee.of;
import static org.espalier.demo.DemoKnee.outerTibia;
import static org.espalier.demo.DemoVisit.at;

import java.util.List;
import org.espalier.science.quantity.Sex;

/** The five children followed at the harbour. */
final class HarbourStories {

    private HarbourStories() {}

    static List<DemoStory> all() {
        return List.of(bowThatStraightens(), infantileTibiaVara(), valgusCorrected(), rebound(), lateReturner());
    }

    private static DemoStory story(
            String number,
            String family,
            String given,
            Sex sex,
            int ageNow,
            DemoDiagnosis diagnosis,
            DemoStory.Build build,
            DemoVisit... visits) {
        return new DemoStory(
                DemoHospital.HARBOUR, number, family, given, sex, ageNow, diagnosis, build, List.of(visits));
    }

    /** A toddler's bow that needs nothing but patience. */
    private static DemoStory bowThatStraightens() {
        return story(
                "H-1041",
                "Tarnmoss",
                "Iske",
                Sex.FEMALE,
                51,
                DemoDiagnosis.PHYSIOLOGICAL_BOW,
                DemoStory.Build.USUAL,
                at(16, 77, 10.9, of(97, 82, 3), of(96, 83, 3)),
                at(22, 83, 12.3, of(94, 85, 2), of(94, 85.5, 2)),
                at(29, 89.5, 13.8, of(91, 88, 1), of(90.5, 88, 1)),
                at(44, 101, 16.4, of(86, 91, 0), of(86, 91, 0)));
    }

    /** Plates on both tibiae before four; the right arrives first. */
    private static DemoStory infantileTibiaVara() {
        return story(
                "H-0987",
                "Ostervane",
                "Jorik",
                Sex.MALE,
                65,
                DemoDiagnosis.INFANTILE_TIBIA_VARA,
                new DemoStory.Build(1.35, 1),
                at(26, 88, 17.1, of(93, 77, 4), of(94, 73, 5)),
                at(32, 92, 18.9, of(92, 78, 4), of(93, 71, 5)),
                at(
                        36,
                        95,
                        20.0,
                        of(91, 80, 3).with(outerTibia(6)),
                        of(92, 74, 4).with(outerTibia(6))),
                at(
                        41,
                        98.5,
                        21.4,
                        of(90, 84, 2).with(outerTibia(14)),
                        of(91, 78, 4).with(outerTibia(16))),
                at(
                        47,
                        102.5,
                        22.9,
                        of(89, 87.5, 1).with(outerTibia(22)),
                        of(90, 82.5, 3).with(outerTibia(25))),
                at(53, 106, 24.3, of(88, 88, 1), of(89, 86.5, 2).with(outerTibia(33))),
                at(62, 112, 26.8, of(88, 87, 1), of(89, 86, 2)));
    }

    /** Plates in, straight in fifteen months, plates out, straight still. */
    private static DemoStory valgusCorrected() {
        return story(
                "H-1102",
                "Quillby",
                "Merla",
                Sex.FEMALE,
                151,
                DemoDiagnosis.IDIOPATHIC_VALGUS,
                DemoStory.Build.USUAL,
                at(118, 139, 33.5, of(81, 89, 0), of(80, 89, 0)).boneAge(120),
                at(
                        124,
                        142.5,
                        35.8,
                        of(82.5, 89, 0).with(innerFemur(6)),
                        of(81.5, 89, 0).with(innerFemur(6))),
                at(
                        130,
                        146,
                        38.4,
                        of(85, 89, 0).with(innerFemur(14)),
                        of(84, 89, 0).with(innerFemur(14))),
                at(
                        136,
                        149.5,
                        41.0,
                        of(87.5, 88.5, 0).with(innerFemur(22)),
                        of(86.5, 88.5, 0).with(innerFemur(22))),
                at(139, 151, 42.6, of(88, 88.5, 0.5), of(87.5, 88.5, 0.5)),
                at(148, 155.5, 46.2, of(88, 88, 0.5), of(87, 88, 0.5)).boneAge(150));
    }

    /** Straightened early, then half of it lost again. */
    private static DemoStory rebound() {
        return story(
                "H-1066",
                "Sorrelund",
                "Tovan",
                Sex.MALE,
                149,
                DemoDiagnosis.IDIOPATHIC_VALGUS,
                DemoStory.Build.USUAL,
                at(100, 130, 28.5, of(80, 89, 0), of(81, 90, 0)),
                at(
                        105,
                        132.5,
                        29.8,
                        of(83, 89, 0).with(innerFemur(10)),
                        of(84, 90, 0).with(innerFemur(10))),
                at(
                        110,
                        135,
                        31.2,
                        of(86.5, 89, 0).with(innerFemur(18)),
                        of(87, 89.5, 0).with(innerFemur(17))),
                at(
                        114,
                        137,
                        32.1,
                        of(89.5, 89, 0.5).with(innerFemur(25)),
                        of(90, 89.5, 0.5).with(innerFemur(25))),
                at(121, 140, 34.0, of(87, 89, 0), of(88, 89.5, 0)),
                at(128, 143, 36.1, of(84.5, 89, 0), of(86, 89.5, 0)),
                at(137, 147, 39.0, of(82.5, 89, 0), of(85, 89.5, 0)).boneAge(132),
                at(146, 151.5, 42.4, of(82, 89, 0), of(84.5, 89.5, 0)).unread());
    }

    /** Was not brought for seventeen months with both plates in. */
    private static DemoStory lateReturner() {
        return story(
                "H-1120",
                "Hallowick",
                "Lirra",
                Sex.FEMALE,
                138,
                DemoDiagnosis.IDIOPATHIC_VALGUS,
                DemoStory.Build.USUAL,
                at(112, 134, 31.0, of(81, 89, 0), of(80, 90, 0)).boneAge(112),
                at(
                        116,
                        136,
                        32.2,
                        of(82.5, 89, 0).with(innerFemur(7)),
                        of(82, 90, 0).with(innerFemur(7))),
                at(
                        133,
                        146,
                        38.9,
                        of(97, 88, 2).with(innerFemur(44)),
                        of(96.5, 89, 2).with(innerFemur(43))),
                at(136, 147.5, 39.6, of(97, 88, 2), of(96.5, 89, 2)).unread());
    }
}
