package org.espalier.access.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.espalier.access.Role;
import org.espalier.access.SecondFactorService;
import org.espalier.access.Site;
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
    private final SiteForm form = new SiteForm();

    SitePanel(SiteService sites, SecondFactorService factors, Runnable changed) {
        this.sites = sites;
        this.factors = factors;
        this.changed = changed;
        operators.setValue(factors.isDemandedOfOperators());
        operators.setHelperText(Texts.text("access.factor.operators.help"));
        operators.addValueChangeListener(change -> factors.demandOfOperators(change.getValue()));
        var add = new Button(Texts.text("access.site.add"), click -> add());
        getContent().addClassName("sheet");
        getContent().add(new H2(Texts.text("access.sites")), list, form, add, new Div(operators));
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
        var change = new Button(
                Texts.text("access.site.change"), click -> new SiteDialog(sites, site, this::changed).open());
        change.setAriaLabel(Texts.text("access.site.change.of", site.name()));
        var words = roles.isEmpty()
                ? Texts.text("access.factor.none")
                : Texts.text(
                        "access.factor.roles",
                        roles.stream().sorted().map(Texts::of).collect(Collectors.joining(", ")));
        return new ListItem(
                name, new Span(site.code()), new Span(site.zone().getId()), new Span(words), factor, change);
    }

    private void changed() {
        refresh();
        changed.run();
    }

    private void add() {
        form.read().ifPresent(data -> {
            try {
                sites.add(data);
            } catch (DuplicateKeyException e) {
                form.refuseCode();
                return;
            }
            form.clear();
            changed();
        });
    }
}
