package org.espalier.prognosis.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.Route;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.SiteService;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.prognosis.RatesService;

/** What did our own limbs teach, and do we forecast by it? */
@Route(Urls.RATES)
@Menu(title = "prognosis.menu.rates", order = 60)
@StyleSheet("themes/prognosis.css")
class RatesView extends Composite<Div> implements HasDynamicTitle {

    RatesView(SiteService sites, RatesService rates, CurrentStaff staff) {
        getContent().addClassNames("screen", "rates");
        getContent()
                .add(
                        new H1(Texts.text("prognosis.rates.heading")),
                        new Paragraph(Texts.text("prognosis.rates.question")));
        sites.mine().forEach(site -> getContent().add(new SiteRates(site, rates, staff.has(Role.SURGEON, site.id()))));
    }

    @Override
    public String getPageTitle() {
        return Texts.page("prognosis.rates.title");
    }
}
