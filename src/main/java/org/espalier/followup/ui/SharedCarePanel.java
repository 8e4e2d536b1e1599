package org.espalier.followup.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.util.List;
import java.util.stream.Collectors;
import org.espalier.access.Site;
import org.espalier.access.SiteService;
import org.espalier.followup.SharedCare;
import org.espalier.followup.SharedCareService;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.patient.Child;
import org.espalier.platform.Drafts;

/** Another hospital sees the child, too: asks it to share the care, and ends that. */
final class SharedCarePanel extends Composite<Section> {

    private final Child child;
    private final transient SharedCareService service;
    private final transient SiteService sites;
    private final transient Drafts drafts;
    private final Div body = new Div();

    SharedCarePanel(Child child, SharedCareService service, SiteService sites, Drafts drafts) {
        this.child = child;
        this.service = service;
        this.sites = sites;
        this.drafts = drafts;
        getContent().addClassName("sheet");
        getContent().add(new H2(Texts.text("followup.shared")), body);
        show();
    }

    private void show() {
        body.removeAll();
        var running = service.of(child.id());
        body.add(new Paragraph(Texts.text("followup.shared.help")));
        running.forEach(one -> body.add(line(one)));
        var with = running.stream().map(SharedCare::with).collect(Collectors.toSet());
        var others = sites.all().stream()
                .filter(site -> !site.id().equals(child.site()) && !with.contains(site.id()))
                .toList();
        if (!others.isEmpty()) {
            showForm(others);
        }
    }

    private Div line(SharedCare one) {
        var key = one.state() == SharedCare.State.ASKED ? "followup.shared.waits" : "followup.shared.runs";
        var name = sites.get(one.with()).name();
        var end = new Button(Texts.text("followup.shared.end"), click -> new WhyDialog(
                        "followup.shared.end", new KeptFields(drafts, WhyDialog.DRAFT, one.id()), why -> {
                            service.end(one.id(), why);
                            show();
                        })
                .open());
        end.setAriaLabel(Texts.text("followup.shared.end.with", name));
        var line = new Div(new Paragraph(Texts.text(key, name, DateText.of(one.askedOn()), one.why())), end);
        line.addClassName("shared-care");
        return line;
    }

    private void showForm(List<Site> others) {
        var with = new Select<Site>();
        with.setLabel(Texts.text("followup.shared.with"));
        with.setItems(others);
        with.setItemLabelGenerator(Site::name);
        with.setErrorMessage(Texts.text("followup.transfer.to.missing"));
        var why = new TextField(Texts.text("followup.ask.why"));
        why.setErrorMessage(Texts.text("followup.ask.why.missing"));
        why.setMaxLength(400);
        var kept = new KeptFields(drafts, "shared-care", child.id().value()).text("why", why);
        kept.goOn();
        var ask = new Button(Texts.text("followup.shared.ask"), click -> {
            with.setInvalid(with.isEmpty());
            why.setInvalid(why.getValue().strip().length() < 3);
            if (!with.isInvalid() && !why.isInvalid()) {
                service.ask(child.id(), with.getValue().id(), why.getValue().strip());
                kept.discard();
                show();
            }
        });
        var fields = new Div(with, why);
        fields.addClassName("form-fields");
        body.add(kept.said(), fields, ask);
    }
}
