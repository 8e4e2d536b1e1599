package org.espalier.treatment.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.HasValue;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.select.Select;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.espalier.kit.Texts;
import org.espalier.patient.Bone;
import org.espalier.patient.BoneEnd;
import org.espalier.platform.Ids;
import org.espalier.science.quantity.Side;
import org.espalier.stock.Explant;
import org.espalier.treatment.Act;
import org.espalier.treatment.ImplantId;
import org.espalier.treatment.PhysisKey;
import org.espalier.treatment.PlateSide;
import org.espalier.treatment.ProcedureKind;
import org.espalier.treatment.Tether;
import org.espalier.treatment.TreatmentText;
import org.espalier.treatment.ui.TypedProcedure.TypedAct;
import org.jspecify.annotations.Nullable;

/**
 * One act: the procedure, the side, the physis, the side of the bone, the implants; and what else may be said of it.
 */
final class ActForm extends Composite<Div> {

    private final Select<ProcedureKind> kind = Choices.of("treatment.procedure", Arrays.asList(ProcedureKind.values()));
    private final RadioButtonGroup<Side> side = Choices.radio("treatment.side", List.of(Side.RIGHT, Side.LEFT));
    private final Select<PhysisKey> physis = Choices.physis(List.of());
    private final RadioButtonGroup<PlateSide> plateSide =
            Choices.radio("treatment.plate-side", Arrays.asList(PlateSide.values()));
    private final Select<Tether> onImplant = new Select<>();
    private final ImplantWords words = new ImplantWords();
    private final Select<Explant.Fate> fate = Choices.optional("treatment.fate", Arrays.asList(Explant.Fate.values()));
    private final QuestionFields further = new QuestionFields(this::tell);
    private final PieceFields pieces;
    private final List<Tether> inPlace;
    private final Runnable changed;
    private UUID newImplant;
    private boolean filling;

    ActForm(List<Tether> inPlace, PieceSource source, Ids ids, Runnable changed) {
        this.inPlace = inPlace;
        this.changed = changed;
        newImplant = ids.next();
        pieces = new PieceFields(source, this::takePieces);
        onImplant.setLabel(Texts.text("treatment.on-implant"));
        onImplant.setItemLabelGenerator(tether -> tether == null ? "" : TreatmentText.of(tether));
        physis.setEmptySelectionCaption(Texts.text("treatment.whole-limb"));
        kind.addValueChangeListener(change -> takeKind());
        side.addValueChangeListener(change -> takeSide());
        onImplant.addValueChangeListener(change -> takeImplant(change.getValue()));
        Stream.<HasValue<?, ?>>of(kind, side, physis, plateSide, onImplant, words.words(), words.count(), fate)
                .forEach(field -> field.addValueChangeListener(change -> tell()));
        var where = new Div(kind, onImplant, side, physis, plateSide);
        where.addClassNames("form-fields", "act-fields");
        var with = new Div(words.words(), words.count(), fate);
        with.addClassNames("form-fields", "act-fields");
        getContent().addClassName("act");
        getContent().add(where, pieces, with, further);
        takeKind();
    }

    /** Fills in what is known beforehand. */
    void fill(TypedAct typed) {
        filling = true;
        kind.setValue(constant(ProcedureKind.class, typed.kind()));
        side.setValue(constant(Side.class, typed.side()));
        onImplant.setValue(inPlace.stream()
                .filter(tether -> tether.implant()
                        .filter(one -> one.value().equals(typed.implant()))
                        .isPresent())
                .filter(tether -> onImplant.isVisible())
                .findFirst()
                .orElse(null));
        var bone = constant(Bone.class, typed.bone());
        var end = constant(BoneEnd.class, typed.end());
        if (bone != null && end != null && side.getValue() != null) {
            physis.setValue(new PhysisKey(side.getValue(), bone, end));
        }
        plateSide.setValue(constant(PlateSide.class, typed.plateSide()));
        if (typed.implant() != null && onImplant.getValue() == null) {
            newImplant = typed.implant();
        }
        pieces.fill(typed.allPieces());
        words.fill(typed.implants(), typed.count(), pieces);
        fate.setValue(constant(Explant.Fate.class, typed.fate()));
        further.fill(typed.answers());
        filling = false;
    }

    /** The cursor stands where a hand scanner types, when something can go in. */
    void awaitScan() {
        if (pieces.isVisible()) {
            pieces.focus();
        }
    }

    TypedAct typed() {
        var where = Optional.ofNullable(physis.getValue());
        return new TypedAct(
                name(kind.getValue()),
                name(side.getValue()),
                where.map(key -> key.bone().name()).orElse(null),
                where.map(key -> key.end().name()).orElse(null),
                name(plateSide.getValue()),
                implant().map(ImplantId::value).orElse(null),
                words.words().getValue(),
                words.count().getValue(),
                further.typed(),
                pieces.typed(),
                fate.isVisible() ? name(fate.getValue()) : null);
    }

    /** Demands the facts required. */
    void demand(Map<Component, String> missing) {
        var what = kind.getValue();
        Problems.demand(missing, kind, what != null, "treatment.procedure.missing");
        if (what == null) {
            return;
        }
        if (what.isOnImplant()) {
            Problems.demand(missing, onImplant, onImplant.getValue() != null, "treatment.on-implant.missing");
        } else {
            Problems.demand(missing, side, side.getValue() != null, "treatment.side.missing");
            boolean placed = !what.needsPhysis() || physis.getValue() != null;
            Problems.demand(missing, physis, placed, "treatment.physis.missing");
        }
        boolean sided = !plateSide.isVisible() || plateSide.getValue() != null;
        Problems.demand(missing, plateSide, sided, "treatment.plate-side.missing");
        words.demand(missing);
        pieces.demand(missing);
    }

    /** The act; only when nothing is missing. */
    Act act() {
        var where = Optional.ofNullable(physis.getValue());
        var act = new Act(
                kind.getValue(),
                side.getValue(),
                where.map(PhysisKey::bone).orElse(null),
                where.map(PhysisKey::end).orElse(null),
                plateSide.getValue(),
                implant().orElse(null),
                words.words().getValue(),
                words.count().getValue(),
                further.answers(),
                null,
                null);
        var whole = act.withPieces(pieces.pieces());
        return fate.isVisible() && fate.getValue() != null ? whole.withFate(fate.getValue()) : whole;
    }

    @Nullable
    Side side() {
        return side.getValue();
    }

    /** What is said so far, in words. */
    String summary() {
        if (kind.getValue() == null || side.getValue() == null) {
            return Texts.text("treatment.summary.open");
        }
        var where = TreatmentText.place(side.getValue(), Optional.ofNullable(physis.getValue()), plateSide.getValue());
        return Texts.text("treatment.act", Texts.of(kind.getValue()), where);
    }

    private Optional<ImplantId> implant() {
        if (kind.getValue() == null) {
            return Optional.empty();
        }
        if (kind.getValue().isOnImplant()) {
            return Optional.ofNullable(onImplant.getValue()).flatMap(Tether::implant);
        }
        return kind.getValue().putsIn() ? Optional.of(new ImplantId(newImplant)) : Optional.empty();
    }

    private void takeKind() {
        var what = Optional.ofNullable(kind.getValue());
        boolean on = what.filter(ProcedureKind::isOnImplant).isPresent();
        onImplant.setVisible(on);
        onImplant.setItems(inPlace.stream()
                .filter(tether -> what.filter(tether.placed().onIt()::contains).isPresent())
                .toList());
        side.setVisible(what.isPresent() && !on);
        physis.setVisible(what.isPresent() && !on);
        physis.setEmptySelectionAllowed(what.filter(ProcedureKind::needsPhysis).isEmpty());
        plateSide.setVisible(what.filter(ProcedureKind::needsPlateSide).isPresent()
                && (!on || kind.getValue() == ProcedureKind.PLATE_MOVED));
        if (what.isPresent() && !plateSide.isVisible() && !on) {
            plateSide.clear();
        }
        pieces.procedure(kind.getValue());
        fate.setVisible(what.filter(ProcedureKind::bringsPiecesOut).isPresent());
        further.ask(what.map(ProcedureKind::questions).orElse(List.of()));
    }

    private void takeSide() {
        var before = physis.getValue();
        physis.setItems(side.getValue() == null ? List.of() : PhysisKey.all(side.getValue()));
        if (before != null && side.getValue() != null) {
            physis.setValue(new PhysisKey(side.getValue(), before.bone(), before.end()));
        }
    }

    private void takeImplant(@Nullable Tether tether) {
        if (tether != null) {
            side.setValue(tether.physis().side());
            physis.setValue(tether.physis());
            plateSide.setValue(tether.side().orElse(null));
        }
    }

    private void takePieces() {
        words.follow(pieces);
        tell();
    }

    private void tell() {
        if (!filling) {
            changed.run();
        }
    }

    private static @Nullable String name(@Nullable Enum<?> constant) {
        return constant == null ? null : constant.name();
    }

    private static <E extends Enum<E>> @Nullable E constant(Class<E> type, @Nullable String name) {
        return name == null || name.isEmpty() ? null : Enum.valueOf(type, name);
    }
}
