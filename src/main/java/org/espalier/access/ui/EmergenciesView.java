package org.espalier.access.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.Route;
import org.espalier.access.EmergencyAccess;
import org.espalier.access.EmergencyService;
import org.espalier.access.Site;
import org.espalier.access.SiteService;
import org.espalier.kit.MomentText;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;

/** Who of another hospital read a record in an emergency, why, and was it right? */
@Route(Urls.EMERGENCIES)
@Menu(title = "access.emergencies.menu", order = 94)
@StyleSheet("themes/admin.css")
class EmergenciesView extends Composite<Div> implements HasDynamicTitle {

    private static final int SHORTEST_NOTE = 3;

    private final EmergencyService emergencies;
    private final SiteService sites;
    private final UnorderedList list = new UnorderedList();
    private final Div empty = new Div();

    EmergenciesView(EmergencyService emergencies, SiteService sites) {
        this.emergencies = emergencies;
        this.sites = sites;
        list.addClassName("admin-list");
        empty.addClassName("empty");
        empty.setText(Texts.text("access.emergencies.none"));
        var question = PageParts.paragraph("question", Texts.text("access.emergencies.question"));
        var order = PageParts.paragraph("small", Texts.text("access.emergencies.order"));
        getContent().addClassName("screen");
        getContent().add(new H1(Texts.text("access.emergencies")), question, order, list, empty);
        refresh();
    }

    @Override
    public String getPageTitle() {
        return Texts.page("access.emergencies.title");
    }

    private void refresh() {
        list.removeAll();
        var told = emergencies.told();
        told.forEach(one -> list.add(line(one)));
        empty.setVisible(told.isEmpty());
    }

    private ListItem line(EmergencyAccess one) {
        var there = sites.get(one.site());
        var who = new Span(one.who());
        who.addClassName("name");
        return new ListItem(
                who,
                new Span(Texts.text(
                        "access.emergencies.line",
                        MomentText.of(one.taken(), there.zone()),
                        MomentText.of(one.until(), there.zone()),
                        there.name())),
                new Span(Texts.text("access.emergencies.reason", one.reason())),
                new Anchor(Urls.whoSaw(one.child()), Texts.text("access.emergencies.seen")),
                found(one, there));
    }

    private Div found(EmergencyAccess one, Site there) {
        var review = one.review();
        if (review == null) {
            return review(one);
        }
        var key = review.justified() ? "access.emergencies.found" : "access.emergencies.refused";
        return new Div(new Span(Texts.text(key, review.by(), MomentText.of(review.at(), there.zone()), review.note())));
    }

    private Div review(EmergencyAccess one) {
        var note = new TextField(Texts.text("access.emergencies.note"));
        note.setMaxLength(400);
        var right = new Button(Texts.text("access.emergencies.justified"), click -> review(one, note, true));
        var wrong = new Button(Texts.text("access.emergencies.not-justified"), click -> review(one, note, false));
        return new Div(note, right, wrong);
    }

    private void review(EmergencyAccess one, TextField note, boolean justified) {
        var words = note.getValue().strip();
        if (Fields.check(note, words.length() >= SHORTEST_NOTE, "access.emergencies.note.missing")) {
            emergencies.review(one.id(), justified, words);
            refresh();
        }
    }
}
