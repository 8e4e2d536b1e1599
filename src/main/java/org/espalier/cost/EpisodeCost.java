package org.espalier.cost;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.espalier.science.quantity.Side;

/**
 * What the care of one limb cost. A charge for one limb is that limb's; one for the child as a whole is shared evenly
 * by the limbs in care on its day, the right first with a coin that is over. What was charged before the first plan is
 * in none.
 *
 * @param byItem the parts of it, overheads in each
 */
public record EpisodeCost(Episode episode, CostSum total, Map<TariffItem, CostSum> byItem) {

    public EpisodeCost {
        byItem = Map.copyOf(byItem);
    }

    /** @param charges all of the child at the hospital; those that do not stand count nothing */
    static List<EpisodeCost> of(List<Episode> episodes, List<Charge> charges) {
        var lines = charges.stream().filter(Charge::stands).map(Charge::line).toList();
        return episodes.stream().map(episode -> of(episode, episodes, lines)).toList();
    }

    private static EpisodeCost of(Episode episode, List<Episode> episodes, List<ChargeLine> lines) {
        Map<TariffItem, CostSum> byItem = new EnumMap<>(TariffItem.class);
        for (var line : lines) {
            share(episode, episodes, line).ifPresent(sum -> byItem.merge(line.item(), sum, CostSum::plus));
        }
        return new EpisodeCost(episode, byItem.values().stream().reduce(CostSum.NOTHING, CostSum::plus), byItem);
    }

    private static Optional<CostSum> share(Episode episode, List<Episode> episodes, ChargeLine line) {
        var sharing = new ArrayList<Side>();
        episodes.stream()
                .filter(one -> one.holds(line.on()))
                .filter(one -> line.side() == null || line.side() == one.side())
                .map(Episode::side)
                .sorted(Comparator.comparing(side -> side != Side.RIGHT))
                .forEach(sharing::add);
        int place = sharing.indexOf(episode.side());
        return place < 0
                ? Optional.empty()
                : Optional.of(CostSum.of(line.priced().map(Priced::total).map(total -> total.split(sharing.size())
                        .get(place))));
    }
}
