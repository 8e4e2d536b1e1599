package org.espalier.cost.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import java.util.Map;
import org.espalier.cost.CostReportService.ChildCost;
import org.espalier.cost.CostSum;
import org.espalier.cost.Episode;
import org.espalier.cost.EpisodeCost;
import org.espalier.cost.TariffItem;
import org.espalier.kit.DateText;
import org.espalier.kit.LineTable;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;

/** What the care of each limb of a child cost, in its parts. */
final class EpisodePart {

    private EpisodePart() {}

    static Component of(ChildCost cost) {
        var parts = new Div();
        parts.addClassName("parts");
        if (cost.limbs().isEmpty()) {
            parts.add(PageParts.empty("cost.episodes.none"));
        }
        cost.limbs().forEach(limb -> parts.add(limb(limb)));
        parts.add(PageParts.said(Texts.text("cost.child-total", CostText.of(cost.total()))));
        return parts;
    }

    private static Component limb(EpisodeCost limb) {
        var episode = limb.episode();
        var part = PageParts.part(
                Texts.text("cost.limb-heading", Texts.of(episode.side()), Texts.of(episode.pathway())),
                PageParts.said(Texts.text("cost.limb-time", time(episode), operations(episode))),
                new LineTable<Map.Entry<TariffItem, CostSum>>("cost.limb.none")
                        .text("cost.item", one -> Texts.of(one.getKey()))
                        .number("cost.total", one -> CostText.of(one.getValue()))
                        .with(limb.byItem().entrySet().stream()
                                .sorted(Map.Entry.comparingByKey())
                                .toList()),
                PageParts.said(Texts.text("cost.all-together", CostText.of(limb.total()))));
        if (episode.elsewhere()) {
            part.add(PageParts.said(Texts.text("cost.elsewhere")));
        }
        return part;
    }

    static String time(Episode episode) {
        return episode.ended()
                .map(end -> Texts.text("cost.from-until", DateText.of(episode.began()), DateText.of(end)))
                .orElseGet(() -> Texts.text("cost.from-open", DateText.of(episode.began())));
    }

    static String operations(Episode episode) {
        return episode.repeats() == 0
                ? String.valueOf(episode.operations())
                : Texts.text("cost.repeats", episode.operations(), episode.repeats());
    }
}
