package org.espalier.access.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.Route;
import org.espalier.access.SecondFactorService;
import org.espalier.access.SessionService;
import org.espalier.access.SignOnService;
import org.espalier.access.SiteService;
import org.espalier.access.SiteTokenService;
import org.espalier.access.StaffService;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;

/** Where the operator keeps the network: its hospitals, who works in them, and the keys of their archives. */
@Route("admin")
@Menu(title = "access.menu.network", order = 90)
@StyleSheet("themes/admin.css")
class NetworkView extends Composite<Div> implements HasDynamicTitle {

    NetworkView(
            SiteService sites,
            StaffService staff,
            SiteTokenService tokens,
            SecondFactorService factors,
            SignOnService signOn,
            SessionService sessions) {
        var question = PageParts.paragraph("question", Texts.text("access.network.question"));
        var staffPanel = new StaffPanel(staff, sites, factors, signOn, sessions);
        var tokenPanel = new TokenPanel(tokens, sites);
        var sitePanel = new SitePanel(sites, factors, () -> {
            staffPanel.refresh();
            tokenPanel.refresh();
        });
        getContent().addClassNames("screen", "network");
        getContent().add(new H1(Texts.text("access.network")), question, sitePanel, staffPanel, tokenPanel);
    }

    @Override
    public String getPageTitle() {
        return Texts.page("access.network.title");
    }
}
