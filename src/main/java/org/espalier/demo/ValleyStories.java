package org.espalier.demo;

import static org.espalier.demo.DemoKnee.innerFemur;
import static org.espalier.demo.DemoKnee.of;
import static org.espalier.demo.DemoKnee.outerFemur;
import static org.espalier.demo.DemoKnee.outerTibia;
import static org.espalier.demo.DemoVisit.at;

import java.util.List;
import org.espalier.science.quantity.Sex;

/** The five children followed in the valley. */
final class ValleyStories {

    private ValleyStories() {}

    static List<DemoStory> all() {
        return List.of(lateOnsetTibiaVara(), dysplasia(), afterFracture(), rickets(), arrest());
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
                DemoHospital.VALLEY, number, family, given, sex, ageNow, diagnosis, build, List.of(visits));
    }

    /** Heavy, late, one-sided, and hardly moving under its plates. */
    private static DemoStory lateOnsetTibiaVara() {
        DemoKnee left = of(89, 86, 1);
        return story(
                "V-2210",
                "Vantreva",
                "Oskan",
                Sex.MALE,
                171,
                DemoDiagnosis.LATE_ONSET_TIBIA_VARA,
                new DemoStory.Build(1.65, 1),
                at(155, 166, 97, of(93, 77, 3), left).boneAge(172),
                at(161, 168.5, 101, of(92.5, 78, 3).with(outerFemur(4), outerTibia(3)), left),
                at(166, 170, 104, of(91.5, 79.5, 3).with(outerFemur(8), outerTibia(7)), left)
                        .boneAge(181),
                at(169, 171, 106, of(91, 80, 3).with(outerFemur(10), outerTibia(9)), left)
                        .unread());
    }

    /** Short legs that bow, and plates that need years. */
    private static DemoStory dysplasia() {
        return story(
                "V-2087",
                "Iskenholt",
                "Runa",
                Sex.FEMALE,
                107,
                DemoDiagnosis.SKELETAL_DYSPLASIA,
                new DemoStory.Build(1.35, 0.66),
                at(72, 92, 17.5, of(97, 80, 3), of(96, 81, 3)),
                at(80, 95, 18.9, bothPlates(95.5, 81.5, 4), bothPlates(94.5, 82.5, 4)),
                at(86, 97, 20.0, bothPlates(94, 82.5, 8), bothPlates(93.5, 83.5, 8)),
                at(92, 99, 21.2, bothPlates(92.5, 84, 12), bothPlates(92, 85, 12)),
                at(98, 101, 22.4, bothPlates(91, 85.5, 16), bothPlates(90.5, 86, 16)),
                at(104, 103, 23.7, bothPlates(90, 86.5, 19), bothPlates(89.5, 87, 19)));
    }

    private static DemoKnee bothPlates(double mLDFA, double mMPTA, double degrees) {
        return of(mLDFA, mMPTA, 3).with(outerFemur(degrees), outerTibia(degrees));
    }

    /** Worse for a year after the fracture, then better by itself. */
    private static DemoStory afterFracture() {
        DemoKnee left = of(87, 88, 0.5);
        return story(
                "V-2154",
                "Pellimoor",
                "Teodrik",
                Sex.MALE,
                89,
                DemoDiagnosis.VALGUS_AFTER_FRACTURE,
                DemoStory.Build.USUAL,
                at(58, 110, 19.0, of(87, 95.5, 0).grown(0, 3), left),
                at(64, 113.5, 20.2, of(87, 98, 0).grown(0, 6), left),
                at(74, 119, 22.3, of(87, 95.5, 0).grown(1, 8), left),
                at(86, 125.5, 25.0, of(87, 92.5, 0).grown(1, 8), left));
    }

    /** One knee out, one knee in, and one plate each. */
    private static DemoStory rickets() {
        return story(
                "V-2133",
                "Dunvarrow",
                "Sanne",
                Sex.FEMALE,
                102,
                DemoDiagnosis.RICKETS,
                new DemoStory.Build(1.1, 0.94),
                at(74, 108, 19.8, of(97, 83, 3), of(79, 94, 0)),
                at(
                        82,
                        112,
                        21.5,
                        of(95, 83.5, 3).with(outerFemur(6)),
                        of(81.5, 93.5, 0).with(innerFemur(8))),
                at(
                        88,
                        115,
                        22.9,
                        of(93, 84.5, 2).with(outerFemur(12)),
                        of(84, 92.5, 0).with(innerFemur(16))),
                at(
                        94,
                        118,
                        24.4,
                        of(91.5, 85.5, 2).with(outerFemur(18)),
                        of(86.5, 92, 0).with(innerFemur(22))),
                at(100, 121, 25.8, of(90, 86, 1).with(outerFemur(22)), of(87.5, 91.5, 0)));
    }

    /** The outer half of one physis has stopped. */
    private static DemoStory arrest() {
        DemoKnee right = of(88, 87, 1);
        return story(
                "V-2201",
                "Wystrand",
                "Nevin",
                Sex.MALE,
                141,
                DemoDiagnosis.PARTIAL_GROWTH_ARREST,
                DemoStory.Build.USUAL,
                at(120, 138, 32.4, right, of(83, 87, 0).grown(-8, 0)),
                at(130, 143, 35.9, right, of(79, 87, 0).grown(-15, 0)).boneAge(126),
                at(139, 147.5, 39.2, right, of(75, 87, 0).grown(-23, 0)).unread());
    }
}
