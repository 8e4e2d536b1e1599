package org.espalier.today.ui;

import com.vaadin.flow.spring.annotation.SpringComponent;
import java.time.format.DateTimeFormatter;
import org.espalier.access.EmergencyAccess;
import org.espalier.access.EmergencyService;
import org.espalier.access.Permissions;
import org.espalier.access.SiteService;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;

/** Tells those who treat children, and the privacy officer, who of another hospital opened one in an emergency. */
@SpringComponent
class EmergencyLines {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

    private final EmergencyService emergencies;
    private final SiteService sites;
    private final Permissions permissions;

    EmergencyLines(EmergencyService emergencies, SiteService sites, Permissions permissions) {
        this.emergencies = emergencies;
        this.sites = sites;
        this.permissions = permissions;
    }

    /** Hides itself where there is nothing to tell, and from those it is not for. */
    WaitingList list() {
        if (!permissions.allowsService("EmergencyService.told")) {
            return new WaitingList("").closed("", 0);
        }
        var told = emergencies.told();
        var list = new WaitingList(Texts.text("today.emergencies", told.size()));
        boolean reviews = permissions.allowsRoute(Urls.EMERGENCIES);
        told.forEach(one -> list.add(reviews ? Urls.EMERGENCIES : Urls.whoSaw(one.child()), line(one)));
        return list.closed(Texts.text("today.emergencies.order"), 0);
    }

    private String line(EmergencyAccess one) {
        var at = one.taken().atZone(sites.get(one.site()).zone());
        return Texts.text(
                one.review() == null ? "today.emergency.waits" : "today.emergency.reviewed",
                one.who(),
                DateText.of(at.toLocalDate()),
                CLOCK.format(at),
                one.reason());
    }
}
