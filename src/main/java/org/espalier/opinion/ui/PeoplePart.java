package org.espalier.opinion.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Section;
import java.time.ZoneId;
import java.util.function.Consumer;
import org.espalier.access.StaffId;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.opinion.Colleague;
import org.espalier.opinion.HandOver;
import org.espalier.opinion.Member;
import org.espalier.opinion.OpinionThread;
import org.espalier.opinion.ThreadId;

/** Who is asked, until when each grant runs, and what may be done about it. */
class PeoplePart extends Composite<Section> {

    private final ThreadId thread;
    private final ThreadServices services;
    private final StaffId me;
    private final ZoneId zone;
    private final Runnable changed;
    private final Div list = new Div();
    private final Div deeds = new Div();
    private boolean leading;
    private boolean built;

    PeoplePart(ThreadId thread, ThreadServices services, StaffId me, ZoneId zone, Runnable changed) {
        this.thread = thread;
        this.services = services;
        this.me = me;
        this.zone = zone;
        this.changed = changed;
        getContent().addClassName("sheet");
        getContent().add(new H2(Texts.text("opinion.people")), list, deeds);
    }

    void show(OpinionThread open) {
        leading = open.mayLead() && open.closing().isEmpty();
        list.removeAll();
        open.members().forEach(member -> list.add(line(member)));
        open.handOvers().stream().filter(wish -> !wish.agreed()).forEach(wish -> list.add(wish(wish)));
        if (!open.mayWrite()) {
            deeds.removeAll();
        } else if (!built) {
            built = true;
            build(open);
        }
    }

    private Div line(Member member) {
        var until = member.ended()
                .map(why -> Texts.text("opinion.grant.ended", Parts.moment(member.endsAt(), zone), Texts.of(why)))
                .orElseGet(() -> Texts.text("opinion.grant.until", Parts.moment(member.endsAt(), zone)));
        var line = new Div(PageParts.paragraph("name", member.name()), PageParts.paragraph("small", until));
        if (leading && member.ended().isEmpty() && !member.staff().equals(me)) {
            line.add(new Button(Texts.text("opinion.withdraw", member.name()), click -> {
                services.opinions().withdraw(thread, member.staff());
                changed.run();
            }));
        }
        return line;
    }

    private Div wish(HandOver wish) {
        var line = new Div(
                PageParts.paragraph("words", Texts.text("opinion.hand-on.wish", wish.fromName(), wish.toName())));
        if (leading) {
            line.add(new Button(Texts.text("opinion.hand-on.agree"), click -> {
                services.opinions().agree(thread, wish.id());
                changed.run();
            }));
        }
        return line;
    }

    private void build(OpinionThread open) {
        if (leading) {
            var until = open.openUntil().atZone(zone).toLocalDate().minusDays(1);
            deeds.add(
                    new Button(Texts.text("opinion.remind"), click -> {
                        services.opinions().remind(thread);
                        changed.run();
                    }),
                    choice("opinion.invite", "opinion.invite.whom", one -> services.opinions()
                            .invite(thread, one.id(), until)));
        } else {
            deeds.add(choice("opinion.hand-on", "opinion.hand-on.whom", one -> services.opinions()
                    .handOn(thread, one.id())));
        }
    }

    private Div choice(String key, String whom, Consumer<Colleague> deed) {
        var box = new ComboBox<Colleague>(Texts.text(whom));
        box.setItems(services.asks().colleagues());
        box.setItemLabelGenerator(one -> Texts.text("opinion.colleague", one.name(), one.hospital()));
        box.setErrorMessage(Texts.text("opinion.colleague.missing"));
        var button = new Button(Texts.text(key), click -> {
            box.setInvalid(box.isEmpty());
            if (!box.isEmpty()) {
                deed.accept(box.getValue());
                box.clear();
                changed.run();
            }
        });
        var both = new Div(box, button);
        both.addClassName("choice");
        return both;
    }
}
