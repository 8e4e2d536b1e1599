package org.espalier.interchange;

import java.time.LocalDate;
import java.time.Year;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.espalier.science.forecast.CentreLearning;
import org.espalier.science.forecast.CentreRates;
import org.espalier.science.forecast.TetheredPhysis;

/**
 * What a centre knew of its own rates on a day, as far as it did not know it from the child that is forecast.
 *
 * <p>Rates are learnt at each turn of a year from what was known then. The children to be forecast are dealt into five
 * parts, and each part learns from the other four and from the earlier limbs.
 */
final class CentreThen {

    private static final int PARTS = 5;

    private record Known(int part, Year year) {}

    private final Map<String, Integer> partOfChild = new HashMap<>();
    private final List<List<PastLimb>> teachers = new ArrayList<>();
    private final Map<Known, CentreRates> learnt = new HashMap<>();
    private final Year first;

    CentreThen(Collection<PastLimb> earlier, Collection<PastLimb> asked) {
        for (int part = 0; part < PARTS; part++) {
            teachers.add(new ArrayList<>(earlier));
        }
        var children = new LinkedHashMap<String, List<PastLimb>>();
        asked.forEach(limb -> children.computeIfAbsent(limb.child().id(), _ -> new ArrayList<>())
                .add(limb));
        children.forEach((child, limbs) -> {
            int part = partOfChild.size() % PARTS;
            partOfChild.put(child, part);
            for (int other = 0; other < PARTS; other++) {
                if (other != part) {
                    teachers.get(other).addAll(limbs);
                }
            }
        });
        first = teachers.stream()
                .flatMap(List::stream)
                .filter(limb -> !limb.films().isEmpty())
                .map(limb -> Year.from(limb.films().getFirst().day()))
                .min(Year::compareTo)
                .orElse(Year.of(0));
    }

    CentreRates ratesFor(PastLimb limb, LocalDate day) {
        return rates(new Known(partOfChild.getOrDefault(limb.child().id(), 0), Year.from(day)));
    }

    private CentreRates rates(Known known) {
        if (!known.year().isAfter(first)) {
            return CentreRates.published();
        }
        CentreRates found = learnt.get(known);
        if (found == null) {
            CentreRates before = rates(new Known(known.part(), known.year().minusYears(1)));
            found = CentreLearning.learn(knownBefore(known), before);
            learnt.put(known, found);
        }
        return found;
    }

    private List<TetheredPhysis> knownBefore(Known known) {
        LocalDate last = known.year().atDay(1).minusDays(1);
        return teachers.get(known.part()).stream()
                .filter(limb -> limb.months(last) > 0)
                .map(limb -> limb.on(last))
                .toList();
    }
}
