package org.espalier.patient.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.espalier.kit.Texts;
import org.espalier.patient.ChildData;

/** Lets the reader choose, field by field, between what somebody else saved meanwhile and what they typed. */
final class TheirsBesideMine extends Composite<Section> {

    private final Map<ChildMerge.Field, RadioButtonGroup<Boolean>> choices = new EnumMap<>(ChildMerge.Field.class);

    TheirsBesideMine(ChildMerge merge, Consumer<ChildData> chosen) {
        getContent().addClassNames("sheet", "conflict");
        getContent().add(new H2(Texts.text("patient.conflict")), new Paragraph(Texts.text("patient.conflict.help")));
        merge.differing().forEach(field -> {
            var choice = choice(merge, field);
            choices.put(field, choice);
            getContent().add(choice);
        });
        var save = new Button(Texts.text("patient.conflict.save"), click -> {
            if (isDecided()) {
                chosen.accept(merge.merged(choices.entrySet().stream()
                        .filter(choice -> choice.getValue().getValue())
                        .map(Map.Entry::getKey)
                        .collect(Collectors.toSet())));
            }
        });
        save.addThemeVariants(ButtonVariant.PRIMARY);
        getContent().add(save);
    }

    private static RadioButtonGroup<Boolean> choice(ChildMerge merge, ChildMerge.Field field) {
        var choice = new RadioButtonGroup<Boolean>(Texts.of(field));
        choice.setItems(false, true);
        choice.setItemLabelGenerator(mine -> mine
                ? Texts.text("patient.conflict.mine", field.text(merge.mine()))
                : Texts.text("patient.conflict.theirs", field.text(merge.theirs())));
        merge.isMineTheChanged(field).ifPresent(choice::setValue);
        return choice;
    }

    private boolean isDecided() {
        choices.values().forEach(choice -> {
            choice.setInvalid(choice.isEmpty());
            choice.setErrorMessage(Texts.text("patient.conflict.choose"));
        });
        return choices.values().stream().noneMatch(RadioButtonGroup::isEmpty);
    }
}
