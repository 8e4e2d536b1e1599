package org.espalier.safety.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.SiteService;
import org.espalier.kit.Address;
import org.espalier.kit.DateText;
import org.espalier.kit.IdentityBanner;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.safety.Carrier;
import org.espalier.safety.SafetyNotice;
import org.espalier.safety.SafetyService;

/**
 * How far is this notice? Every hospital in numbers; the children in the reader's care by name, until each was told.
 */
@Route(Urls.SAFETY_NOTICE)
@StyleSheet("themes/patient.css")
@StyleSheet("themes/stock.css")
class NoticeView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private final SafetyService safety;
    private final PatientService patients;
    private final SiteService sites;
    private final CurrentStaff currentStaff;
    private final Div answer = new Div();
    private final Div body = new Div();
    /** What was typed of families that are not told yet. */
    private final Map<ChildId, String> typed = new HashMap<>();

    private Optional<UUID> shown = Optional.empty();

    NoticeView(SafetyService safety, PatientService patients, SiteService sites, CurrentStaff currentStaff) {
        this.safety = safety;
        this.patients = patients;
        this.sites = sites;
        this.currentStaff = currentStaff;
        answer.getElement().setAttribute("role", "status");
        body.addClassName("parts");
        getContent().addClassNames("screen", "stock");
        getContent().add(answer, body);
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        shown = Address.asked(event, "notice");
        refresh();
    }

    @Override
    public String getPageTitle() {
        return Texts.page("safety.title");
    }

    private void refresh() {
        body.removeAll();
        shown.flatMap(safety::notice)
                .ifPresentOrElse(this::show, () -> body.add(new H1(Texts.text("safety.no-such-notice"))));
    }

    private void show(SafetyNotice notice) {
        var zone = sites.get(notice.openedAt()).zone();
        var state = new Paragraph(notice.closedOn()
                .map(on ->
                        Texts.text("safety.closed", DateText.of(on.atZone(zone).toLocalDate())))
                .orElseGet(() -> Texts.text("safety.open-now")));
        state.addClassName("question");
        body.add(
                new H1(Texts.text("safety.lot-of", notice.lotNumber(), notice.product())),
                SafetyPage.places(currentStaff, Urls.SAFETY_NOTICE),
                state,
                new Paragraph(Texts.text(
                        "safety.said",
                        notice.source(),
                        notice.why(),
                        notice.openedBy(),
                        DateText.of(notice.openedOn().atZone(zone).toLocalDate()))),
                PageParts.part(Texts.text("safety.progress"), progress(notice)));
        if (currentStaff.has(Role.SURGEON) || currentStaff.has(Role.NURSE)) {
            body.add(PageParts.part(Texts.text("safety.carriers"), carriers(notice)));
        }
        if (notice.isOpen()) {
            var again = new Button(Texts.text("safety.look-again"), click -> {
                safety.lookAgain(notice.id())
                        .ifPresent(pieces -> say(Texts.text("safety.looked-again", pieces), false));
                refresh();
            });
            var close = new Button(Texts.text("safety.close"), click -> {
                if (!safety.close(notice.id())) {
                    say(Texts.text("safety.not-all-told"), true);
                }
                refresh();
            });
            var actions = new Div(again, close);
            actions.addClassName("actions");
            body.add(actions);
        }
        body.add(
                new Anchor(Urls.stockLot(notice.lot().value()), Texts.text("safety.to-the-lot")),
                PageParts.caution("safety.caution"));
    }

    private Component progress(SafetyNotice notice) {
        return NoticeTables.progress(
                safety.progress(notice.id()), site -> sites.get(site).name());
    }

    private Component carriers(SafetyNotice notice) {
        return NoticeTables.carriers(
                safety.carriers(notice.id()),
                this::name,
                site -> sites.get(site).name(),
                one -> telling(notice, one));
    }

    private Component name(Carrier carrier) {
        var name = patients.open(carrier.child(), "safety notice")
                .map(child -> IdentityBanner.name(child.who()))
                .orElseGet(() -> Texts.text("kit.not-known"));
        return new Anchor(Urls.course(carrier.child().value()), name);
    }

    private Component telling(SafetyNotice notice, Carrier carrier) {
        if (carrier.told().isPresent()) {
            var told = carrier.told().get();
            var zone = sites.get(carrier.site()).zone();
            return new Div(Texts.text(
                    "safety.told-by",
                    told.by(),
                    DateText.of(told.at().atZone(zone).toLocalDate()),
                    told.how()));
        }
        if (carrier.certainty() == Carrier.Certainty.FORMER) {
            return new Div(Texts.text("safety.for-information"));
        }
        var how = new TextField();
        how.setAriaLabel(Texts.text("safety.how"));
        how.setPlaceholder(Texts.text("safety.how"));
        how.setMaxLength(400);
        how.setValue(typed.getOrDefault(carrier.child(), ""));
        how.addValueChangeListener(change -> typed.put(carrier.child(), change.getValue()));
        how.setErrorMessage(Texts.text("safety.how.missing"));
        var tell = new Button(Texts.text("safety.told"), click -> {
            how.setInvalid(how.getValue().strip().length() < 3);
            if (!how.isInvalid()) {
                safety.told(notice.id(), carrier.child(), how.getValue());
                say(Texts.text("safety.told.kept"), false);
                refresh();
            }
        });
        return new Div(how, tell);
    }

    private void say(String text, boolean harm) {
        answer.setText(text);
        answer.setClassName("notice");
        answer.setClassName("harm", harm);
    }
}
