package org.espalier.followup.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.espalier.access.Site;
import org.espalier.followup.Attempt;
import org.espalier.followup.AttemptOutcome;
import org.espalier.followup.Channel;
import org.espalier.followup.DueText;
import org.espalier.followup.RecallService;
import org.espalier.followup.Reminder;
import org.espalier.kit.IdentityBanner;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;

/** Families to be reminded of their date, fourteen and two days before. */
final class ReminderList extends Composite<Section> {

    private final transient RecallService recall;
    private final Site site;
    private final LocalDate today;
    private final UnorderedList list = new UnorderedList();
    private final List<Button> deeds = new ArrayList<>();

    ReminderList(RecallService recall, Site site, LocalDate today) {
        this.recall = recall;
        this.site = site;
        this.today = today;
        list.addClassName("reminders");
        getContent().addClassName("sheet");
        getContent().add(new H2(Texts.text("followup.reminders", site.name())), list);
        show();
    }

    private void show() {
        list.removeAll();
        deeds.clear();
        var reminders = recall.reminders(site.id());
        reminders.forEach(reminder -> list.add(item(reminder)));
        setVisible(!reminders.isEmpty());
    }

    /** The keyboard goes on with the family that came up. */
    private void goOn(int place) {
        if (!deeds.isEmpty()) {
            deeds.get(Math.clamp(place, 0, deeds.size() - 1)).focus();
        }
    }

    private ListItem item(Reminder reminder) {
        var appointment = reminder.visit().appointment().orElseThrow();
        var name = new Span(IdentityBanner.name(reminder.child().who()));
        name.addClassName("name");
        var link = new Anchor(Urls.visits(reminder.child().id().value()), name);
        var when = new Span(DueText.date(appointment, today));
        var done = new Button(Texts.text("followup.reminded"), click -> {
            recall.tried(
                    reminder.visit(),
                    new Attempt(
                            today,
                            Channel.MESSAGE,
                            AttemptOutcome.REMINDED,
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty()));
            int place = deeds.indexOf(click.getSource());
            show();
            goOn(place);
        });
        done.addClassName("no-print");
        done.setVisible(reminder.family().mayBeContacted());
        if (done.isVisible()) {
            deeds.add(done);
        }
        done.setAriaLabel(Texts.text("followup.of-child", done.getText(), name.getText()));
        return new ListItem(link, when, new Reach(reminder.family()), done);
    }
}
