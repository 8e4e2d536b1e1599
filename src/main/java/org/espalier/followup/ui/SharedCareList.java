package org.espalier.followup.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.UUID;
import java.util.function.Consumer;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.followup.SharedCare;
import org.espalier.followup.SharedCareService;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.platform.Drafts;

/** Children whose care is shared with another hospital: to be answered first, then those that run. */
final class SharedCareList extends Composite<Section> {

    private final transient SharedCareService service;
    private final transient SiteService sites;
    private final transient CareSites mine;
    private final transient Drafts drafts;
    private final UnorderedList list = new UnorderedList();

    SharedCareList(SharedCareService service, SiteService sites, CareSites mine, Drafts drafts) {
        this.service = service;
        this.sites = sites;
        this.mine = mine;
        this.drafts = drafts;
        list.addClassName("reminders");
        getContent().addClassNames("sheet", "no-print");
        getContent().add(new H2(Texts.text("followup.shared.list")), list);
        show();
    }

    private void show() {
        list.removeAll();
        var open = service.open();
        open.forEach(one -> list.add(item(one)));
        setVisible(!open.isEmpty());
    }

    private ListItem item(SharedCare one) {
        boolean waits = one.state() == SharedCare.State.ASKED;
        var born = new Span(Texts.text("kit.born") + " " + DateText.of(one.birthDate()));
        var way = new Span(Texts.text(
                waits ? "followup.shared.way.waits" : "followup.shared.way.runs",
                sites.get(one.from()).name(),
                sites.get(one.with()).name(),
                DateText.of(one.askedOn())));
        return new ListItem(
                who(one),
                born,
                way,
                new Span(one.why()),
                waits && isMine(one.with()) ? answers(one.id()) : end(one.id()));
    }

    /** Who was only asked knows the child by name and cannot open it yet. */
    private Component who(SharedCare one) {
        boolean mayOpen = one.state() == SharedCare.State.ACCEPTED || isMine(one.from());
        var who = mayOpen ? new Anchor(Urls.course(one.child().value()), one.childName()) : new Span(one.childName());
        who.addClassName("name");
        return who;
    }

    private boolean isMine(SiteId hospital) {
        return mine.all().stream().anyMatch(site -> site.id().equals(hospital));
    }

    private Div answers(UUID id) {
        var accept = new Button(Texts.text("followup.shared.accept"), click -> {
            service.accept(id);
            show();
        });
        accept.addThemeVariants(ButtonVariant.PRIMARY);
        var decline = why("followup.transfer.decline", id, why -> service.decline(id, why));
        var answers = new Div(accept, decline);
        answers.addClassName("actions");
        return answers;
    }

    private Div end(UUID id) {
        return new Div(why("followup.shared.end", id, why -> service.end(id, why)));
    }

    private Button why(String key, UUID id, Consumer<String> deed) {
        return new Button(
                Texts.text(key), click -> new WhyDialog(key, new KeptFields(drafts, WhyDialog.DRAFT, id), why -> {
                            deed.accept(why);
                            show();
                        })
                        .open());
    }
}
