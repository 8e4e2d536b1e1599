package org.espalier.treatment.ui;

import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.textfield.NumberField;
import com.vaadin.flow.component.textfield.TextField;
import java.util.List;
import java.util.Optional;
import org.espalier.kit.Texts;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Side;
import org.espalier.treatment.Deformity;
import org.espalier.treatment.PhysisKey;
import org.espalier.treatment.Target;
import org.espalier.treatment.Treatment;
import org.espalier.treatment.TreatmentFact;

/** Signs the angle a physis is guided to, or the deviation a limb is. */
final class TargetDialog extends FactDialog {

    private static final double LEAST = 60;
    private static final double MOST = 130;
    private static final double FURTHEST = 30;

    private final Side limb;
    private final Optional<PhysisKey> physis;
    private final NumberField degrees = new NumberField(Texts.text("treatment.target.degrees"));
    private final RadioButtonGroup<Deformity> direction =
            Choices.radio("treatment.target.direction", List.of(Deformity.VARUS, Deformity.VALGUS));
    private final TextField because = Choices.text("treatment.target.because", TreatmentFact.REMARK_LENGTH);

    TargetDialog(Side limb, Optional<PhysisKey> physis, Desk desk, Treatment treatment, Runnable done) {
        super("treatment.target.new", "treatment.target.sign", desk, treatment, done);
        this.limb = limb;
        this.physis = physis;
        degrees.setStep(0.5);
        degrees.setStepButtonsVisible(true);
        degrees.setHelperText(Texts.text(physis.isPresent() ? "treatment.target.joint" : "treatment.target.limb"));
        physis.flatMap(treatment::physis)
                .ifPresent(one -> degrees.setValue(one.targetAngle().degrees()));
        direction.setVisible(physis.isEmpty());
        ask(degrees, direction, because);
    }

    @Override
    void check() {
        var value = degrees.getValue();
        boolean possible = value != null
                && (physis.isPresent() ? value >= LEAST && value <= MOST : value >= 0 && value <= FURTHEST);
        demand(degrees, possible, physis.isPresent() ? "treatment.target.range" : "treatment.target.limb-range");
        boolean straight = value != null && value == 0;
        demand(
                direction,
                physis.isPresent() || straight || direction.getValue() != null,
                "treatment.target.direction.missing");
        demand(because, !because.getValue().isBlank(), "treatment.reason.missing");
    }

    @Override
    boolean isSigned() {
        return true;
    }

    @Override
    TreatmentFact fact() {
        var angle = new Angle(direction.getValue() == Deformity.VALGUS ? -degrees.getValue() : degrees.getValue());
        return physis.map(key -> Target.of(treatment().today(), key, angle, because.getValue()))
                .orElseGet(() -> Target.ofLimb(treatment().today(), limb, angle, because.getValue()));
    }
}
