package org.espalier.demo;

import static org.espalier.demo.DemoHospital.MOOR;
import static org.espalier.demo.PhysisTale.femur;
import static org.espalier.demo.PhysisTale.tibia;
import static org.espalier.demo.Tale.boy;
import static org.espalier.demo.Tale.girl;
import static org.espalier.science.quantity.Side.LEFT;
import static org.espalier.science.quantity.Side.RIGHT;

import java.util.List;
import java.util.stream.Stream;

/** The twenty children followed on the moor. */
final class MoorStories {

    private MoorStories() {}

    static List<DemoStory> all() {
        return Stream.of(toddlers(), schoolChildren(), adolescents(), longCourses())
                .flatMap(List::stream)
                .map(Tale::told)
                .toList();
    }

    private static List<Tale> toddlers() {
        Tale bow = girl(MOOR, "M-3002", "Aspelund", "Fenja", 30)
                .has(DemoDiagnosis.PHYSIOLOGICAL_BOW)
                .lax(0.2)
                .withBoth(femur(RIGHT, 18, 96.5).drifting(-0.36, 42))
                .withBoth(tibia(RIGHT, 18, 83).drifting(0.26, 42))
                .filmed(18, 24, 29);
        Tale bowOrNot = boy(MOOR, "M-3005", "Brenholt", "Jesper", 32)
                .has(DemoDiagnosis.PHYSIOLOGICAL_BOW)
                .built(1.3, 1)
                .lax(0.3)
                .with(tibia(RIGHT, 20, 79).drifting(0.16, 48))
                .with(tibia(LEFT, 20, 77).drifting(0.05, 48))
                .withBoth(femur(RIGHT, 20, 95).drifting(-0.3, 48))
                .filmed(20, 26, 31);
        Tale early = boy(MOOR, "M-3008", "Caspervold", "Thorne", 47)
                .has(DemoDiagnosis.INFANTILE_TIBIA_VARA)
                .built(1.4, 1)
                .lax(0.25)
                .withBoth(tibia(RIGHT, 30, 75).plated(34, 0.58))
                .filmed(30, 33, 39, 45);
        Tale band = girl(MOOR, "M-3011", "Dovrenes", "Ingrith", 44)
                .has(DemoDiagnosis.FIBROCARTILAGINOUS_DYSPLASIA)
                .with(tibia(RIGHT, 16, 70).drifting(0.48, 54))
                .filmed(16, 24, 33, 42);
        Tale arthrogram = girl(MOOR, "M-3014", "Enebakk", "Sabine", 38)
                .has(DemoDiagnosis.INFANTILE_TIBIA_VARA)
                .built(1.3, 1)
                .lax(0.2)
                .by(DemoStory.Filming.ARTHROGRAM_LAST)
                .with(tibia(LEFT, 24, 71).drifting(-0.1, 48))
                .with(tibia(RIGHT, 24, 84))
                .filmed(24, 30, 36)
                .listed(36, 12);
        return List.of(bow, bowOrNot, early, band, arthrogram);
    }

    private static List<Tale> schoolChildren() {
        Tale oneSide = girl(MOOR, "M-3020", "Fagerheim", "Linette", 122)
                .with(femur(LEFT, 104, 80).plated(106, 0.66))
                .filmed(104, 110, 116, 121);
        Tale fourPlates = boy(MOOR, "M-3023", "Granlie", "Emrik", 124)
                .withBoth(femur(RIGHT, 108, 81).plated(110, 0.45))
                .withBoth(tibia(RIGHT, 108, 92.5).plated(110, 0.35))
                .filmed(108, 115, 122);
        Tale brittle = boy(MOOR, "M-3026", "Hovdenak", "Aleric", 99)
                .has(DemoDiagnosis.RICKETS)
                .built(1.1, 0.92)
                .withBoth(femur(RIGHT, 70, 96).plated(75, 92, 0.5, 0.35))
                .filmed(70, 78, 85, 91, 97);
        Tale exostoses = girl(MOOR, "M-3029", "Indrevik", "Perpetua", 131)
                .has(DemoDiagnosis.EXOSTOSES)
                .with(tibia(RIGHT, 116, 94).plated(118, 0.42))
                .with(femur(RIGHT, 116, 84))
                .filmed(116, 123, 130);
        Tale meningococcal = boy(MOOR, "M-3032", "Jarlseng", "Wilmer", 113)
                .has(DemoDiagnosis.PARTIAL_GROWTH_ARREST)
                .with(femur(LEFT, 90, 85).drifting(-0.38, 140))
                .filmed(90, 99, 109);
        return List.of(oneSide, fourPlates, brittle, exostoses, meningococcal);
    }

    private static List<Tale> adolescents() {
        Tale lateBoy = boy(MOOR, "M-3041", "Kirkeng", "Ambrose", 176)
                .has(DemoDiagnosis.LATE_ONSET_TIBIA_VARA)
                .built(1.7, 1)
                .lax(0.15)
                .by(DemoStory.Filming.EACH_LEG_ALONE)
                .withBoth(tibia(RIGHT, 164, 79).plated(166, 0.25))
                .filmed(164, 173)
                .boneAged(10, 164);
        Tale lateGirl = girl(MOOR, "M-3044", "Lauvstad", "Celestine", 148)
                .has(DemoDiagnosis.LATE_ONSET_TIBIA_VARA)
                .built(1.6, 1)
                .lax(0.1)
                .with(tibia(RIGHT, 126, 78).plated(128, 0.62))
                .filmed(126, 133, 139, 145)
                .boneAged(12, 126, 139);
        Tale tooLate = boy(MOOR, "M-3047", "Moldskred", "Balthazar", 183)
                .withBoth(femur(RIGHT, 172, 80).plated(174, 0.22))
                .filmed(172, 181)
                .boneAged(6, 172);
        Tale listed = girl(MOOR, "M-3050", "Nordrum", "Augustina", 134)
                .with(femur(RIGHT, 112, 80).plated(114, 0.55))
                .with(femur(LEFT, 112, 79).plated(114, 0.53))
                .filmed(112, 119, 126, 132)
                .listed(132, 18);
        Tale varus = boy(MOOR, "M-3053", "Oppegaard", "Leander", 158)
                .has(DemoDiagnosis.IDIOPATHIC_VARUS)
                .withBoth(tibia(RIGHT, 140, 81).plated(142, 0.36))
                .filmed(140, 148, 156)
                .lastUnread();
        return List.of(lateBoy, lateGirl, tooLate, listed, varus);
    }

    private static List<Tale> longCourses() {
        Tale fourYears = girl(MOOR, "M-3060", "Prestvold", "Marigold", 132)
                .has(DemoDiagnosis.SKELETAL_DYSPLASIA)
                .built(1.3, 0.7)
                .lax(0.15)
                .withBoth(femur(RIGHT, 78, 96).plated(80, 124, 0.2, 0.15))
                .withBoth(tibia(RIGHT, 78, 80).plated(80, 0.16))
                .filmed(78, 88, 98, 108, 118, 129);
        Tale osteotomy = boy(MOOR, "M-3063", "Rustad", "Ephraim", 92)
                .has(DemoDiagnosis.INFANTILE_TIBIA_VARA)
                .built(1.45, 1)
                .lax(0.2)
                .with(tibia(RIGHT, 52, 67).cut(58, 91, 0).drifting(-0.1, 120))
                .with(tibia(LEFT, 52, 76).plated(58, 0.42))
                .filmed(52, 60, 70, 80, 90);
        Tale lostAndBack = boy(MOOR, "M-3066", "Stavnes", "Cornel", 128)
                .has(DemoDiagnosis.RICKETS)
                .built(1.1, 0.95)
                .withBoth(femur(RIGHT, 88, 96).plated(91, 0.5))
                .filmed(88, 95, 125)
                .missed(101, 107, 112);
        Tale twice = girl(MOOR, "M-3069", "Tveitmoen", "Seraphine", 137)
                .withBoth(femur(RIGHT, 92, 79).plated(94, 106, 0.8, 0.45).plated(124, 0.6))
                .filmed(92, 99, 105, 114, 123, 130, 136);
        Tale palsy = girl(MOOR, "M-3072", "Ulsrud", "Hesper", 116)
                .has(DemoDiagnosis.NEUROMUSCULAR)
                .withBoth(femur(RIGHT, 98, 81).plated(101, 0.35))
                .filmed(98, 106, 114);
        return List.of(fourYears, osteotomy, lostAndBack, twice, palsy);
    }
}
