package org.espalier.patient.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.binder.Result;
import com.vaadin.flow.data.binder.ValidationResult;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.espalier.kit.Texts;
import org.espalier.patient.BodySize;
import org.espalier.patient.ChildData;
import org.espalier.patient.ClinicalExamination;
import org.espalier.patient.FactId;
import org.espalier.patient.Finding;
import org.espalier.patient.HeavyChildRule;
import org.espalier.patient.SleepSymptoms;
import org.espalier.platform.FormDraft;
import org.espalier.platform.Ids;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;

/** The examination at one visit, both legs side by side; height and weight are written down with it. */
final class VisitForm extends FindingForm<ClinicalExamination> {

    private static final int WIDEST_GAP = (int) ClinicalExamination.WIDEST_GAP.millimetres();

    private final TextField knees = TypedNumber.field("patient.intercondylar", "patient.mm");
    private final TextField ankles = TypedNumber.field("patient.intermalleolar", "patient.mm");
    private final TextField height = TypedNumber.field("patient.height", "patient.cm");
    private final TextField weight = TypedNumber.field("patient.weight", "patient.kg");
    private final TextField hypermobility = TypedNumber.field("patient.hypermobility", "patient.of-nine");
    private final Select<SleepSymptoms> sleep = new Select<>();
    private final Paragraph sleepWhy = new Paragraph(Texts.text("patient.sleep.why"));
    private final TextArea note = new TextArea(Texts.text("patient.note"));
    private final LegFields legs;
    private final LocalDate today;
    private final HeavyChildRule rule;
    private FactId size = nextId();
    private Optional<BodySize> lastSize = Optional.empty();

    VisitForm(ChildData child, LocalDate today, Ids ids, FormDraft<TypedFinding> draft) {
        super(ClinicalExamination.class, child.birthDate(), today, ids, draft);
        this.today = today;
        rule = new HeavyChildRule(child.birthDate(), child.sex());
        labelDay("patient.visit-day");
        getContent().addClassName("compact");
        add(knees);
        add(ankles);
        add(height);
        add(weight);
        bind(knees, VisitForm::gap);
        bind(ankles, VisitForm::gap);
        bind(height, BodySizeForm::toHeight);
        bind(weight, BodySizeForm::toWeight);
        bind(hypermobility, VisitForm::score);
        legs = new LegFields(this);
        add(legs);
        add(hypermobility);
        addSleep();
        note.setMaxLength(ClinicalExamination.NOTE_LENGTH);
        note.addClassName("wide");
        add(note);
        rememberAll();
        height.addValueChangeListener(change -> askForSleep());
        weight.addValueChangeListener(change -> askForSleep());
        goOn();
    }

    /** Tells the form how heavy the child was, so that it asks what a heavy child is asked. */
    void setLastSize(Optional<BodySize> last) {
        lastSize = last;
        askForSleep();
    }

    @Override
    void begin(boolean isCorrection) {
        height.setVisible(!isCorrection);
        weight.setVisible(!isCorrection);
        if (!isCorrection) {
            setDay(today);
        }
    }

    @Override
    void fill(ClinicalExamination visit) {
        knees.setValue(text(visit.intercondylar()));
        ankles.setValue(text(visit.intermalleolar()));
        hypermobility.setValue(
                visit.hypermobility() == null ? "" : visit.hypermobility().toString());
        sleep.setValue(visit.sleep());
        note.setValue(visit.note() == null ? "" : visit.note());
        for (var side : Side.values()) {
            legs.fill(side, visit.leg(side));
        }
        askForSleep();
    }

    @Override
    Optional<String> problem() {
        if (!isPlausible()) {
            return Optional.of(Texts.text("patient.size.implausible"));
        }
        return isEmpty() ? Optional.of(Texts.text("patient.visit.nothing")) : Optional.empty();
    }

    @Override
    ClinicalExamination write() {
        return new ClinicalExamination(
                day(),
                value(gap(knees.getValue())),
                value(gap(ankles.getValue())),
                legs.read(Side.RIGHT),
                legs.read(Side.LEFT),
                value(score(hypermobility.getValue())),
                sleep.getValue(),
                note.getValue());
    }

    @Override
    Map<FactId, Finding> besides() {
        return size(day())
                .<Map<FactId, Finding>>map(measured -> Map.of(size, measured))
                .orElseGet(Map::of);
    }

    private void addSleep() {
        sleep.setLabel(Texts.text("patient.sleep"));
        sleep.setItems(SleepSymptoms.values());
        sleep.setItemLabelGenerator(one -> one == null ? Texts.text("patient.not-recorded") : Texts.of(one));
        sleep.setEmptySelectionAllowed(true);
        sleep.setEmptySelectionCaption(Texts.text("patient.not-recorded"));
        sleepWhy.addClassName("small");
        var asked = new Div(sleep, sleepWhy);
        asked.addClassName("wide");
        add(asked);
    }

    private void rememberAll() {
        remember("knees", knees);
        remember("ankles", ankles);
        remember("height", height);
        remember("weight", weight);
        remember("hypermobility", hypermobility);
        remember("sleep", sleep, SleepSymptoms.class);
        remember("note", note);
        fields().add(
                        "size",
                        () -> size.value().toString(),
                        text -> size = text.isEmpty() ? nextId() : new FactId(UUID.fromString(text)));
    }

    private <T> void bind(TextField field, Function<String, Result<T>> reader) {
        binder().forField(field)
                .withValidator((typed, context) -> reader.apply(typed)
                        .getMessage()
                        .map(ValidationResult::error)
                        .orElseGet(ValidationResult::ok))
                .bind(visit -> "", (visit, value) -> {});
    }

    private void askForSleep() {
        boolean asked =
                size(today).or(() -> lastSize).filter(rule::asksForSleep).isPresent();
        sleep.setVisible(asked || !sleep.isEmpty());
        sleepWhy.setVisible(asked);
    }

    /** Height and weight as typed; empty when neither was, or when they cannot be read. */
    private Optional<BodySize> size(LocalDate on) {
        var tall = BodySizeForm.toHeight(height.getValue());
        var heavy = BodySizeForm.toWeight(weight.getValue());
        if (tall.isError() || heavy.isError() || !isPlausible()) {
            return Optional.empty();
        }
        var length = orNull(tall);
        var mass = orNull(heavy);
        return length == null && mass == null ? Optional.empty() : Optional.of(new BodySize(on, length, mass));
    }

    private boolean isPlausible() {
        var length = orNull(BodySizeForm.toHeight(height.getValue()));
        var mass = orNull(BodySizeForm.toWeight(weight.getValue()));
        return length == null || mass == null || BodySize.isPlausible(length, mass);
    }

    private boolean isEmpty() {
        return knees.isEmpty()
                && ankles.isEmpty()
                && hypermobility.isEmpty()
                && sleep.isEmpty()
                && note.getValue().isBlank()
                && legs.read(Side.RIGHT).isEmpty()
                && legs.read(Side.LEFT).isEmpty();
    }

    private static Result<Optional<Length>> gap(String typed) {
        return TypedNumber.parse(typed, 0, 0, WIDEST_GAP, "patient.gap.range")
                .map(number -> number.map(Length::ofMillimetres));
    }

    private static Result<Optional<Integer>> score(String typed) {
        return TypedNumber.parse(typed, 0, 0, ClinicalExamination.HIGHEST_SCORE, "patient.hypermobility.range")
                .map(number -> number.map(Double::intValue));
    }

    private static <T> @Nullable T value(Result<Optional<T>> read) {
        return read.getOrThrow(IllegalStateException::new).orElse(null);
    }

    private static <T> @Nullable T orNull(Result<@Nullable T> read) {
        return read.isError() ? null : read.getOrThrow(IllegalStateException::new);
    }

    private static String text(@Nullable Length gap) {
        return gap == null ? "" : Long.toString(Math.round(gap.millimetres()));
    }
}
