package org.espalier.followup.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import org.espalier.followup.CareEnd;
import org.espalier.followup.Due;
import org.espalier.followup.DueText;
import org.espalier.followup.Happening;
import org.espalier.followup.Limits;
import org.espalier.followup.Visit;
import org.espalier.followup.VisitOutcome;
import org.espalier.followup.VisitService;
import org.espalier.followup.Visits;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.patient.Child;
import org.espalier.platform.Drafts;

/** The visit that is open: by when and why, its date, and what may happen to it. */
final class NextVisit extends Composite<Section> {
    static final String DRAFT = "next-visit-";

    private final Child child;
    private final VisitService service;
    private final transient Drafts drafts;
    private final Limits limits;
    private final LocalDate today;
    private final transient Consumer<Visits> changed;
    private final Div answer = new Div();
    private final Div body = new Div();

    /**
     * @param changed hears of the visits as they stand, at first and after each change
     */
    NextVisit(
            Child child,
            VisitService service,
            Drafts drafts,
            Limits limits,
            LocalDate today,
            Consumer<Visits> changed) {
        this.child = child;
        this.service = service;
        this.drafts = drafts;
        this.limits = limits;
        this.today = today;
        this.changed = changed;
        answer.getElement().setAttribute("role", "status");
        getContent().addClassNames("sheet", "next-visit");
        getContent().add(new H2(Texts.text("followup.next")), answer, body);
        refresh();
    }

    private void refresh() {
        var visits = service.of(child.id());
        changed.accept(visits);
        body.removeAll();
        visits.open().ifPresent(visit -> show(visit, visits));
        visits.end().ifPresent(this::show);
    }

    private void show(Visit visit, Visits visits) {
        body.add(due(visit.due(), visit.isLate(today)), date(visit));
        visit.asked()
                .ifPresent(asked ->
                        body.add(new Paragraph(Texts.text("followup.asked", DateText.of(asked.by()), asked.why()))));
        var why = new Paragraph(DueText.why(visit.due()));
        why.addClassName("why");
        body.add(why);
        if (visits.notBroughtInARow() > 0) {
            body.add(notBrought(visits.notBroughtInARow()));
        }
        body.add(actions(visit));
        var caution = new Paragraph(Texts.text("followup.caution"));
        caution.addClassName("caution");
        body.add(caution);
    }

    private void show(CareEnd end) {
        var how = end.reason().map(Texts::of).orElseGet(() -> Texts.text("followup.mature"));
        body.add(new Paragraph(Texts.text("followup.ended", DateText.of(end.on()), how)));
        if (end.stopsLetters()) {
            body.add(new Paragraph(Texts.text("followup.ended.no-letters")));
            return;
        }
        body.add(new Button(Texts.text("followup.resume"), click -> new AskNextDialog(
                        today, kept("resume", child.id().value()), asked -> {
                            service.resume(child.id(), child.site(), asked);
                            say("followup.resumed", "");
                        })
                .open()));
    }

    private Div due(Due due, boolean late) {
        var days = new Div(day("followup.look-by", due.lookBy(), late ? "harm" : "value"));
        due.listBy().ifPresent(by -> days.add(passing("followup.list-by", by, "followup.list-by.after")));
        due.decideBy().ifPresent(by -> days.add(passing("followup.decide-by", by, "followup.decide-by.after")));
        days.add(fact("followup.film", Texts.text(due.film() ? "followup.film.yes" : "followup.film.no"), "value"));
        days.addClassName("due-days");
        return days;
    }

    private Paragraph date(Visit visit) {
        var text = visit.appointment()
                .map(appointment -> DueText.date(appointment, today))
                .orElseGet(() -> Texts.text("followup.no-date"));
        var date = new Paragraph(text);
        boolean inTime = visit.appointment()
                .filter(appointment -> !appointment.on().isAfter(visit.due().lookBy()))
                .isPresent();
        date.addClassName(inTime ? "appointment" : "soon");
        return date;
    }

    /** A day with what comes of letting it pass. */
    private Span passing(String label, LocalDate by, String later) {
        var day = day(label, by, by.isBefore(today) ? "harm" : "value");
        var after = new Span(Texts.text(later));
        after.addClassName("label");
        day.add(after);
        return day;
    }

    private Span day(String label, LocalDate day, String name) {
        return fact(label, DateText.of(day) + " (" + DueText.away(day, today) + ")", name);
    }

    private static Span fact(String label, String value, String name) {
        var quiet = new Span(Texts.text(label));
        quiet.addClassName("label");
        var loud = new Span(value);
        loud.addClassName(name);
        return new Span(quiet, loud);
    }

    private Div notBrought(int times) {
        var notice = new Div(new Paragraph(Texts.text("followup.not-brought.times", times)));
        notice.addClassNames("notice", "soon");
        if (times >= limits.welfareAfter()) {
            notice.add(new Paragraph(Texts.text("followup.welfare")));
        }
        return notice;
    }

    private Div actions(Visit visit) {
        var came = new Button(
                Texts.text("followup.came-today"),
                click -> happens(visit, new Happening.Arrived(today, Optional.empty())));
        came.addThemeVariants(ButtonVariant.PRIMARY);
        var missed = new Button(Texts.text("followup.not-brought"), click -> new NotBroughtDialog(
                        visit, today, kept("not-brought", visit), happening -> happens(visit, happening))
                .open());
        var book = new Button(
                Texts.text(visit.appointment().isEmpty() ? "followup.give-date" : "followup.other-date"),
                click -> new BookDialog(visit, today, kept("date", visit), happening -> happens(visit, happening))
                        .open());
        var cancel = new Button(Texts.text("followup.give-up"), click -> new CancelDialog(
                        today, kept("given-up", visit), happening -> happens(visit, happening))
                .open());
        var end = new Button(
                Texts.text("followup.end-care"),
                click -> new EndCareDialog(today, kept("end", visit), happening -> happens(visit, happening)).open());
        var actions = new Div(came, missed, book, cancel, end);
        actions.addClassName("actions");
        return actions;
    }

    private KeptFields kept(String what, Visit visit) {
        return kept(what, visit.id().value());
    }

    private KeptFields kept(String what, UUID subject) {
        return new KeptFields(drafts, DRAFT + what, subject);
    }

    /** Why it was not written down, in words; empty when it was. */
    private Optional<String> happens(Visit visit, Happening happening) {
        return switch (service.record(visit, happening)) {
            case VisitOutcome.Done done -> {
                say("followup.kept", "");
                yield Optional.empty();
            }
            case VisitOutcome.ChangedMeanwhile changed -> refused("followup.changed-meanwhile", "soon");
            case VisitOutcome.NextMissing missing -> refused("followup.next-missing", "harm");
            case VisitOutcome.NotSeenClosed open -> refused("followup.not-seen-closed", "harm");
            case VisitOutcome.ImplantIn in -> refused("followup.implant-in", "harm");
        };
    }

    private Optional<String> refused(String key, String name) {
        say(key, name);
        return Optional.of(Texts.text(key));
    }

    private void say(String key, String name) {
        refresh();
        answer.setText(Texts.text(key));
        answer.setClassName(name);
    }
}
