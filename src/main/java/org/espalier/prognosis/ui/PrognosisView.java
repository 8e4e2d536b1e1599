package org.espalier.prognosis.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.Text;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.router.Route;
import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.kit.Address;
import org.espalier.kit.ChildHeader;
import org.espalier.kit.DateEntryField;
import org.espalier.kit.DateText;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.patient.ChildId;
import org.espalier.prognosis.LengthOutlook;
import org.espalier.prognosis.Prognosis;
import org.espalier.prognosis.PrognosisService;
import org.espalier.science.quantity.Side;

/** Where is it going? Each physis and limb in numbers, with how sure they are. */
@Route("child/:child/prognosis")
@StyleSheet("themes/prognosis.css")
class PrognosisView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private static final int SOURCES = 5;

    private final PrognosisService prognoses;
    private Optional<LocalDate> also = Optional.empty();

    PrognosisView(PrognosisService prognoses) {
        this.prognoses = prognoses;
    }

    @Override
    public String getPageTitle() {
        return Texts.page("prognosis.title");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        show(Address.id(event, "child").map(ChildId::new).flatMap(prognoses::of).orElseThrow(NotFoundException::new));
    }

    private void show(Prognosis prognosis) {
        getContent().removeAll();
        var limbs = new Div();
        show(prognosis, limbs);
        var body = new Div(new H1(Texts.text("prognosis.heading")), PageParts.caution("prognosis.caution"));
        body.addClassNames("screen", "prognosis");
        body.add(otherDay(prognosis, limbs), limbs, growth(prognosis), rates(prognosis), sources());
        getContent()
                .add(
                        new ChildHeader(
                                prognosis.child().id().value(),
                                prognosis.child().who(),
                                prognosis.today(),
                                ChildHeader.Page.PROGNOSIS),
                        body);
    }

    private void show(Prognosis prognosis, Div limbs) {
        limbs.removeAll();
        var days = new ShownDays(prognosis.today(), also);
        Stream.of(Side.RIGHT, Side.LEFT).forEach(side -> limbs.add(limb(prognosis, side, days)));
    }

    /** Every angle on a day of one's choice. */
    private DateEntryField otherDay(Prognosis prognosis, Div limbs) {
        var day = new DateEntryField(Texts.text("prognosis.also.label"), prognosis::today);
        day.addClassName("prognosis-day");
        day.addValueChangeListener(change -> {
            also = Optional.ofNullable(change.getValue()).filter(chosen -> chosen.isAfter(prognosis.today()));
            day.setInvalid(change.getValue() != null && also.isEmpty());
            day.setErrorMessage(day.isInvalid() ? Texts.text("prognosis.also.past") : "");
            show(prognosis, limbs);
        });
        return day;
    }

    private static Section limb(Prognosis prognosis, Side side, ShownDays days) {
        var section = new Section(new H2(Texts.text("prognosis.limb", Texts.of(side))));
        section.addClassName(side == Side.RIGHT ? "limb-right-section" : "limb-left-section");
        prognosis.limb(side).ifPresent(limb -> section.add(new LimbSection(limb, days)));
        prognosis.natural(side).ifPresent(natural -> section.add(new NaturalSection(natural, days)));
        var physes = new Div();
        physes.addClassName("prognosis-physes");
        prognosis.physes().stream()
                .filter(physis -> physis.physis().side() == side)
                .map(physis -> new PhysisSection(physis, days))
                .forEach(physes::add);
        section.add(physes);
        return section;
    }

    private static Section growth(Prognosis prognosis) {
        var facts = new FactList();
        prognosis.age().ifPresent(age -> facts.with(Texts.text("prognosis.label.age"), PrognosisText.age(age)));
        prognosis
                .maturity()
                .ifPresent(end -> facts.with(Texts.text("prognosis.label.maturity"), PrognosisText.maturity(end)));
        prognosis
                .early()
                .ifPresent(early -> facts.with(
                        Texts.text("prognosis.label.early"),
                        Texts.text("prognosis.early", DateText.of(early.plateBy()), DateText.of(early.cutBefore()))));
        prognosis
                .lengths()
                .ifPresentOrElse(
                        lengths -> show(lengths, facts),
                        () -> facts.with(Texts.text("prognosis.label.lengths"), Texts.text("prognosis.lengths.none")));
        var section = new Section(new H2(Texts.text("prognosis.growth.heading")), facts);
        if (prognosis.age().isEmpty()) {
            section.add(PageParts.paragraph("empty", Texts.text("prognosis.sex-unknown")));
        }
        return section;
    }

    private static void show(LengthOutlook lengths, FactList facts) {
        facts.with(
                Texts.text("prognosis.label.lengths"),
                Texts.text(
                        "prognosis.on-day",
                        LengthText.difference(
                                lengths.now().difference(), lengths.now().halfWidth95()),
                        DateText.of(lengths.on())));
        for (var way : lengths.ways()) {
            facts.with(Texts.text("prognosis.label.lengths-kept"), LengthText.difference(way, way.sinceBirth()));
            way.acquired()
                    .ifPresent(acquired -> facts.with(
                            Texts.text("prognosis.label.lengths-acquired"), LengthText.difference(way, acquired)));
        }
        for (var way : lengths.ways()) {
            facts.with(Texts.text("prognosis.label.grown", Texts.of(Side.RIGHT)), LengthText.grown(way, way.right()));
            facts.with(Texts.text("prognosis.label.grown", Texts.of(Side.LEFT)), LengthText.grown(way, way.left()));
        }
    }

    private static Component rates(Prognosis prognosis) {
        var words = prognosis
                .rates()
                .learnt()
                .map(learnt -> Texts.text("prognosis.rates.own", learnt.limbs()))
                .orElseGet(() -> Texts.text("prognosis.rates.published"));
        return new Paragraph(new Text(words + " "), new Anchor(Urls.RATES, Texts.text("prognosis.rates.link")));
    }

    private static Details sources() {
        var list = new UnorderedList();
        for (int i = 1; i <= SOURCES; i++) {
            list.add(new ListItem(Texts.text("prognosis.source." + i)));
        }
        return new Details(Texts.text("prognosis.sources"), list);
    }
}
