package org.espalier.demo;

import static org.espalier.demo.DemoHospital.HARBOUR;
import static org.espalier.demo.PhysisTale.femur;
import static org.espalier.demo.PhysisTale.tibia;
import static org.espalier.demo.Tale.boy;
import static org.espalier.demo.Tale.girl;
import static org.espalier.science.quantity.Side.LEFT;
import static org.espalier.science.quantity.Side.RIGHT;

import java.util.List;
import java.util.stream.Stream;

/** The twenty children followed at the harbour. */
final class HarbourStories {

    private HarbourStories() {}

    static List<DemoStory> all() {
        return Stream.of(bows(), valgus(), late(), treated())
                .flatMap(List::stream)
                .map(Tale::told)
                .toList();
    }

    private static List<Tale> bows() {
        Tale straightens = girl(HARBOUR, "H-1041", "Tarnmoss", "Iske", 51)
                .has(DemoDiagnosis.PHYSIOLOGICAL_BOW)
                .lax(0.2)
                .withBoth(femur(RIGHT, 16, 97).drifting(-0.38, 45))
                .withBoth(tibia(RIGHT, 16, 82).drifting(0.31, 45))
                .filmed(16, 22, 29, 44);
        Tale straightensLate = boy(HARBOUR, "H-1131", "Aldervik", "Sennet", 41)
                .has(DemoDiagnosis.PHYSIOLOGICAL_BOW)
                .lax(0.2)
                .withBoth(femur(RIGHT, 19, 97.5).drifting(-0.3, 46))
                .withBoth(tibia(RIGHT, 19, 80.5).drifting(0.27, 46))
                .filmed(19, 25, 31, 38);
        Tale rightArrivesFirst = boy(HARBOUR, "H-0987", "Ostervane", "Jorik", 65)
                .has(DemoDiagnosis.INFANTILE_TIBIA_VARA)
                .built(1.35, 1)
                .lax(0.3)
                .withBoth(femur(RIGHT, 26, 93).drifting(-0.12, 60))
                .with(tibia(RIGHT, 26, 78).plated(33, 50, 0.62, 0.05))
                .with(tibia(LEFT, 26, 73).plated(33, 0.5))
                .filmed(26, 32, 36, 41, 47, 53, 62);
        Tale fibrousBand = boy(HARBOUR, "H-1190", "Grennock", "Olvar", 39)
                .has(DemoDiagnosis.FIBROCARTILAGINOUS_DYSPLASIA)
                .with(tibia(LEFT, 17, 72).drifting(0.5, 60))
                .filmed(17, 23, 30, 36);
        Tale knockKneed = girl(HARBOUR, "H-1133", "Lysterby", "Mirelle", 71)
                .has(DemoDiagnosis.PHYSIOLOGICAL_KNOCK_KNEE)
                .withBoth(femur(RIGHT, 47, 82.5).drifting(0.14, 84))
                .filmed(47, 58, 68);
        return List.of(straightens, rightArrivesFirst, straightensLate, fibrousBand, knockKneed);
    }

    private static List<Tale> valgus() {
        Tale corrected = girl(HARBOUR, "H-1102", "Quillby", "Merla", 151)
                .with(femur(RIGHT, 118, 81).plated(120, 137, 0.45, 0.02))
                .with(femur(LEFT, 118, 80).plated(120, 137, 0.47, 0.03))
                .filmed(118, 124, 130, 136, 139, 148)
                .boneAged(2, 118, 148);
        Tale rebound = boy(HARBOUR, "H-1066", "Sorrelund", "Tovan", 149)
                .with(femur(RIGHT, 100, 80).plated(101, 115, 0.78, 0.55))
                .with(femur(LEFT, 100, 81).plated(101, 115, 0.74, 0.4))
                .filmed(100, 105, 110, 114, 121, 128, 137, 146)
                .boneAged(-5, 137)
                .lastUnread();
        Tale lateReturner = girl(HARBOUR, "H-1120", "Hallowick", "Lirra", 138)
                .with(femur(RIGHT, 112, 81).plated(113, 135, 0.86, 0.05))
                .with(femur(LEFT, 112, 80).plated(113, 135, 0.9, 0.05))
                .filmed(112, 116, 133, 136)
                .missed(119, 122, 127)
                .boneAged(0, 112)
                .lastUnread();
        Tale again = girl(HARBOUR, "H-1012", "Vendelmoor", "Asta", 126)
                .has(DemoDiagnosis.EXOSTOSES)
                .withBoth(femur(RIGHT, 80, 78).plated(82, 97, 0.68, 0.5).plated(113, 0.72))
                .filmed(80, 88, 96, 104, 112, 118, 124);
        Tale parked = girl(HARBOUR, "H-1193", "Ternholm", "Isaura", 131)
                .withBoth(femur(RIGHT, 102, 80).parked(104, 116, 0.66, 0.08))
                .filmed(102, 109, 115, 122, 129);
        return List.of(corrected, rebound, lateReturner, again, parked);
    }

    private static List<Tale> late() {
        Tale tooWide = boy(HARBOUR, "H-1170", "Brummelstad", "Kastor", 173)
                .has(DemoDiagnosis.LATE_ONSET_TIBIA_VARA)
                .built(1.8, 1)
                .lax(0.15)
                .by(DemoStory.Filming.EACH_LEG_ALONE)
                .with(tibia(RIGHT, 158, 77).plated(160, 0.28))
                .with(femur(RIGHT, 158, 92).plated(160, 0.22))
                .filmed(158, 164, 170)
                .boneAged(14, 158, 170);
        Tale framed = boy(HARBOUR, "H-1184", "Morvik", "Eskil", 167)
                .has(DemoDiagnosis.LATE_ONSET_TIBIA_VARA)
                .built(1.6, 1)
                .lax(0.2)
                .with(tibia(RIGHT, 138, 76).plated(140, 152, 0.12, 0).cut(154, 87, 5))
                .filmed(138, 145, 151, 156, 163)
                .boneAged(11, 138);
        Tale heavyGirl = girl(HARBOUR, "H-1166", "Ulvereng", "Damaris", 139)
                .has(DemoDiagnosis.LATE_ONSET_TIBIA_VARA)
                .built(1.55, 1)
                .lax(0.1)
                .with(tibia(RIGHT, 122, 80).plated(124, 0.5))
                .filmed(122, 128, 133)
                .boneAged(13, 122)
                .missed(138);
        Tale varus = girl(HARBOUR, "H-1199", "Skarnhild", "Benedine", 143)
                .has(DemoDiagnosis.IDIOPATHIC_VARUS)
                .withBoth(femur(RIGHT, 128, 93).plated(130, 0.55))
                .filmed(128, 134, 140);
        Tale palsy = boy(HARBOUR, "H-1163", "Ravnskar", "Lorentin", 127)
                .has(DemoDiagnosis.NEUROMUSCULAR)
                .with(femur(RIGHT, 112, 79).plated(114, 0.42))
                .with(femur(LEFT, 112, 82))
                .filmed(112, 119, 125);
        return List.of(tooWide, framed, heavyGirl, varus, palsy);
    }

    private static List<Tale> treated() {
        Tale recurs = girl(HARBOUR, "H-1181", "Fjellbro", "Oriel", 77)
                .has(DemoDiagnosis.INFANTILE_TIBIA_VARA)
                .built(1.4, 1)
                .lax(0.25)
                .with(tibia(LEFT, 44, 68).cut(50, 92, 0).drifting(-0.33, 90))
                .with(tibia(RIGHT, 44, 84))
                .filmed(44, 52, 60, 68, 75);
        Tale windswept = girl(HARBOUR, "H-1007", "Dalvegard", "Sunneve", 100)
                .has(DemoDiagnosis.RICKETS)
                .built(1.1, 0.94)
                .with(femur(RIGHT, 74, 97).plated(80, 0.45))
                .with(femur(LEFT, 74, 79).plated(80, 95, 0.62, 0.1))
                .filmed(74, 82, 88, 94, 98);
        Tale fibula = boy(HARBOUR, "H-1150", "Trovanger", "Halvdan", 112)
                .has(DemoDiagnosis.FIBULAR_DEFICIENCY)
                .with(femur(LEFT, 94, 80).plated(96, 0.6))
                .filmed(94, 101, 109);
        Tale fractured = girl(HARBOUR, "H-1177", "Hestmark", "Linnea", 87)
                .has(DemoDiagnosis.VALGUS_AFTER_FRACTURE)
                .with(tibia(RIGHT, 52, 98).drifting(-0.12, 80).plated(70, 0.35))
                .filmed(52, 60, 69, 76, 84);
        Tale dwarf = boy(HARBOUR, "H-1197", "Nordlien", "Aurelio", 122)
                .has(DemoDiagnosis.SKELETAL_DYSPLASIA)
                .built(1.35, 0.68)
                .lax(0.15)
                .withBoth(femur(RIGHT, 70, 95).plated(73, 0.17))
                .withBoth(tibia(RIGHT, 70, 81).plated(73, 0.15))
                .filmed(70, 79, 88, 97, 107, 118);
        return List.of(recurs, windswept, fibula, fractured, dwarf);
    }
}
