package org.espalier.followup.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import org.espalier.access.Site;
import org.espalier.access.SiteService;
import org.espalier.followup.Transfer;
import org.espalier.followup.TransferService;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.patient.Child;
import org.espalier.platform.Drafts;

/** The family moved: asks another hospital of the network to take the child over. */
final class TransferPanel extends Composite<Section> {

    private final Child child;
    private final transient TransferService service;
    private final transient SiteService sites;
    private final transient Drafts drafts;
    private final Div body = new Div();

    TransferPanel(Child child, TransferService service, SiteService sites, Drafts drafts) {
        this.child = child;
        this.service = service;
        this.sites = sites;
        this.drafts = drafts;
        getContent().addClassName("sheet");
        getContent().add(new H2(Texts.text("followup.transfer")), body);
        show();
    }

    private void show() {
        body.removeAll();
        service.of(child.id()).ifPresentOrElse(this::show, this::showForm);
    }

    private void show(Transfer open) {
        body.add(new Paragraph(Texts.text(
                "followup.transfer.waits", sites.get(open.to()).name(), DateText.of(open.askedOn()), open.why())));
    }

    private void showForm() {
        var to = new Select<Site>();
        to.setLabel(Texts.text("followup.transfer.to"));
        to.setItems(sites.all().stream()
                .filter(site -> !site.id().equals(child.site()))
                .toList());
        to.setItemLabelGenerator(Site::name);
        to.setErrorMessage(Texts.text("followup.transfer.to.missing"));
        var why = new TextField(Texts.text("followup.ask.why"));
        why.setErrorMessage(Texts.text("followup.ask.why.missing"));
        why.setMaxLength(400);
        var kept = new KeptFields(drafts, "transfer", child.id().value()).text("why", why);
        kept.goOn();
        var ask = new Button(Texts.text("followup.transfer.ask"), click -> {
            to.setInvalid(to.isEmpty());
            why.setInvalid(why.getValue().strip().length() < 3);
            if (!to.isInvalid() && !why.isInvalid()) {
                service.ask(child.id(), to.getValue().id(), why.getValue().strip());
                kept.discard();
                show();
            }
        });
        var fields = new Div(to, why);
        fields.addClassName("form-fields");
        body.add(new Paragraph(Texts.text("followup.transfer.help")), kept.said(), fields, ask);
    }
}
