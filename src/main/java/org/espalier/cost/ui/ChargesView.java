package org.espalier.cost.ui;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.QueryParameters;
import com.vaadin.flow.router.Route;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Map;
import java.util.Optional;
import org.espalier.access.Site;
import org.espalier.cost.ChargeService;
import org.espalier.kit.DateEntryField;
import org.espalier.kit.DateText;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;

/** What was charged in these days, for which account, and what does it add up to? */
@Route(Urls.COSTS)
@Menu(title = "cost.menu", order = 50)
@StyleSheet("themes/patient.css")
@StyleSheet("themes/cost.css")
class ChargesView extends CostPage {

    private static final int DAYS = 30;

    private final ChargeService charges;

    ChargesView(ChargeService charges, CostSites sites) {
        super(sites, "cost.charges");
        this.charges = charges;
    }

    @Override
    protected void show(Site here, Div body) {
        var today = sites().today(here);
        var until = day("until").orElse(today);
        var from = day("from").orElse(until.minusDays(DAYS));
        var found = charges.ofPeriod(here.id(), from, until);
        var period = Texts.text("cost.from-until", DateText.of(from), DateText.of(until));
        body.add(
                new Div(days(here, from, until, today), files(here, from, until)),
                PageParts.part(
                        Texts.text("cost.by-item", period),
                        ChargeTable.sums(
                                found.stream().map(ChargeService.Booked::charge).toList())),
                PageParts.part(Texts.text("cost.charges-of", period), ChargeTable.of(here, found)));
        if (found.size() == ChargeService.MOST) {
            body.add(PageParts.said(Texts.text("cost.most", ChargeService.MOST)));
        }
        body.add(PageParts.said(Texts.text("cost.rounding")), books(here));
    }

    private Div days(Site here, LocalDate from, LocalDate until, LocalDate today) {
        var first = new DateEntryField(Texts.text("cost.first-day"), () -> today);
        first.setValue(from);
        var last = new DateEntryField(Texts.text("cost.last-day"), () -> today);
        last.setValue(until);
        var show = new Button(Texts.text("cost.show"), click -> {
            var one = first.getValue();
            var other = last.getValue();
            if (one == null || other == null || other.isBefore(one)) {
                say(Texts.text("cost.days-wrong"));
            } else {
                go(here, one, other);
            }
        });
        var fields = new Div(first, last);
        fields.addClassName("form-fields");
        return new Div(fields, show);
    }

    private static void go(Site here, LocalDate from, LocalDate until) {
        UI.getCurrent()
                .navigate(
                        Urls.COSTS,
                        QueryParameters.simple(
                                Map.of("site", here.code(), "from", from.toString(), "until", until.toString())));
    }

    private static Div files(Site here, LocalDate from, LocalDate until) {
        var files = new Div(
                file(Urls.costCharges("csv", here.code(), from, until), "cost.csv"),
                file(Urls.costCharges("xlsx", here.code(), from, until), "cost.xlsx"));
        files.addClassNames("actions", "no-print");
        return files;
    }

    static Anchor file(String url, String key) {
        var link = new Anchor(url, Texts.text(key));
        link.getElement().setAttribute("download", true);
        link.setRouterIgnore(true);
        return link;
    }

    private Div books(Site here) {
        return new Div(PageParts.part(
                Texts.text("cost.anew"),
                PageParts.said(Texts.text("cost.anew.what")),
                new Button(
                        Texts.text("cost.anew.do"),
                        click -> act(() -> charges.rebuild(here.id()), "cost.anew.asked"))));
    }

    private Optional<LocalDate> day(String name) {
        try {
            return asked(name).map(LocalDate::parse);
        } catch (DateTimeParseException unreadable) {
            return Optional.empty();
        }
    }
}
