package org.espalier.film.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.textfield.Autocomplete;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.access.SiteId;
import org.espalier.film.FilmService;
import org.espalier.film.TrayItem;
import org.espalier.kit.DateEntryField;
import org.espalier.kit.DateText;
import org.espalier.kit.IdentityBanner;
import org.espalier.kit.Texts;
import org.espalier.patient.Child;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.jspecify.annotations.Nullable;

/** Gives a film to a child by hand: what the film says above, the children it may be of below. */
final class AssignDialog extends Dialog {

    private final FilmService films;
    private final PatientService patients;
    private final SiteId site;
    private final LocalDate today;
    private final TrayItem item;
    private final Runnable done;
    private final TextField wanted = new TextField(Texts.text("film.assign.find"));
    private final DateEntryField takenOn;
    private final UnorderedList found = new UnorderedList();
    private final Paragraph said = new Paragraph();
    private @Nullable ChildId asked;

    AssignDialog(
            FilmService films, PatientService patients, SiteId site, LocalDate today, TrayItem item, Runnable done) {
        this.films = films;
        this.patients = patients;
        this.site = site;
        this.today = today;
        this.item = item;
        this.done = done;
        takenOn = new DateEntryField(Texts.text("film.assign.taken-on"), () -> today);
        takenOn.setVisible(item.takenOn().isEmpty());
        setHeaderTitle(Texts.text("film.assign.title"));
        addClassName("assign");
        found.addClassName("assign-children");
        said.getElement().setAttribute("aria-live", "polite");
        setUpSearch();
        add(new Paragraph(Texts.text("film.assign.film-says", label())), takenOn, wanted, said, new Div(found));
        getFooter().add(new Button(Texts.text("film.assign.not"), click -> close()));
        suggest();
    }

    private void setUpSearch() {
        wanted.setHelperText(Texts.text("film.assign.find.help"));
        wanted.setAutocomplete(Autocomplete.OFF);
        wanted.setClearButtonVisible(true);
        wanted.setWidthFull();
        wanted.setValueChangeMode(ValueChangeMode.LAZY);
        wanted.addValueChangeListener(change -> search(change.getValue()));
    }

    private String label() {
        var label = item.label();
        return Stream.of(
                        label.patientName() == null ? null : FilmTray.readable(label.patientName()),
                        label.localNumber(),
                        label.birthDate() == null ? null : DateText.of(label.birthDate()))
                .filter(Objects::nonNull)
                .collect(Collectors.collectingAndThen(
                        Collectors.joining(", "), text -> text.isEmpty() ? Texts.text("film.assign.nothing") : text));
    }

    /** The children whose number, else birth date, else name is like what the film says. */
    private void suggest() {
        var label = item.label();
        Stream.of(
                        label.localNumber(),
                        label.birthDate() == null ? null : DateText.typed(label.birthDate()),
                        label.patientName() == null ? null : FilmTray.readable(label.patientName()))
                .filter(Objects::nonNull)
                .map(text -> patients.find(site, text, Texts.language()))
                .filter(children -> !children.isEmpty())
                .findFirst()
                .ifPresentOrElse(
                        children -> show(children, "film.assign.suggested"),
                        () -> said.setText(Texts.text("film.assign.nobody-suggested")));
    }

    private void search(String typed) {
        if (typed.isBlank()) {
            suggest();
        } else {
            var children = patients.find(site, typed, Texts.language());
            show(children, children.isEmpty() ? "film.assign.nobody" : "film.assign.found");
        }
    }

    private void show(List<Child> children, String words) {
        said.setText(Texts.text(words));
        said.removeClassName("harm");
        asked = null;
        found.removeAll();
        children.forEach(child -> found.add(line(child)));
    }

    private ListItem line(Child child) {
        var name = new Span(IdentityBanner.name(child.who()));
        name.addClassName("name");
        var who = new Div(name);
        child.data().ifPresent(data -> {
            who.add(new Span(DateText.born(data.birthDate(), today)));
            who.add(new Span(data.localNumber() == null ? Texts.text("kit.not-known") : data.localNumber()));
        });
        var give = new Button(Texts.text("film.assign.give"), click -> give(child));
        give.setAriaLabel(Texts.text("film.assign.give.to", IdentityBanner.name(child.who())));
        return new ListItem(who, give);
    }

    /** What the film says of the child and the record does not: the one before the other, in words. */
    private Optional<String> doubt(Child child) {
        var label = item.label();
        return child.data().flatMap(data -> {
            boolean number = differs(label.localNumber(), data.localNumber());
            boolean born = label.birthDate() != null && !label.birthDate().equals(data.birthDate());
            return number || born
                    ? Optional.of(Texts.text("film.assign.differs", label(), IdentityBanner.name(child.who())))
                    : Optional.empty();
        });
    }

    private static boolean differs(@Nullable String film, @Nullable String record) {
        return film != null && record != null && !film.strip().equalsIgnoreCase(record.strip());
    }

    private void give(Child child) {
        if (takenOn.isVisible() && takenOn.getValue() == null) {
            takenOn.setErrorMessage(Texts.text("film.assign.taken-on.missing"));
            takenOn.setInvalid(true);
            takenOn.focus();
            return;
        }
        var doubt = doubt(child);
        if (doubt.isPresent() && !child.id().equals(asked)) {
            asked = child.id();
            said.setText(doubt.get());
            said.addClassName("harm");
            return;
        }
        var given = films.assign(item.film(), item.version(), child.id(), takenOn.getValue(), null);
        if (given.isEmpty()) {
            said.setText(Texts.text("film.assign.meanwhile"));
        } else {
            close();
        }
        done.run();
    }
}
