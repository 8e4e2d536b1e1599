package org.espalier.demo;

import static org.espalier.demo.DemoHospital.VALLEY;
import static org.espalier.demo.PhysisTale.femur;
import static org.espalier.demo.PhysisTale.tibia;
import static org.espalier.demo.Tale.boy;
import static org.espalier.demo.Tale.girl;
import static org.espalier.science.quantity.Side.LEFT;
import static org.espalier.science.quantity.Side.RIGHT;

import java.util.List;
import java.util.stream.Stream;

/** The twenty children followed in the valley. */
final class ValleyStories {

    private ValleyStories() {}

    static List<DemoStory> all() {
        return Stream.of(fewPatients(), young(), plated(), waiting())
                .flatMap(List::stream)
                .map(Tale::told)
                .toList();
    }

    private static List<Tale> fewPatients() {
        Tale hardlyMoves = boy(VALLEY, "V-2210", "Vantreva", "Oskan", 171)
                .has(DemoDiagnosis.LATE_ONSET_TIBIA_VARA)
                .built(1.65, 1)
                .lax(0.2)
                .with(femur(RIGHT, 155, 93).plated(157, 0.17))
                .with(tibia(RIGHT, 155, 77).plated(157, 0.24))
                .filmed(155, 161, 166, 169)
                .boneAged(16, 155, 166)
                .lastUnread();
        Tale years = girl(VALLEY, "V-2087", "Iskenholt", "Runa", 107)
                .has(DemoDiagnosis.SKELETAL_DYSPLASIA)
                .built(1.35, 0.66)
                .lax(0.2)
                .withBoth(femur(RIGHT, 72, 96.5).plated(74, 0.24))
                .withBoth(tibia(RIGHT, 72, 80.5).plated(74, 0.22))
                .filmed(72, 80, 86, 92, 98, 104);
        Tale mendsItself = boy(VALLEY, "V-2154", "Pellimoor", "Teodrik", 89)
                .has(DemoDiagnosis.VALGUS_AFTER_FRACTURE)
                .with(tibia(RIGHT, 58, 98).drifting(-0.22, 90))
                .filmed(58, 64, 74, 86);
        Tale oneInOneOut = girl(VALLEY, "V-2133", "Dunvarrow", "Sanne", 102)
                .has(DemoDiagnosis.RICKETS)
                .built(1.1, 0.94)
                .with(femur(RIGHT, 74, 97).plated(80, 0.42))
                .with(femur(LEFT, 74, 79).plated(80, 99, 0.5, 0.1))
                .filmed(74, 82, 88, 94, 100);
        Tale arrest = boy(VALLEY, "V-2201", "Wystrand", "Nevin", 141)
                .has(DemoDiagnosis.PARTIAL_GROWTH_ARREST)
                .with(femur(LEFT, 120, 83).drifting(-0.42, 160))
                .filmed(120, 130, 139)
                .boneAged(-4, 130)
                .lastUnread();
        return List.of(hardlyMoves, years, mendsItself, oneInOneOut, arrest);
    }

    private static List<Tale> young() {
        Tale bow = boy(VALLEY, "V-2240", "Ekrevold", "Malvin", 34)
                .has(DemoDiagnosis.PHYSIOLOGICAL_BOW)
                .lax(0.2)
                .withBoth(femur(RIGHT, 20, 96).drifting(-0.4, 42))
                .withBoth(tibia(RIGHT, 20, 82.5).drifting(0.3, 42))
                .filmed(20, 26, 32);
        Tale braced = girl(VALLEY, "V-2236", "Solberrick", "Yrsa", 37)
                .has(DemoDiagnosis.INFANTILE_TIBIA_VARA)
                .built(1.3, 1)
                .lax(0.25)
                .with(tibia(RIGHT, 22, 78).drifting(0.12, 60))
                .with(tibia(LEFT, 22, 76).drifting(0.02, 60))
                .filmed(22, 28, 34);
        Tale stays = boy(VALLEY, "V-2219", "Kvernhus", "Torleik", 58)
                .has(DemoDiagnosis.INFANTILE_TIBIA_VARA)
                .built(1.45, 1)
                .lax(0.3)
                .with(tibia(LEFT, 30, 74).plated(39, 0.08))
                .with(tibia(RIGHT, 30, 82).drifting(0.15, 60))
                .filmed(30, 38, 45, 52);
        Tale bothWays = girl(VALLEY, "V-2224", "Almsund", "Eluned", 66)
                .has(DemoDiagnosis.INFANTILE_TIBIA_VARA)
                .built(1.3, 1)
                .lax(0.2)
                .withBoth(tibia(RIGHT, 33, 76).plated(38, 57, 0.66, 0.12))
                .filmed(33, 37, 43, 50, 56, 63);
        Tale lowVitamin = girl(VALLEY, "V-2245", "Rosenvang", "Philippa", 33)
                .has(DemoDiagnosis.RICKETS_NUTRITIONAL)
                .withBoth(femur(RIGHT, 21, 98).drifting(-0.5, 44))
                .withBoth(tibia(RIGHT, 21, 81).drifting(0.36, 44))
                .filmed(21, 26, 31);
        return List.of(bow, braced, stays, bothWays, lowVitamin);
    }

    private static List<Tale> plated() {
        Tale nearlyThere = girl(VALLEY, "V-2166", "Bjelkerud", "Corisande", 133)
                .withBoth(femur(RIGHT, 118, 80).plated(120, 0.56))
                .filmed(118, 124, 131)
                .boneAged(1, 118);
        Tale beyond = boy(VALLEY, "V-2171", "Halmstrand", "Ivarin", 146)
                .withBoth(femur(RIGHT, 124, 81).plated(126, 0.72))
                .filmed(124, 130, 144)
                .missed(134, 137, 141);
        Tale planned = girl(VALLEY, "V-2178", "Ystgard", "Rowena", 125)
                .withBoth(femur(RIGHT, 112, 81).drifting(-0.06, 130))
                .filmed(112, 122)
                .planned(122)
                .boneAged(0, 122);
        Tale tibial = boy(VALLEY, "V-2183", "Elvemo", "Bastian", 137)
                .withBoth(tibia(RIGHT, 122, 94).plated(124, 0.4))
                .filmed(122, 129, 135);
        Tale kidney = boy(VALLEY, "V-2195", "Myrdal", "Casimir", 119)
                .has(DemoDiagnosis.RENAL)
                .built(1.05, 0.92)
                .withBoth(femur(RIGHT, 100, 78).plated(103, 0.38))
                .filmed(100, 108, 116);
        return List.of(nearlyThere, beyond, planned, tibial, kidney);
    }

    private static List<Tale> waiting() {
        Tale bar = girl(VALLEY, "V-2228", "Sandnesby", "Ottoline", 97)
                .has(DemoDiagnosis.BONY_BAR)
                .with(tibia(RIGHT, 74, 84).drifting(-0.32, 120))
                .filmed(74, 83, 94);
        Tale barTaken = boy(VALLEY, "V-2231", "Tjelde", "Anselm", 108)
                .has(DemoDiagnosis.FIBROCARTILAGINOUS_BAR)
                .with(tibia(LEFT, 80, 78).plated(86, 0.36))
                .filmed(80, 85, 93, 104);
        Tale gone = girl(VALLEY, "V-2204", "Grimsmark", "Evanthe", 150)
                .withBoth(femur(RIGHT, 121, 80).plated(123, 0.62))
                .filmed(121, 127)
                .missed(133, 139, 146);
        Tale straight = girl(VALLEY, "V-2160", "Lundevik", "Tamsin", 190)
                .withBoth(femur(RIGHT, 130, 80).plated(132, 145, 0.6, 0.05))
                .filmed(130, 138, 144, 156, 170, 184)
                .boneAged(0, 184);
        Tale frame = boy(VALLEY, "V-2149", "Kaldmyr", "Ossian", 160)
                .has(DemoDiagnosis.JUVENILE_TIBIA_VARA)
                .built(1.5, 1)
                .lax(0.2)
                .with(tibia(RIGHT, 120, 72).cut(126, 88, 5).drifting(-0.05, 170))
                .with(tibia(LEFT, 120, 79).plated(126, 146, 0.5, 0.08))
                .filmed(120, 128, 136, 145, 156);
        return List.of(bar, barTaken, gone, straight, frame);
    }
}
