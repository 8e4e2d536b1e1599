package org.espalier.access.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.textfield.TextField;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.espalier.access.Role;
import org.espalier.access.SecondFactorService;
import org.espalier.access.Site;
import org.espalier.access.SiteData;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.kit.Texts;
import org.springframework.dao.DuplicateKeyException;

/** The hospitals of the network, by name, and a line to add one. */
final class SitePanel extends Composite<Section> {

    private final SiteService sites;
    private final SecondFactorService factors;
    private final Runnable changed;
    private final FoundList<Site> list = new FoundList<>(
            "access.site.find", "access.site.others", site -> site.name() + " " + site.code(), this::line);
    private final Checkbox operators = new Checkbox(Texts.text("access.factor.operators"));
    private Map<SiteId, Set<Role>> demanded = Map.of();
    private final TextField code = new TextField(Texts.text("access.site.code"));
    private final TextField name = new TextField(Texts.text("access.site.name"));
    private final TextField zone = new TextField(Texts.text("access.site.zone"));

    SitePanel(SiteService sites, SecondFactorService factors, Runnable changed) {
        this.sites = sites;
        this.factors = factors;
        this.changed = changed;
        code.setHelperText(Texts.text("access.site.code.help"));
        zone.setHelperText(Texts.text("access.site.zone.help"));
        operators.setValue(factors.isDemandedOfOperators());
        operators.setHelperText(Texts.text("access.factor.operators.help"));
        operators.addValueChangeListener(change -> factors.demandOfOperators(change.getValue()));
        var form = new Div(code, name, zone, new Button(Texts.text("access.site.add"), click -> add()));
        form.addClassName("admin-form");
        getContent().addClassName("sheet");
        getContent().add(new H2(Texts.text("access.sites")), list, operators, form);
        refresh();
    }

    private void refresh() {
        demanded = factors.demanded();
        list.show(sites.all());
    }

    private ListItem line(Site site) {
        var name = new Span(site.name());
        name.addClassName("name");
        var roles = demanded.getOrDefault(site.id(), Set.of());
        var factor = new Button(
                Texts.text("access.factor.change"),
                click -> new SecondFactorDialog(factors, site, roles, this::refresh).open());
        factor.setAriaLabel(Texts.text("access.factor.of", site.name()));
        var words = roles.isEmpty()
                ? Texts.text("access.factor.none")
                : Texts.text(
                        "access.factor.roles",
                        roles.stream().sorted().map(Texts::of).collect(Collectors.joining(", ")));
        return new ListItem(name, new Span(site.code()), new Span(site.zone().getId()), new Span(words), factor);
    }

    private void add() {
        var typed = code.getValue().strip().toUpperCase(Locale.ROOT);
        boolean codeFits = Fields.check(code, SiteData.isCode(typed), "access.site.code.wrong");
        boolean nameFits = Fields.check(name, !name.getValue().isBlank(), "access.site.name.missing");
        boolean zoneFits = Fields.check(zone, SiteData.isZone(zone.getValue().strip()), "access.site.zone.wrong");
        if (!(codeFits && nameFits && zoneFits)) {
            return;
        }
        try {
            sites.add(
                    new SiteData(typed, name.getValue().strip(), zone.getValue().strip()));
        } catch (DuplicateKeyException e) {
            Fields.check(code, false, "access.site.code.taken");
            return;
        }
        code.clear();
        name.clear();
        refresh();
        changed.run();
    }
}
