package org.espalier.followup.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.textfield.TextField;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.followup.Family;
import org.espalier.followup.FamilyService;
import org.espalier.followup.Phone;
import org.espalier.kit.Texts;
import org.espalier.patient.Child;
import org.espalier.platform.Drafts;
import org.jspecify.annotations.Nullable;

/** How the family is reached: telephones with owner and language, and what to heed. */
final class FamilyForm extends Composite<Section> {
    private static final int LENGTH = 400;
    private static final String DRAFT = "family";

    private record PhoneFields(TextField number, TextField owner, ComboBox<String> language) {}

    private final Child child;
    private final transient FamilyService service;
    private final Div answer = new Div();
    private final Div phones = new Div();
    private final transient List<PhoneFields> phoneFields = new ArrayList<>();
    private final ComboBox<String> language = language("followup.family.language");
    private final Checkbox interpreter = new Checkbox(Texts.text("followup.family.interpreter"));
    private final TextField transport = text("followup.family.transport");
    private final TextField school = text("followup.family.school");
    private final TextField doNotContact = text("followup.family.do-not-contact");
    private final TextField lead = text("followup.family.lead");
    private final KeptFields typed;
    private transient Family kept;

    FamilyForm(Child child, FamilyService service, Drafts drafts) {
        this.child = child;
        this.service = service;
        kept = service.of(child.id());
        typed = new KeptFields(drafts, DRAFT, child.id().value())
                .place("version", () -> Long.toString(kept.version()), this::typedAgainst)
                .word("language", language)
                .yes("interpreter", interpreter)
                .text("transport", transport)
                .text("school", school)
                .text("do-not-contact", doNotContact)
                .text("lead", lead);
        answer.getElement().setAttribute("role", "status");
        phones.addClassName("phones");
        doNotContact.setHelperText(Texts.text("followup.family.do-not-contact.help"));
        var save = new Button(Texts.text("kit.save"), click -> save());
        save.addThemeVariants(ButtonVariant.PRIMARY);
        var another = new Button(Texts.text("followup.family.another-phone"), click -> {
            addPhone(new Phone("", "", "en"));
            typed.keep();
        });
        var fields = new Div(language, transport, school, lead, doNotContact, interpreter);
        fields.addClassName("form-fields");
        var actions = new Div(save, another);
        actions.addClassName("actions");
        getContent().addClassName("sheet");
        getContent().add(new H2(Texts.text("followup.family")), answer, typed.said(), phones, fields, actions);
        show();
    }
    /** What is on record, and over it what was typed and not written down. */
    private void show() {
        typed.without(name -> name.matches("(number|owner|spoken)\\d+"));
        phones.removeAll();
        phoneFields.clear();
        kept.phones().forEach(this::addPhone);
        if (kept.phones().isEmpty()) {
            addPhone(new Phone("", "", kept.language()));
        }
        while (typed.before().containsKey("number" + phoneFields.size())) {
            addPhone(new Phone("", "", kept.language()));
        }
        language.setValue(kept.language());
        interpreter.setValue(kept.interpreter());
        transport.setValue(known(kept.transport()));
        school.setValue(known(kept.school()));
        doNotContact.setValue(known(kept.doNotContact()));
        lead.setValue(known(kept.safeguardingLead()));
        typed.goOn();
    }

    /** What was typed was meant for the record of then: when that changed since, saving says so. */
    private void typedAgainst(String version) {
        kept = new Family(
                Long.parseLong(version),
                kept.phones(),
                kept.language(),
                kept.interpreter(),
                kept.transport(),
                kept.school(),
                kept.doNotContact(),
                kept.safeguardingLead());
    }

    private void addPhone(Phone phone) {
        var number = text("followup.family.phone");
        number.setErrorMessage(Texts.text("followup.family.phone.missing"));
        number.setValue(phone.number());
        var owner = text("followup.family.phone.owner");
        owner.setValue(phone.owner());
        var spoken = language("followup.family.phone.language");
        spoken.setValue(phone.language());
        var row = new Div(number, owner, spoken);
        row.addClassName("form-fields");
        phones.add(row);
        int at = phoneFields.size();
        phoneFields.add(new PhoneFields(number, owner, spoken));
        typed.text("number" + at, number).text("owner" + at, owner).word("spoken" + at, spoken);
    }

    private void save() {
        if (!isEveryOwnerReached()) {
            return;
        }
        var numbers = phoneFields.stream()
                .filter(fields -> !fields.number().getValue().isBlank())
                .map(fields -> new Phone(
                        fields.number().getValue().strip(),
                        fields.owner().getValue().strip(),
                        fields.language().getValue()))
                .toList();
        var family = new Family(
                kept.version(),
                numbers,
                language.getValue(),
                interpreter.getValue(),
                filled(transport),
                filled(school),
                filled(doNotContact),
                filled(lead));
        boolean saved = service.save(child.site(), child.id(), family);
        kept = service.of(child.id());
        if (saved) {
            typed.discard();
            show();
        } else {
            typed.keep();
        }
        answer.setText(Texts.text(saved ? "followup.kept" : "followup.family.changed-meanwhile", theirs()));
        answer.setClassName(saved ? "" : "soon");
    }

    /** A row without number and owner goes; an owner without a number is asked about. */
    private boolean isEveryOwnerReached() {
        phoneFields.forEach(fields -> fields.number()
                .setInvalid(fields.number().getValue().isBlank()
                        && !fields.owner().getValue().isBlank()));
        return phoneFields.stream().noneMatch(fields -> fields.number().isInvalid());
    }

    /** What stands on record now, to be held beside what is typed. */
    private String theirs() {
        var phones =
                kept.phones().stream().map(phone -> Texts.text("followup.phone.short", phone.number(), phone.owner()));
        var others = Stream.of(kept.transport(), kept.school(), kept.safeguardingLead(), kept.doNotContact())
                .flatMap(Stream::ofNullable);
        var spoken = Stream.of(Languages.name(kept.language()));
        return Stream.of(phones, spoken, others).flatMap(some -> some).collect(Collectors.joining(" · "));
    }

    private static ComboBox<String> language(String label) {
        var box = new ComboBox<String>(Texts.text(label));
        box.setItems(Languages.all());
        box.setItemLabelGenerator(Languages::name);
        box.setValue("en");
        box.addValueChangeListener(change -> {
            if (change.getValue() == null) {
                box.setValue(change.getOldValue());
            }
        });
        return box;
    }

    private static TextField text(String label) {
        var field = new TextField(Texts.text(label));
        field.setMaxLength(LENGTH);
        return field;
    }

    private static String known(@Nullable String text) {
        return text == null ? "" : text;
    }

    private static @Nullable String filled(TextField field) {
        return field.getValue().isBlank() ? null : field.getValue().strip();
    }
}
