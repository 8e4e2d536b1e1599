package org.espalier.today.ui;

import com.vaadin.flow.spring.annotation.SpringComponent;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.Site;
import org.espalier.access.SiteService;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.stock.Coverage;
import org.espalier.stock.ProductText;
import org.espalier.stock.ReservationService;

/** Tells those who operate, and those who keep the shelves, which planned operation would be left short. */
@SpringComponent
class ShortLines {

    private final ReservationService reservations;
    private final SiteService sites;
    private final CurrentStaff currentStaff;

    ShortLines(ReservationService reservations, SiteService sites, CurrentStaff currentStaff) {
        this.reservations = reservations;
        this.sites = sites;
        this.currentStaff = currentStaff;
    }

    private record Missing(Site site, Coverage.Met met) {}

    /** Hides itself where nothing is short, and from those it is not for. */
    WaitingList list() {
        var missing = sites.mine().stream()
                .filter(this::isFor)
                .flatMap(site -> reservations.coverage(site.id()).stream().map(met -> new Missing(site, met)))
                .filter(one -> one.met().missing() > 0)
                .sorted(Comparator.comparing(one -> one.met().reservation().neededOn()))
                .toList();
        var list = new WaitingList(Texts.text("today.short", missing.size()));
        missing.forEach(
                one -> list.add(Urls.at(Urls.STOCK_NEEDS, Optional.of(one.site().code())), line(one)));
        return list.closed(Texts.text("today.short.order"), 0);
    }

    private boolean isFor(Site site) {
        return Stream.of(Role.STOREKEEPER, Role.SURGEON, Role.NURSE)
                .anyMatch(role -> currentStaff.has(role, site.id()));
    }

    private static String line(Missing one) {
        var met = one.met();
        return Texts.text(
                "today.short.line",
                DateText.of(met.reservation().neededOn()),
                one.site().name(),
                ProductText.of(met.need()),
                met.missing(),
                met.need().quantity());
    }
}
