package org.espalier.outcomes;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.espalier.access.SiteId;
import org.espalier.cost.Cell;
import org.espalier.cost.CountTable;
import org.espalier.cost.DiagnosisGroup;
import org.espalier.science.statistics.Proportion;

/**
 * How many children of a hospital came to what end, and what children they are. Of the reader's own hospital all is
 * told. Of another no count below five can be read or reckoned: nothing is added up over hospitals, what is small is
 * hidden with what it could be reckoned from, and the mix of children is told whole or not at all.
 *
 * @param came by measure; one growth plate stands for a child
 * @param open whose plate runs, or ended without a film
 * @param mix empty when it is not told
 */
public record HospitalCounts(
        SiteId site, boolean mine, Map<Measure, Cell> came, Cell open, Cell all, Optional<Mix> mix) {

    /** Children by cause, age and growth left at the plate. */
    public record Mix(
            Map<DiagnosisGroup, Integer> diagnoses, Map<AgeBand, Integer> ages, Map<GrowthBand, Integer> growth) {

        private boolean isTellable() {
            return Stream.of(diagnoses, ages, growth)
                    .flatMap(counts -> counts.values().stream())
                    .noneMatch(HospitalCounts::isSmall);
        }
    }

    static HospitalCounts of(SiteId site, boolean mine, List<JdbcOutcomeRepository.Count> counts) {
        var mix = new Mix(
                of(counts, "DIAGNOSIS", DiagnosisGroup.class),
                of(counts, "AGE", AgeBand.class),
                of(counts, "GROWTH", GrowthBand.class));
        int all = mix.diagnoses().values().stream().mapToInt(Integer::intValue).sum();
        var ended = ended(counts);
        int open = all - ended.values().stream().mapToInt(Integer::intValue).sum();
        var cells =
                cells(mine, IntStream.concat(ended.values().stream().mapToInt(Integer::intValue), IntStream.of(open)));
        var came = new EnumMap<Measure, Cell>(Measure.class);
        var told = cells.iterator();
        ended.keySet().forEach(measure -> came.put(measure, told.next()));
        boolean isMixTold = mine || (mix.isTellable() && cells.getLast() instanceof Cell.Told);
        return new HospitalCounts(
                site, mine, came, told.next(), told.next(), isMixTold ? Optional.of(mix) : Optional.empty());
    }

    private static Map<Measure, Integer> ended(List<JdbcOutcomeRepository.Count> counts) {
        var ended = new EnumMap<Measure, Integer>(Measure.class);
        List.of(Measure.values()).forEach(measure -> ended.put(measure, 0));
        of(counts, "CAME", Came.class).forEach((came, children) -> Measure.of(came)
                .ifPresent(measure -> ended.merge(measure, children, Integer::sum)));
        return ended;
    }

    /** The total comes last. */
    private static List<Cell> cells(boolean mine, IntStream told) {
        var counts = told.toArray();
        return mine
                ? IntStream.concat(
                                IntStream.of(counts),
                                IntStream.of(IntStream.of(counts).sum()))
                        .<Cell>mapToObj(Cell.Told::new)
                        .toList()
                : CountTable.tellLine(counts);
    }

    private static <C extends Enum<C>> Map<C, Integer> of(
            List<JdbcOutcomeRepository.Count> counts, String what, Class<C> type) {
        var told = new EnumMap<C, Integer>(type);
        for (var one : type.getEnumConstants()) {
            told.put(one, 0);
        }
        counts.stream()
                .filter(count -> count.what().equals(what))
                .forEach(count -> told.put(Enum.valueOf(type, count.which()), count.children()));
        return told;
    }

    private static boolean isSmall(int count) {
        return Cell.of(count) instanceof Cell.Hidden;
    }

    /** Of the children whose plate has ended by a film or by failing, how many came to this; empty when not told. */
    public Optional<Proportion> ended(Measure measure) {
        int of = 0;
        for (var cell : came.values()) {
            if (!(cell instanceof Cell.Told(var count))) {
                return Optional.empty();
            }
            of += count;
        }
        return of > 0 && came.get(measure) instanceof Cell.Told(var count)
                ? Optional.of(new Proportion(count, of))
                : Optional.empty();
    }
}
