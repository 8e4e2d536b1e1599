package org.espalier.opinion.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.combobox.MultiSelectComboBox;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import java.util.UUID;
import org.espalier.access.CurrentStaff;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.opinion.AskService;
import org.espalier.opinion.Colleague;
import org.espalier.opinion.Panel;
import org.espalier.opinion.PanelService;

/** Which groups of colleagues can be asked together, and who is in them? */
@Route(Urls.OPINION_PANELS)
@StyleSheet("themes/patient.css")
@StyleSheet("themes/opinion.css")
class PanelsView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private final PanelService panels;
    private final AskService asks;
    private final CurrentStaff staff;

    PanelsView(PanelService panels, AskService asks, CurrentStaff staff) {
        this.panels = panels;
        this.asks = asks;
        this.staff = staff;
        getContent().addClassNames("screen", "opinions");
    }

    @Override
    public String getPageTitle() {
        return Texts.page("opinion.page");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        refresh();
    }

    private void refresh() {
        getContent().removeAll();
        getContent()
                .add(
                        new H1(Texts.text("opinion.panels")),
                        PageParts.paragraph("question", Texts.text("opinion.panels.what")));
        panels.all().forEach(panel -> getContent().add(sheet(panel)));
        getContent().add(making());
    }

    private Section sheet(Panel panel) {
        var sheet = PageParts.part(panel.name());
        sheet.add(PageParts.paragraph("small", Texts.text("opinion.panel.made-by", panel.madeBy())));
        panel.members().forEach(one -> {
            var line = new Div(PageParts.paragraph("name", one.name()));
            if (panel.mine() || one.id().equals(staff.id())) {
                line.add(new Button(Texts.text("opinion.panel.remove", one.name()), click -> {
                    panels.remove(panel.id(), one.id());
                    refresh();
                }));
            }
            sheet.add(line);
        });
        if (panel.mine()) {
            sheet.add(joining(panel));
        }
        return sheet;
    }

    private Div joining(Panel panel) {
        var who = colleagues(Texts.text("opinion.panel.for", panel.name()));
        var join = new Button(Texts.text("opinion.panel.join"), click -> {
            who.getValue().forEach(one -> panels.add(panel.id(), one.id()));
            refresh();
        });
        return new Div(who, Parts.actions(join));
    }

    private MultiSelectComboBox<Colleague> colleagues(String label) {
        var who = new MultiSelectComboBox<Colleague>(label);
        who.setItems(asks.colleagues());
        who.setItemLabelGenerator(one -> Texts.text("opinion.colleague", one.name(), one.hospital()));
        return who;
    }

    private Section making() {
        var name = new TextField(Texts.text("opinion.panel.name"));
        name.setMaxLength(80);
        var who = colleagues(Texts.text("opinion.colleagues"));
        var make = new Button(Texts.text("opinion.panel.make"), click -> {
            name.setErrorMessage(Texts.text("opinion.panel.name.missing"));
            name.setInvalid(name.getValue().strip().length() < 2);
            if (!name.isInvalid()) {
                var chosen = who.getValue().stream().map(Colleague::id).toList();
                if (panels.make(UUID.randomUUID(), name.getValue(), chosen)) {
                    refresh();
                } else {
                    name.setErrorMessage(Texts.text("opinion.panel.name.taken"));
                    name.setInvalid(true);
                }
            }
        });
        return PageParts.part(Texts.text("opinion.panel.new"), name, who, Parts.actions(make));
    }
}
