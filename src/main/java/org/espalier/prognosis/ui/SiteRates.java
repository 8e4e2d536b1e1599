package org.espalier.prognosis.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCaption;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import org.espalier.access.Site;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.prognosis.LearntRates;
import org.espalier.prognosis.RateSource;
import org.espalier.prognosis.RatesOfSite;
import org.espalier.prognosis.RatesService;
import org.espalier.science.forecast.CentreRates;
import org.espalier.science.forecast.Rate;

/** The rates of one hospital, and the switch between its own and the published ones. */
class SiteRates extends Composite<Section> {

    private static final int SHORTEST_REASON = 3;

    private final Site site;
    private final RatesService rates;
    private final boolean mayChoose;

    SiteRates(Site site, RatesService rates, boolean mayChoose) {
        this.site = site;
        this.rates = rates;
        this.mayChoose = mayChoose;
        show();
    }

    private void show() {
        RatesOfSite found = rates.of(site.id());
        boolean own = found.chosen() == RateSource.OWN;
        getContent().removeAll();
        getContent().add(new H2(site.name()), new Paragraph(standing(found, own)));
        if (mayChoose) {
            getContent().add(choice(own));
        }
        getContent().add(choices(found), table(found.newest()));
    }

    private String standing(RatesOfSite found, boolean own) {
        if (!own) {
            return Texts.text("prognosis.rates.published-chosen");
        }
        return found.newest()
                .map(newest ->
                        Texts.text("prognosis.rates.own-used", newest.rates().limbs(), DateText.of(day(newest))))
                .orElseGet(() -> Texts.text("prognosis.rates.nothing-learnt"));
    }

    private LocalDate day(LearntRates learnt) {
        return LocalDate.ofInstant(learnt.at(), site.zone());
    }

    private Div choice(boolean own) {
        var reason = new TextField(Texts.text("prognosis.rates.reason"));
        reason.setMaxLength(RatesService.REASON_LENGTH);
        var button = new Button(Texts.text(own ? "prognosis.rates.use-published" : "prognosis.rates.use-own"));
        button.addClickListener(click -> {
            boolean told = reason.getValue().strip().length() >= SHORTEST_REASON;
            reason.setErrorMessage(Texts.text("prognosis.rates.reason.wanted"));
            reason.setInvalid(!told);
            if (told) {
                rates.choose(site.id(), own ? RateSource.PUBLISHED : RateSource.OWN, reason.getValue());
                show();
            }
        });
        var line = new Div(reason, button);
        line.addClassName("rates-choice");
        return line;
    }

    private Component choices(RatesOfSite found) {
        var list = new UnorderedList();
        found.choices()
                .forEach(choice -> list.add(new ListItem(Texts.text(
                        choice.source() == RateSource.OWN
                                ? "prognosis.rates.chose-own"
                                : "prognosis.rates.chose-published",
                        DateText.of(LocalDate.ofInstant(choice.at(), site.zone())),
                        choice.by(),
                        choice.reason()))));
        return list;
    }

    private static Div table(Optional<LearntRates> newest) {
        var table = new NativeTable();
        var caption = new NativeTableCaption();
        caption.setText(Texts.text("prognosis.rates.caption"));
        table.add(caption);
        table.add(new NativeTableRow(
                header("prognosis.rates.column.rate"),
                header("prognosis.rates.column.published"),
                header("prognosis.rates.column.own"),
                header("prognosis.rates.column.source")));
        Arrays.stream(Rate.values()).forEach(rate -> table.add(row(rate, newest)));
        var frame = new Div(table);
        frame.addClassName("rates-table");
        frame.getElement().setAttribute("tabindex", "0");
        frame.getElement().setAttribute("role", "region");
        frame.getElement().setAttribute("aria-label", Texts.text("prognosis.rates.caption"));
        return frame;
    }

    private static NativeTableRow row(Rate rate, Optional<LearntRates> newest) {
        var name = new NativeTableHeaderCell(Texts.text("prognosis.rate." + rate.name()));
        name.getElement().setAttribute("scope", "row");
        return new NativeTableRow(
                name,
                new NativeTableCell(number(CentreRates.published(), rate)),
                new NativeTableCell(newest.map(learnt -> number(learnt.rates(), rate))
                        .orElseGet(() -> Texts.text("prognosis.rates.not-learnt"))),
                source(rate));
    }

    private static String number(CentreRates rates, Rate rate) {
        return Texts.text("prognosis.rates.value", rates.value(rate), rates.spread(rate));
    }

    private static NativeTableHeaderCell header(String key) {
        var header = new NativeTableHeaderCell(Texts.text(key));
        header.getElement().setAttribute("scope", "col");
        return header;
    }

    /** Quoted as the table has it, whatever the language of the page. */
    private static NativeTableCell source(Rate rate) {
        var cell = new NativeTableCell(CentreRates.source(rate));
        cell.getElement().setAttribute("lang", "en").setAttribute("dir", "ltr");
        return cell;
    }
}
