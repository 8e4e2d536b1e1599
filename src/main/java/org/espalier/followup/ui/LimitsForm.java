package org.espalier.followup.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.textfield.NumberField;
import com.vaadin.flow.component.textfield.TextField;
import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.espalier.access.Site;
import org.espalier.followup.DueByService;
import org.espalier.followup.Limits;
import org.espalier.followup.SignedLimits;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.platform.Drafts;

/** The intervals and limits of a hospital; a surgeon signs others, with a reason. */
final class LimitsForm extends Composite<Section> {

    private final Site site;
    private final transient DueByService dueBy;
    private final Map<String, NumberField> fields = new LinkedHashMap<>();
    private final TextField reason = new TextField(Texts.text("followup.limits.reason"));
    private final Paragraph signed = new Paragraph();
    private final Div answer = new Div();
    private final LimitsHistory history = new LimitsHistory();
    private final KeptFields kept;

    LimitsForm(Site site, DueByService dueBy, Drafts drafts, boolean signs) {
        this.site = site;
        this.dueBy = dueBy;
        kept = new KeptFields(drafts, "limits", site.id().value());
        answer.getElement().setAttribute("role", "status");
        reason.setErrorMessage(Texts.text("followup.ask.why.missing"));
        reason.setMaxLength(400);
        reason.setWidthFull();
        var grid = new Div();
        grid.addClassNames("form-fields", "limit-fields");
        for (var component : Limits.class.getRecordComponents()) {
            var field = new NumberField(Texts.text("followup.limit." + component.getName()));
            field.setReadOnly(!signs);
            fields.put(component.getName(), field);
            grid.add(field);
        }
        var sign = new Button(Texts.text("followup.limits.sign"), click -> sign());
        sign.addThemeVariants(ButtonVariant.PRIMARY);
        sign.setVisible(signs);
        reason.setVisible(signs);
        getContent().addClassName("sheet");
        getContent()
                .add(
                        new H2(Texts.text("followup.limits.of", site.name())),
                        signed,
                        new Paragraph(ownWait()),
                        answer,
                        kept.said(),
                        grid,
                        reason,
                        sign,
                        history);
        show();
        fields.forEach(kept::number);
        kept.text("reason", reason).goOn();
    }

    private void show() {
        var limits = dueBy.limits(site.id());
        for (var component : Limits.class.getRecordComponents()) {
            Objects.requireNonNull(fields.get(component.getName())).setValue(value(component, limits));
        }
        var all = dueBy.signedLimits(site.id());
        signed.setText(all.stream()
                .findFirst()
                .map(LimitsForm::signature)
                .orElseGet(() -> Texts.text("followup.limits.defaults")));
        history.show(all);
    }

    static double value(RecordComponent limit, Limits limits) {
        try {
            return ((Number) limit.getAccessor().invoke(limits)).doubleValue();
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    static String signer(SignedLimits one) {
        return one.signedBy() == null ? Texts.text("followup.limits.somebody") : one.signedBy();
    }

    private String ownWait() {
        return dueBy.ownWait(site.id())
                .map(months -> Texts.text("followup.limits.own-wait", months))
                .orElseGet(() -> Texts.text("followup.limits.no-own-wait"));
    }

    private static String signature(SignedLimits last) {
        return Texts.text("followup.limits.signed", signer(last), DateText.of(last.signedOn()), last.reason());
    }

    private void sign() {
        reason.setInvalid(reason.getValue().strip().length() < 3);
        if (reason.isInvalid()) {
            return;
        }
        try {
            dueBy.signLimits(site.id(), typed(), reason.getValue().strip());
            reason.clear();
            show();
            kept.discard();
            answer.setText(Texts.text("followup.limits.kept"));
            answer.setClassName("");
        } catch (IllegalArgumentException refused) {
            answer.setText(Texts.text("followup.limits.refused"));
            answer.setClassName("harm");
        }
    }

    private Limits typed() {
        return new Limits(
                whole("firstLookDays"),
                whole("watchedYoungMonths"),
                whole("watchedOlderMonths"),
                whole("plannedMonths"),
                whole("bracedMonths"),
                whole("woundDays"),
                whole("motionDays"),
                whole("firstFilmMonths"),
                whole("tetheredMonths"),
                whole("tetheredYoungMonths"),
                number("pastTargetDegrees"),
                number("pastTargetPercent"),
                number("waitMonths"),
                whole("releasedMonths"),
                whole("releasedLaterMonths"),
                whole("healingDays"),
                whole("welfareAfter"));
    }

    private int whole(String name) {
        return (int) Math.round(number(name));
    }

    /** An empty field is none that could be meant. */
    private double number(String name) {
        var field = fields.get(name);
        return field == null || field.getValue() == null ? -1 : field.getValue();
    }
}
