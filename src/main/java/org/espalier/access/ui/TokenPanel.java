package org.espalier.access.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;
import org.espalier.access.Site;
import org.espalier.access.SiteService;
import org.espalier.access.SiteToken;
import org.espalier.access.SiteTokenService;
import org.espalier.access.TokenScope;
import org.espalier.kit.DateText;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;

/** The keys with which archives send and fetch films, the newest first; each secret is shown once. */
final class TokenPanel extends Composite<Section> {

    private final SiteTokenService tokens;
    private final SiteService sites;
    private final UnorderedList list = new UnorderedList();
    private final Div empty = new Div();
    private final Select<Site> site = new Select<>();
    private final TextField label = new TextField(Texts.text("access.token.label"));
    private final Checkbox send = new Checkbox(Texts.of(TokenScope.SEND));
    private final Checkbox fetch = new Checkbox(Texts.of(TokenScope.FETCH));
    private final Paragraph told = new Paragraph();

    TokenPanel(SiteTokenService tokens, SiteService sites) {
        this.tokens = tokens;
        this.sites = sites;
        site.setLabel(Texts.text("access.site"));
        site.setItemLabelGenerator(Site::name);
        list.addClassName("admin-list");
        empty.addClassName("empty");
        empty.setText(Texts.text("access.tokens.empty"));
        told.addClassName("notice");
        told.getElement().setAttribute("role", "status");
        told.setVisible(false);
        var order = PageParts.paragraph("small", Texts.text("access.newest-first"));
        send.setValue(true);
        fetch.setValue(true);
        var form = new Div(site, label, send, fetch, new Button(Texts.text("access.token.issue"), click -> issue()));
        form.addClassName("admin-form");
        getContent().addClassName("sheet");
        getContent().add(new H2(Texts.text("access.tokens")), order, told, list, empty, form);
        refresh();
    }

    void refresh() {
        var chosen = site.getOptionalValue();
        site.setItems(sites.all());
        chosen.ifPresent(site::setValue);
        list.removeAll();
        var all = tokens.all();
        all.forEach(token -> list.add(line(token)));
        empty.setVisible(all.isEmpty());
    }

    private ListItem line(SiteToken token) {
        var name = new Span(token.label());
        name.addClassName("name");
        var line = new ListItem(
                name,
                new Span(sites.get(token.site()).name()),
                new Span(token.scopes().stream().sorted().map(Texts::of).collect(Collectors.joining(", "))),
                new Span(Texts.text("access.token.issued", day(token.issued()))));
        var revoked = token.revoked();
        if (revoked == null) {
            var revoke = new Button(Texts.text("access.token.revoke"), click -> {
                tokens.revoke(token.id());
                refresh();
            });
            revoke.setAriaLabel(Texts.text("access.token.revoke.of", token.label()));
            line.add(revoke);
        } else {
            line.add(new Span(Texts.text("access.token.revoked", day(revoked))));
        }
        return line;
    }

    private static String day(Instant at) {
        return DateText.of(at.atZone(ZoneOffset.UTC).toLocalDate());
    }

    private Set<TokenScope> scopes() {
        var scopes = EnumSet.noneOf(TokenScope.class);
        if (send.getValue()) {
            scopes.add(TokenScope.SEND);
        }
        if (fetch.getValue()) {
            scopes.add(TokenScope.FETCH);
        }
        return scopes;
    }

    private void issue() {
        boolean siteFits = Fields.check(site, !site.isEmpty(), "access.site.missing");
        boolean labelFits = Fields.check(label, !label.getValue().isBlank(), "access.token.label.missing");
        var scopes = scopes();
        if (scopes.isEmpty()) {
            told.setText(Texts.text("access.token.scope.missing"));
            told.setVisible(true);
        } else if (siteFits && labelFits) {
            var secret = tokens.issue(site.getValue().id(), label.getValue().strip(), scopes);
            told.setText(Texts.text("access.token.secret", secret.value()));
            told.setVisible(true);
            label.clear();
            refresh();
        }
    }
}
