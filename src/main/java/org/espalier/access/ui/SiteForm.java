package org.espalier.access.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.TextField;
import java.util.Locale;
import java.util.Optional;
import org.espalier.access.Site;
import org.espalier.access.SiteData;
import org.espalier.kit.Texts;

/** What is said of a hospital: code, name and time zone. */
final class SiteForm extends Composite<Div> {

    private final TextField code = new TextField(Texts.text("access.site.code"));
    private final TextField name = new TextField(Texts.text("access.site.name"));
    private final TextField zone = new TextField(Texts.text("access.site.zone"));

    SiteForm() {
        code.setHelperText(Texts.text("access.site.code.help"));
        zone.setHelperText(Texts.text("access.site.zone.help"));
        getContent().addClassName("admin-form");
        getContent().add(code, name, zone);
    }

    void show(Site site) {
        code.setValue(site.code());
        name.setValue(site.name());
        zone.setValue(site.zone().getId());
    }

    void clear() {
        code.clear();
        name.clear();
    }

    /** What was typed; empty when some of it does not fit, which the fields then say. */
    Optional<SiteData> read() {
        var typed = code.getValue().strip().toUpperCase(Locale.ROOT);
        boolean codeFits = Fields.check(code, SiteData.isCode(typed), "access.site.code.wrong");
        boolean nameFits = Fields.check(name, !name.getValue().isBlank(), "access.site.name.missing");
        boolean zoneFits = Fields.check(zone, SiteData.isZone(zone.getValue().strip()), "access.site.zone.wrong");
        return codeFits && nameFits && zoneFits
                ? Optional.of(new SiteData(
                        typed, name.getValue().strip(), zone.getValue().strip()))
                : Optional.empty();
    }

    /** Another hospital has the code. */
    void refuseCode() {
        Fields.check(code, false, "access.site.code.taken");
    }
}
