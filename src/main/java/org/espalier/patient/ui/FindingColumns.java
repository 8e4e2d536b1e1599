package org.espalier.patient.ui;

import java.util.List;
import java.util.Optional;
import org.espalier.kit.DateText;
import org.espalier.kit.QuantityText;
import org.espalier.kit.Texts;
import org.espalier.patient.BodySize;
import org.espalier.patient.BoneAge;
import org.espalier.patient.ChildData;
import org.espalier.patient.Diagnosis;
import org.espalier.patient.ui.FactTable.Column;
import org.espalier.science.growth.BmiReference;
import org.espalier.science.growth.BodyMassIndex;
import org.espalier.science.growth.Standing;
import org.espalier.science.quantity.Age;

/** What the tables of findings show. */
final class FindingColumns {

    private FindingColumns() {}

    static List<Column<Diagnosis>> diagnosis() {
        return List.of(
                new Column<>("patient.diagnosis", FindingColumns::kind),
                new Column<>("patient.sides", diagnosis -> Texts.of(diagnosis.sides())),
                new Column<>("patient.onset", FindingColumns::onset));
    }

    static List<Column<BodySize>> size(ChildData child) {
        return List.of(
                new Column<>("patient.age", size -> DateText.of(Age.between(child.birthDate(), size.on()))),
                new Column<>(
                        "patient.height",
                        size -> orNotKnown(Optional.ofNullable(size.height()).map(QuantityText::ofHeight))),
                new Column<>(
                        "patient.weight",
                        size -> orNotKnown(Optional.ofNullable(size.weight()).map(QuantityText::of))),
                new Column<>("patient.bmi", size -> orNotKnown(size.index().map(index -> bmi(child, size, index)))));
    }

    static List<Column<BoneAge>> boneAge(ChildData child) {
        return List.of(
                new Column<>("patient.age", boneAge -> DateText.of(Age.between(child.birthDate(), boneAge.on()))),
                new Column<>("patient.bone-age", boneAge -> DateText.of(boneAge.age())),
                new Column<>("patient.method", boneAge -> Texts.of(boneAge.method())),
                new Column<>(
                        "patient.reader",
                        boneAge -> boneAge.reader() == null ? Texts.text("patient.reader.same") : boneAge.reader()));
    }

    /** The index with its centile, where the reference has one for sex and age. */
    private static String bmi(ChildData child, BodySize size, BodyMassIndex index) {
        var value = QuantityText.ofIndex(index.kilogramsPerSquareMetre());
        return Optional.ofNullable(child.sex())
                .flatMap(sex -> BmiReference.standing(sex, Age.between(child.birthDate(), size.on()), index))
                .map(standing -> Texts.text("patient.bmi.centile", value, centile(standing)))
                .orElse(value);
    }

    private static String centile(Standing standing) {
        if (standing.isBeyondPrintedCentiles()) {
            return Texts.text(standing.zScore() > 0 ? "patient.bmi.above" : "patient.bmi.below");
        }
        return Texts.text("patient.bmi.at", Math.round(standing.centile()));
    }

    private static String kind(Diagnosis diagnosis) {
        var kind = Texts.of(diagnosis.kind());
        return diagnosis.note() == null ? kind : Texts.text("patient.diagnosis.noted", kind, diagnosis.note());
    }

    private static String onset(Diagnosis diagnosis) {
        var group = Optional.ofNullable(diagnosis.onset()).map(Texts::of);
        var age = Optional.ofNullable(diagnosis.onsetAge())
                .map(value -> Texts.text("patient.onset.at", DateText.of(value)));
        if (group.isPresent() && age.isPresent()) {
            return Texts.text("patient.onset.both", group.get(), age.get());
        }
        return orNotKnown(group.or(() -> age));
    }

    private static String orNotKnown(Optional<String> text) {
        return text.orElseGet(() -> Texts.text("kit.not-known"));
    }
}
