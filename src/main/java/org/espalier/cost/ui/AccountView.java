package org.espalier.cost.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.Route;
import org.espalier.access.Site;
import org.espalier.cost.Account;
import org.espalier.cost.Charge;
import org.espalier.cost.ChargeService;
import org.espalier.cost.ChargeService.Booked;
import org.espalier.cost.CostReportService;
import org.espalier.cost.Pseudonym;
import org.espalier.cost.TariffData;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;

/** What did one child's care cost, charge by charge, and what of it is to be put right? */
@Route(Urls.COSTS_ACCOUNT)
@StyleSheet("themes/patient.css")
@StyleSheet("themes/cost.css")
class AccountView extends CostPage {

    private final ChargeService charges;
    private final CostReportService reports;

    AccountView(ChargeService charges, CostReportService reports, CostSites sites) {
        super(sites, "cost.account");
        this.charges = charges;
        this.reports = reports;
    }

    @Override
    protected void show(Site here, Div body) {
        asked("account")
                .flatMap(Pseudonym::read)
                .flatMap(pseudonym -> charges.account(here.id(), pseudonym))
                .ifPresentOrElse(
                        account -> show(here, account, body), () -> body.add(PageParts.empty("cost.account.unknown")));
    }

    private void show(Site here, Account account, Div body) {
        var booked = charges.ofAccount(account).stream()
                .map(charge -> new Booked(account.pseudonym(), charge))
                .toList();
        body.add(
                PageParts.part(
                        Texts.text("cost.account-of", account.pseudonym().text()),
                        PageParts.said(Texts.text("cost.pseudonyms")),
                        EpisodePart.of(reports.child(account))),
                PageParts.part(Texts.text("cost.charges"), ChargeTable.of(booked, this::deed)),
                PageParts.part(
                        Texts.text("cost.add"),
                        PageParts.said(Texts.text("cost.add.what")),
                        new ByHandForm(
                                sites().today(here),
                                one -> act(
                                        () -> charges.add(account, one.item(), one.on(), one.quantity(), one.reason()),
                                        "cost.added"))),
                PageParts.part(Texts.text("cost.payer"), payer(account)));
    }

    private Component deed(Charge charge) {
        var adjust = new Button(Texts.text("cost.adjust"), click -> new AdjustDialog(charge, this::adjust).open());
        adjust.addClassName("link");
        adjust.setVisible(charge.stands());
        return new Div(adjust);
    }

    private void adjust(Charge charge, AdjustDialog.Adjusted adjusted) {
        boolean kept = charges.adjust(charge.id(), adjusted.quantity(), adjusted.reason());
        say(Texts.text(kept ? "cost.adjust.done" : "cost.adjust.meanwhile"));
        refresh();
    }

    private Component payer(Account account) {
        var payer = new TextField(Texts.text("cost.who-pays"));
        payer.setMaxLength(TariffData.PAYER_LENGTH);
        payer.setHelperText(Texts.text("cost.who-pays.help"));
        payer.setValue(account.payer());
        var keep = new Button(
                Texts.text("cost.keep"), click -> act(() -> charges.pay(account, payer.getValue()), "cost.set-done"));
        var fields = new Div(payer);
        fields.addClassName("form-fields");
        return new Div(fields, keep);
    }
}
