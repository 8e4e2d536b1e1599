package org.espalier.access.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.Autocomplete;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import java.time.LocalDate;
import org.espalier.access.EmergencyAccess;
import org.espalier.access.EmergencyAnswer;
import org.espalier.access.EmergencyService;
import org.espalier.access.Site;
import org.espalier.access.SiteService;
import org.espalier.kit.DateEntryField;
import org.espalier.kit.MomentText;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;

/** Asks for a child of another hospital in an emergency, and leads to those that are open. */
@Route(Urls.EMERGENCY)
@StyleSheet("themes/admin.css")
class EmergencyView extends Composite<Div> implements HasDynamicTitle {

    private final EmergencyService emergencies;
    private final SiteService sites;
    private final Select<Site> site = new Select<>();
    private final TextField number = new TextField(Texts.text("access.emergency.number"));
    private final DateEntryField born;
    private final TextArea reason = new TextArea(Texts.text("access.emergency.reason"));
    private final Paragraph answer = new Paragraph();
    private final Section mine = new Section();

    EmergencyView(EmergencyService emergencies, SiteService sites) {
        this.emergencies = emergencies;
        this.sites = sites;
        var own = sites.mine();
        var today = own.stream().findFirst().map(one -> sites.today(one.id())).orElse(LocalDate.EPOCH);
        born = new DateEntryField(Texts.text("access.emergency.born"), () -> today);
        site.setLabel(Texts.text("access.emergency.site"));
        site.setItems(sites.all().stream().filter(one -> !own.contains(one)).toList());
        site.setItemLabelGenerator(Site::name);
        number.setAutocomplete(Autocomplete.OFF);
        reason.setHelperText(Texts.text("access.emergency.reason.help"));
        reason.setMaxLength(400);
        answer.addClassNames("notice", "soon");
        answer.getElement().setAttribute("role", "alert");
        answer.setVisible(false);
        var caution = PageParts.caution("access.emergency.caution");
        var take = new Button(Texts.text("access.emergency.take"), click -> take());
        take.addThemeVariants(ButtonVariant.PRIMARY);
        var fields = new Div(site, number, born, reason);
        fields.addClassName("admin-form");
        mine.addClassName("sheet");
        getContent().addClassNames("screen", "network");
        getContent()
                .add(
                        new H1(Texts.text("access.emergency")),
                        PageParts.paragraph("question", Texts.text("access.emergency.question")),
                        caution,
                        fields,
                        answer,
                        take,
                        mine);
        showMine();
    }

    @Override
    public String getPageTitle() {
        return Texts.page("access.emergency.title");
    }

    private void take() {
        var day = born.getValue();
        boolean siteFits = Fields.check(site, !site.isEmpty(), "access.site.missing");
        boolean numberFits = Fields.check(number, !number.getValue().isBlank(), "access.emergency.number.missing");
        boolean bornFits = Fields.check(born, day != null, "access.emergency.born.missing");
        boolean reasonFits = Fields.check(
                reason,
                reason.getValue().strip().length() >= EmergencyService.SHORTEST_REASON,
                "access.emergency.reason.missing");
        if (day != null && siteFits && numberFits && bornFits && reasonFits) {
            show(emergencies.take(site.getValue().id(), number.getValue(), day, reason.getValue()));
        }
    }

    private void show(EmergencyAnswer came) {
        answer.setVisible(!(came instanceof EmergencyAnswer.Taken));
        switch (came) {
            case EmergencyAnswer.Taken taken -> getUI().ifPresent(ui -> ui.navigate(Urls.course(taken.child())));
            case EmergencyAnswer.NotFound none ->
                answer.setText(
                        Texts.text("access.emergency.not-found", site.getValue().name()));
            case EmergencyAnswer.Wait(var left) ->
                answer.setText(Texts.text("access.emergency.wait", left.toSeconds()));
        }
    }

    private void showMine() {
        var open = emergencies.mine();
        mine.add(
                new H2(Texts.text("access.emergency.mine")),
                PageParts.paragraph(
                        "small",
                        Texts.text(open.isEmpty() ? "access.emergency.mine.none" : "access.emergency.mine.order")));
        var list = new UnorderedList();
        list.addClassName("admin-list");
        open.forEach(one -> list.add(line(one)));
        mine.add(list);
    }

    private ListItem line(EmergencyAccess one) {
        var there = sites.get(one.site());
        return new ListItem(
                new Anchor(Urls.course(one.child()), Texts.text("access.emergency.open")),
                new Span(Texts.text("access.emergency.until", there.name(), MomentText.of(one.until(), there.zone()))),
                new Span(one.reason()));
    }
}
