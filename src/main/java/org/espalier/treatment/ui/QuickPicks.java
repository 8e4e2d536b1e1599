package org.espalier.treatment.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.kit.Texts;
import org.espalier.science.quantity.Side;
import org.espalier.treatment.Act;
import org.espalier.treatment.ImplantId;
import org.espalier.treatment.LimbCondition;
import org.espalier.treatment.LimbStanding;
import org.espalier.treatment.PhysisKey;
import org.espalier.treatment.PieceIn;
import org.espalier.treatment.PieceLedger;
import org.espalier.treatment.Plan;
import org.espalier.treatment.ProcedureKind;
import org.espalier.treatment.Tether;
import org.espalier.treatment.Treatment;
import org.espalier.treatment.TreatmentText;
import org.espalier.treatment.ui.TypedProcedure.TypedAct;
import org.jspecify.annotations.Nullable;

/** What is most likely recorded: the plans that wait, and the ways out of what is in place. */
final class QuickPicks extends Composite<Div> {

    private final Consumer<TypedAct> take;
    private final Div picks = new Div();

    QuickPicks(Treatment treatment, Consumer<TypedAct> take) {
        this.take = take;
        picks.addClassName("quick");
        treatment.waiting().forEach(plan -> {
            var act = typed(plan.plan(), treatment);
            add(
                    Texts.text("treatment.as-planned", TreatmentText.of(plan.plan())),
                    plan.plan().side(),
                    act);
        });
        treatment.tethersIn().forEach(this::addWaysOut);
        treatment.limbs().forEach(limb -> addFixationOut(limb, treatment.pieces()));
        getContent().addClassNames("sheet", "quick-picks");
        getContent().add(new H2(Texts.text("treatment.quick")), picks);
    }

    boolean isEmpty() {
        return picks.getComponentCount() == 0;
    }

    static TypedAct typed(Act act) {
        var answers = new HashMap<String, String>();
        act.answers().forEach((question, answer) -> answers.put(question.name(), answer));
        return new TypedAct(
                act.kind().name(),
                act.side().name(),
                name(act.bone()),
                name(act.end()),
                name(act.plateSide()),
                act.implant() == null ? null : act.implant().value(),
                act.implants(),
                act.count(),
                answers,
                act.pieces().stream().map(TypedPiece::of).toList(),
                name(act.fate()));
    }

    private void addWaysOut(Tether tether) {
        tether.placed().onIt().stream()
                .filter(kind -> kind == ProcedureKind.METAPHYSEAL_SCREW_OUT || kind.takesOut())
                .forEach(kind -> {
                    var act = typed(kind, tether);
                    var where = TreatmentText.place(
                            tether.physis().side(),
                            Optional.of(tether.physis()),
                            tether.side().orElse(null));
                    add(
                            Texts.text("treatment.act", Texts.of(kind), where),
                            tether.physis().side(),
                            act);
                });
    }

    /** A frame that is on comes off; what holds a cut bone comes out physis by physis, as it was recorded. */
    private void addFixationOut(LimbStanding limb, PieceLedger pieces) {
        Stream.of(ProcedureKind.FRAME_OFF, ProcedureKind.FIXATION_OUT).forEach(kind -> {
            var in = pieces.fixation(kind, limb.side());
            var places =
                    in.stream().map(one -> Optional.ofNullable(one.physis())).collect(Collectors.toSet());
            if (kind == ProcedureKind.FRAME_OFF && limb.conditions().containsKey(LimbCondition.IN_FRAME)) {
                places = Set.of(Optional.empty());
            }
            places.stream()
                    .sorted(Comparator.comparing(place -> TreatmentText.place(limb.side(), place, null)))
                    .forEach(place -> addFixationOut(kind, limb.side(), place, in));
        });
    }

    private void addFixationOut(ProcedureKind kind, Side side, Optional<PhysisKey> place, List<PieceIn> in) {
        var coming = in.stream()
                .filter(one -> place.isEmpty() || place.get().equals(one.physis()))
                .map(PieceIn::piece)
                .toList();
        var words = String.join("; ", TreatmentText.of(coming));
        var act = new TypedAct(
                kind.name(),
                side.name(),
                place.map(one -> one.bone().name()).orElse(null),
                place.map(one -> one.end().name()).orElse(null),
                null,
                null,
                words.substring(0, Math.min(words.length(), Act.IMPLANTS_LENGTH))
                        .strip(),
                coming.isEmpty() ? null : coming.size(),
                Map.of(),
                List.of(),
                null);
        add(Texts.text("treatment.act", Texts.of(kind), TreatmentText.place(side, place, null)), side, act);
    }

    private void add(String text, Side side, TypedAct act) {
        var button = new Button(text, click -> take.accept(act));
        button.addClassName(side == Side.RIGHT ? "limb-right" : "limb-left");
        picks.add(button);
    }

    private static TypedAct typed(Plan plan, Treatment treatment) {
        var onIt = treatment.tethersIn().stream()
                .filter(tether -> plan.kind().isOnImplant()
                        && plan.physis().filter(tether.physis()::equals).isPresent())
                .findFirst();
        return new TypedAct(
                plan.kind().name(),
                plan.side().name(),
                name(plan.bone()),
                name(plan.end()),
                name(plan.plateSide()),
                onIt.flatMap(Tether::implant).map(ImplantId::value).orElse(null),
                Optional.ofNullable(plan.implants()).orElse(""),
                null,
                Map.of(),
                List.of(),
                null);
    }

    private static TypedAct typed(ProcedureKind kind, Tether tether) {
        return new TypedAct(
                kind.name(),
                tether.physis().side().name(),
                tether.physis().bone().name(),
                tether.physis().end().name(),
                tether.side().map(Enum::name).orElse(null),
                tether.implant().map(ImplantId::value).orElse(null),
                kind.takesOut() ? tether.what() : "",
                kind.takesOut() ? tether.count() : 1,
                Map.of(),
                List.of(),
                null);
    }

    private static @Nullable String name(@Nullable Enum<?> constant) {
        return constant == null ? null : constant.name();
    }
}
