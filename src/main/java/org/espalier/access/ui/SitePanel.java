package org.espalier.access.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.Locale;
import java.util.stream.Collectors;
import org.espalier.access.SecondFactorService;
import org.espalier.access.Site;
import org.espalier.access.SiteData;
import org.espalier.access.SiteService;
import org.espalier.kit.Texts;
import org.springframework.dao.DuplicateKeyException;

/** The hospitals of the network, by name, and a line to add one. */
final class SitePanel extends Composite<Section> {

    /** So many stand there at once; the others are found by a part of their name or code. */
    private static final int SHOWN = 25;

    private final SiteService sites;
    private final SecondFactorService factors;
    private final Runnable changed;
    private final TextField find = new TextField(Texts.text("access.site.find"));
    private final UnorderedList list = new UnorderedList();
    private final Paragraph others = new Paragraph();
    private final TextField code = new TextField(Texts.text("access.site.code"));
    private final TextField name = new TextField(Texts.text("access.site.name"));
    private final TextField zone = new TextField(Texts.text("access.site.zone"));

    SitePanel(SiteService sites, SecondFactorService factors, Runnable changed) {
        this.sites = sites;
        this.factors = factors;
        this.changed = changed;
        code.setHelperText(Texts.text("access.site.code.help"));
        zone.setHelperText(Texts.text("access.site.zone.help"));
        list.addClassName("admin-list");
        find.setValueChangeMode(ValueChangeMode.LAZY);
        find.addValueChangeListener(change -> refresh());
        others.addClassName("small");
        var order = new Paragraph(Texts.text("access.by-name"));
        order.addClassName("small");
        var form = new Div(code, name, zone, new Button(Texts.text("access.site.add"), click -> add()));
        form.addClassName("admin-form");
        getContent().addClassName("sheet");
        getContent().add(new H2(Texts.text("access.sites")), order, find, list, others, form);
        refresh();
    }

    private void refresh() {
        list.removeAll();
        var found = sites.all().stream().filter(this::isSought).toList();
        others.setText(Texts.text("access.site.others", Math.max(0, found.size() - SHOWN)));
        others.setVisible(found.size() > SHOWN);
        found.stream().limit(SHOWN).forEach(site -> list.add(line(site)));
    }

    private boolean isSought(Site site) {
        var part = find.getValue().strip().toLowerCase(Locale.ROOT);
        return (site.name() + " " + site.code()).toLowerCase(Locale.ROOT).contains(part);
    }

    private ListItem line(Site site) {
        var name = new Span(site.name());
        name.addClassName("name");
        var demanded = factors.demandedAt(site.id());
        var factor = new Button(
                Texts.text("access.factor.change"),
                click -> new SecondFactorDialog(factors, site, this::refresh).open());
        factor.setAriaLabel(Texts.text("access.factor.of", site.name()));
        var words = demanded.isEmpty()
                ? Texts.text("access.factor.none")
                : Texts.text(
                        "access.factor.roles", demanded.stream().map(Texts::of).collect(Collectors.joining(", ")));
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
