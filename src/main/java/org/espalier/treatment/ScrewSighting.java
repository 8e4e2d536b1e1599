package org.espalier.treatment;

import java.time.LocalDate;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.film.FilmId;
import org.espalier.patient.Bone;
import org.espalier.patient.BoneEnd;
import org.espalier.reading.Reading;
import org.espalier.reading.ScrewSeen;
import org.espalier.reading.Seen;

/**
 * What a signed reading says of a screw of a plate.
 *
 * @param signs what its reader saw of what is asked; none when all was answered no
 * @param complete whether all that is asked of a screw was answered
 */
public record ScrewSighting(
        PhysisKey physis, Screw screw, LocalDate filmOn, Set<Sign> signs, boolean complete, String reader) {

    /** What is asked of each screw. */
    public enum Sign {
        EXPOSED,
        BENT,
        BROKEN,
        LOOSE
    }

    private static final Set<Sign> DOUBTS = Set.of(Sign.BENT, Sign.BROKEN, Sign.LOOSE);

    public ScrewSighting {
        signs = Set.copyOf(signs);
    }

    /** Every sighting of readings that count, the film taken first first. */
    public static List<ScrewSighting> of(List<Reading> readings, Map<FilmId, LocalDate> taken) {
        return readings.stream()
                .filter(reading -> reading.counts() && taken.containsKey(reading.film()))
                .flatMap(reading -> of(reading, taken.getOrDefault(reading.film(), LocalDate.MIN)))
                .sorted(Comparator.comparing(ScrewSighting::filmOn))
                .toList();
    }

    private static Stream<ScrewSighting> of(Reading reading, LocalDate filmOn) {
        return reading.screws().stream().map(seen -> of(seen, filmOn, reading.readerName()));
    }

    private static ScrewSighting of(ScrewSeen seen, LocalDate filmOn, String reader) {
        boolean femur = seen.plate() == ScrewSeen.Plate.DISTAL_FEMUR;
        var physis =
                new PhysisKey(seen.side(), femur ? Bone.FEMUR : Bone.TIBIA, femur ? BoneEnd.DISTAL : BoneEnd.PROXIMAL);
        var screw = seen.screw() == ScrewSeen.Screw.METAPHYSIS ? Screw.METAPHYSEAL : Screw.EPIPHYSEAL;
        var answers = Map.of(
                Sign.EXPOSED, seen.exposed(),
                Sign.BENT, seen.bent(),
                Sign.BROKEN, seen.broken(),
                Sign.LOOSE, seen.loose());
        var signs = EnumSet.allOf(Sign.class).stream()
                .filter(sign -> answers.get(sign) == Seen.YES)
                .collect(Collectors.toSet());
        boolean complete = !answers.containsValue(Seen.NOT_RECORDED);
        return new ScrewSighting(physis, screw, filmOn, signs, complete, reader);
    }

    /** Whether its reader saw what leaves in doubt whether it holds. */
    boolean isDoubtful() {
        return !Collections.disjoint(signs, DOUBTS);
    }

    /** Whether the plate was in on the day of the film. */
    public boolean isOf(Tether tether) {
        return tether.placed() == ProcedureKind.PLATE_PLACED
                && tether.physis().equals(physis)
                && tether.on(filmOn).isPresent();
    }
}
