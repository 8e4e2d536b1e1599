package org.espalier.opinion.ui;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.DetachEvent;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.shared.communication.PushMode;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Site;
import org.espalier.access.SiteService;
import org.espalier.kit.Address;
import org.espalier.kit.ChildHeader;
import org.espalier.kit.DateText;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.opinion.OpinionService;
import org.espalier.opinion.OpinionThread;
import org.espalier.opinion.ThreadId;
import org.espalier.patient.PatientService;
import org.espalier.platform.Notices;

/**
 * What is asked, what is shown, what was said and what was decided? Live for everybody in it, on any node; when the
 * reader's grant ends, the page is empty at once.
 */
@Route("opinion/:thread")
@StyleSheet("themes/patient.css")
@StyleSheet("themes/opinion.css")
class ThreadView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private final OpinionService opinions;
    private final ThreadServices services;
    private final PatientService patients;
    private final SiteService sites;
    private final CurrentStaff staff;
    private final Notices notices;
    private Optional<ThreadId> thread = Optional.empty();
    private Optional<ThreadParts> parts = Optional.empty();
    private String version = "";
    private Runnable deaf = () -> {};

    ThreadView(
            OpinionService opinions,
            ThreadServices services,
            PatientService patients,
            SiteService sites,
            CurrentStaff staff,
            Notices notices) {
        this.opinions = opinions;
        this.services = services;
        this.patients = patients;
        this.sites = sites;
        this.staff = staff;
        this.notices = notices;
    }

    @Override
    public String getPageTitle() {
        return Texts.page("opinion.page");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        thread = Address.id(event, "thread").map(ThreadId::new);
        parts = Optional.empty();
        refresh();
    }

    @Override
    protected void onAttach(AttachEvent attached) {
        var ui = attached.getUI();
        ui.getPushConfiguration().setPushMode(PushMode.AUTOMATIC);
        thread.map(ThreadId::value).ifPresent(id -> deaf = notices.listen("opinion " + id, () -> hear(ui)));
    }

    @Override
    protected void onDetach(DetachEvent detached) {
        deaf.run();
        detached.getUI().getPushConfiguration().setPushMode(PushMode.DISABLED);
    }

    /** Reads again when something changed; a page that is gone is told by its detaching. */
    private void hear(UI ui) {
        ui.access(() -> {
            if (!thread.flatMap(opinions::version).orElse("").equals(version)) {
                refresh();
            }
        });
    }

    private void refresh() {
        version = thread.flatMap(opinions::version).orElse("");
        var open = thread.flatMap(opinions::open);
        if (open.isEmpty()) {
            parts = Optional.empty();
            getContent().removeAll();
            getContent()
                    .add(screen(
                            new H1(Texts.text("opinion.not-there")),
                            PageParts.paragraph("empty", Texts.text("opinion.ended")),
                            new Anchor(Urls.OPINIONS, Texts.text("opinion.title"))));
        } else {
            show(open.get());
        }
    }

    private void show(OpinionThread open) {
        if (parts.isEmpty()) {
            var built = new ThreadParts(open.id(), services, staff.id(), zone(), this::refresh);
            getContent().removeAll();
            banner(open).ifPresent(getContent()::add);
            var screen = screen(heading(open));
            screen.add(built.parts());
            screen.add(PageParts.caution("opinion.caution"));
            getContent().add(screen);
            parts = Optional.of(built);
        }
        parts.get().show(open);
    }

    /** Whose case it is, for those who treat the child; colleagues are never told. */
    private Optional<ChildHeader> banner(OpinionThread open) {
        return open.child()
                .flatMap(child -> patients.open(child, "opinion"))
                .map(child -> new ChildHeader(
                        child.id().value(), child.who(), sites.today(child.site()), ChildHeader.Page.OPINIONS));
    }

    private static Div screen(Component... content) {
        var screen = new Div(content);
        screen.addClassNames("screen", "opinions", "thread");
        return screen;
    }

    private Div heading(OpinionThread open) {
        var question = open.question();
        var heading = new Div(
                new H1(Texts.text("opinion.thread")),
                PageParts.paragraph("asked", question.text()),
                PageParts.paragraph(
                        "question",
                        Texts.text(
                                "opinion.thread.by",
                                open.askerName(),
                                open.siteName(),
                                Parts.day(open.askedAt(), zone()),
                                DateText.of(question.dueBy()),
                                Parts.advice(question.wanted()))),
                PageParts.paragraph("small", has(open)),
                PageParts.paragraph(
                        "small",
                        Texts.text(open.child().isPresent() ? "opinion.thread.theirs" : "opinion.thread.yours")));
        heading.addClassName("thread-head");
        return heading;
    }

    private static String has(OpinionThread open) {
        var question = open.question();
        var place = question.place();
        var weeks = question.theatreWaitWeeks();
        return Texts.text(
                "opinion.thread.has",
                place == null ? Texts.text("opinion.none-said") : place,
                Texts.text(question.hasFrame() ? "opinion.yes" : "opinion.no"),
                Texts.text(question.hasMri() ? "opinion.yes" : "opinion.no"),
                weeks == null ? Texts.text("opinion.none-said") : Texts.text("opinion.weeks", weeks));
    }

    private ZoneId zone() {
        return sites.mine().stream().findFirst().map(Site::zone).orElse(ZoneOffset.UTC);
    }
}
