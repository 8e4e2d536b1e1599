package org.espalier.safety.ui;

import com.vaadin.flow.component.Component;
import java.util.stream.Stream;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.kit.PageParts;
import org.espalier.kit.PageParts.Place;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;

/** The places of safety. */
final class SafetyPage {

    private SafetyPage() {}

    /** Who treats nobody has no broken implants to report. */
    static Component places(CurrentStaff staff, String here) {
        boolean treats = staff.has(Role.SURGEON) || staff.has(Role.NURSE);
        var places = Stream.concat(
                Stream.of(place(Urls.SAFETY, "safety.notices", here)),
                treats ? Stream.of(place(Urls.SAFETY_INCIDENTS, "safety.incidents", here)) : Stream.of());
        return PageParts.places(Texts.text("safety.menu"), places.toList());
    }

    private static Place place(String url, String key, String here) {
        return new Place(url, Texts.text(key), url.equals(here));
    }
}
