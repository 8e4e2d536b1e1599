package org.espalier.opinion.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.opinion.Message;
import org.espalier.opinion.OpinionThread;
import org.espalier.opinion.Question;
import org.espalier.opinion.ShownFilm;
import org.espalier.opinion.ThreadId;
import org.espalier.platform.Draft;
import tools.jackson.databind.json.JsonMapper;

/** What was said and what happened, the newest last, and a place to say something. */
class TalkPart extends Composite<Section> {

    private static final String KIND = "opinion-message";
    private static final JsonMapper JSON = new JsonMapper();

    private final ThreadId thread;
    private final ThreadServices services;
    private final ZoneId zone;
    private final Runnable changed;
    private final Consumer<UUID> look;
    private final Select<ShownFilm> about = new Select<>();
    private List<ShownFilm> films = List.of();
    private final Div list = new Div();
    private final Div form = new Div();
    private final TextArea text = new TextArea(Texts.text("opinion.message"));
    private UUID next = UUID.randomUUID();

    /** A message in the making. */
    record Typed(String text) {}

    /** @param look shows a film that a message is about */
    TalkPart(ThreadId thread, ThreadServices services, ZoneId zone, Runnable changed, Consumer<UUID> look) {
        this.thread = thread;
        this.services = services;
        this.zone = zone;
        this.changed = changed;
        this.look = look;
        about.setLabel(Texts.text("opinion.about"));
        about.setItemLabelGenerator(
                film -> film == null ? Texts.text("opinion.about.none") : Parts.atMonth(film.title(), film.months()));
        about.setEmptySelectionAllowed(true);
        about.setEmptySelectionCaption(Texts.text("opinion.about.none"));
        list.addClassName("messages");
        list.getElement().setAttribute("role", "log");
        list.getElement().setAttribute("aria-label", Texts.text("opinion.messages"));
        text.setMaxLength(Question.LENGTH);
        text.setValueChangeMode(ValueChangeMode.LAZY);
        text.setHelperText(Texts.text("opinion.message.help"));
        draft().map(draft -> JSON.readValue(draft.content(), Typed.class))
                .ifPresent(kept -> text.setValue(kept.text()));
        text.addValueChangeListener(change -> keep());
        form.addClassName("advice-form");
        form.add(text, about, Parts.actions(new Button(Texts.text("opinion.say"), click -> say())));
        getContent().addClassName("sheet");
        getContent().add(new H2(Texts.text("opinion.messages")), list, form);
    }

    void show(OpinionThread open) {
        if (!films.equals(open.films())) {
            films = open.films();
            about.setItems(films);
        }
        about.setVisible(!films.isEmpty());
        list.removeAll();
        open.messages().forEach(message -> list.add(line(message)));
        if (open.messages().isEmpty()) {
            list.add(PageParts.paragraph("empty", Texts.text("opinion.messages.none")));
        }
        form.setVisible(open.mayWrite());
    }

    private Div line(Message message) {
        var who = PageParts.paragraph(
                "small", Texts.text("opinion.said-by", message.name(), Parts.moment(message.at(), zone)));
        var line = new Div(who);
        line.addClassName("message");
        line.add(
                message.kind() == Message.Kind.TEXT
                        ? PageParts.paragraph("words", message.text())
                        : PageParts.paragraph(
                                "happened",
                                Texts.text("opinion.happened." + message.kind().name())));
        message.film().flatMap(this::film).ifPresent(film -> {
            var show = new Button(
                    Texts.text("opinion.about.film", Parts.atMonth(film.title(), film.months())),
                    click -> look.accept(film.id()));
            show.addClassName("link");
            line.add(show);
        });
        return line;
    }

    private Optional<ShownFilm> film(UUID id) {
        return films.stream().filter(film -> film.id().equals(id)).findFirst();
    }

    private void say() {
        text.setInvalid(text.getValue().isBlank());
        text.setErrorMessage(Texts.text("opinion.message.missing"));
        if (text.isInvalid()) {
            return;
        }
        if (!services.opinions()
                .say(thread, next, text.getValue(), about.getOptionalValue().map(ShownFilm::id))) {
            text.setErrorMessage(Texts.text("opinion.names-the-child"));
            text.setInvalid(true);
            return;
        }
        next = UUID.randomUUID();
        text.clear();
        about.clear();
        draft().ifPresent(draft -> services.drafts().discard(draft.id()));
        changed.run();
    }

    private void keep() {
        var json = JSON.writeValueAsString(new Typed(text.getValue()));
        var draft = draft().orElseGet(() -> services.drafts().start(KIND, thread.value(), json));
        services.drafts().save(draft.id(), draft.revision() + 1, json);
    }

    private Optional<Draft> draft() {
        return services.drafts().find(KIND, thread.value());
    }
}
