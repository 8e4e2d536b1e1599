package org.espalier.followup.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.Locale;
import java.util.UUID;
import java.util.function.Consumer;
import org.espalier.access.SiteService;
import org.espalier.followup.Transfer;
import org.espalier.followup.TransferService;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.platform.Drafts;

/** Children on their way between hospitals: to be taken over, waiting to be, and lately handed over. */
final class TransferList extends Composite<Section> {

    private final transient TransferService service;
    private final transient SiteService sites;
    private final transient CareSites mine;
    private final transient Drafts drafts;
    private final UnorderedList list = new UnorderedList();

    TransferList(TransferService service, SiteService sites, CareSites mine, Drafts drafts) {
        this.service = service;
        this.sites = sites;
        this.mine = mine;
        this.drafts = drafts;
        list.addClassName("reminders");
        getContent().addClassNames("sheet", "no-print");
        getContent()
                .add(
                        new H2(Texts.text("followup.transfers")),
                        new Paragraph(Texts.text("followup.transfers.hold")),
                        list);
        show();
    }

    private void show() {
        list.removeAll();
        var open = service.open();
        open.forEach(transfer -> list.add(item(transfer)));
        var handed = service.handedOver();
        handed.forEach(transfer -> list.add(handedOver(transfer)));
        setVisible(!open.isEmpty() || !handed.isEmpty());
    }

    private ListItem handedOver(Transfer transfer) {
        return new ListItem(
                name(transfer),
                born(transfer),
                new Span(Texts.text(
                        "followup.transfer.handed-over",
                        sites.get(transfer.to()).name(),
                        DateText.of(transfer.answeredOn().orElseThrow()))));
    }

    private ListItem item(Transfer transfer) {
        boolean toMe = mine.all().stream().anyMatch(site -> site.id().equals(transfer.to()));
        var way = new Span(Texts.text(
                "followup.transfer.way",
                sites.get(transfer.from()).name(),
                sites.get(transfer.to()).name(),
                DateText.of(transfer.askedOn())));
        var who =
                toMe ? name(transfer) : new Anchor(Urls.visits(transfer.child().value()), name(transfer));
        return new ListItem(
                who, born(transfer), way, new Span(transfer.why()), toMe ? answers(transfer) : withdraw(transfer));
    }

    private static Span name(Transfer transfer) {
        var parts = transfer.childName().split(", ", 2);
        var name = new Span(parts[0].toUpperCase(Locale.ROOT) + (parts.length < 2 ? "" : ", " + parts[1]));
        name.addClassName("name");
        return name;
    }

    private static Span born(Transfer transfer) {
        return new Span(Texts.text("kit.born") + " " + DateText.of(transfer.birthDate()));
    }

    private Div answers(Transfer transfer) {
        var accept = new Button(Texts.text("followup.transfer.accept"), click -> accept(transfer));
        accept.addThemeVariants(ButtonVariant.PRIMARY);
        var decline = why("followup.transfer.decline", transfer.id(), why -> service.decline(transfer.id(), why));
        var answers = new Div(accept, decline);
        answers.addClassName("actions");
        return answers;
    }

    private void accept(Transfer transfer) {
        var child = service.accept(transfer.id());
        getUI().ifPresent(ui ->
                child.ifPresentOrElse(one -> ui.navigate(Urls.visits(one.id().value())), this::show));
    }

    private Div withdraw(Transfer transfer) {
        return new Div(why("followup.transfer.withdraw", transfer.id(), why -> service.withdraw(transfer.id(), why)));
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
