package org.espalier.treatment.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.HasValue;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.espalier.kit.Texts;
import org.espalier.treatment.Question;

/** What may be said of an act beside the facts required. Everything is "not recorded" until it is answered. */
final class QuestionFields extends Composite<Div> {

    private static final int LONGEST = 120;

    private final Div fields = new Div();
    private final Map<Question, HasValue<?, ?>> questions = new EnumMap<>(Question.class);
    private final Runnable changed;

    QuestionFields(Runnable changed) {
        this.changed = changed;
        fields.addClassName("form-fields");
        getContent().add(new Details(Texts.text("treatment.further"), fields));
    }

    /** Asks these, and forgets the answers to others. */
    void ask(List<Question> asked) {
        questions.clear();
        fields.removeAll();
        asked.forEach(question -> fields.add(field(question)));
        setVisible(!asked.isEmpty());
    }

    /** Puts back answers; those to questions that are not asked are left out. */
    void fill(Map<String, String> answers) {
        answers.forEach((name, answer) -> fill(Question.valueOf(name), answer));
    }

    Map<String, String> typed() {
        var answers = new HashMap<String, String>();
        answers().forEach((question, answer) -> answers.put(question.name(), answer));
        return answers;
    }

    Map<Question, String> answers() {
        var answers = new EnumMap<Question, String>(Question.class);
        questions.forEach((question, field) -> {
            if (!field.isEmpty()) {
                var value = field.getValue();
                answers.put(question, value instanceof Enum<?> constant ? constant.name() : value.toString());
            }
        });
        return answers;
    }

    private Component field(Question question) {
        if (question.isAnsweredInWords()) {
            var words = new TextField(Texts.of(question));
            words.setMaxLength(LONGEST);
            words.setPlaceholder(Texts.text("treatment.not-recorded"));
            words.addValueChangeListener(change -> changed.run());
            questions.put(question, words);
            return words;
        }
        var answer = Choices.optional("treatment.answer", Arrays.asList(Question.Answer.values()));
        answer.setLabel(Texts.of(question));
        answer.addValueChangeListener(change -> changed.run());
        questions.put(question, answer);
        return answer;
    }

    @SuppressWarnings("unchecked")
    private void fill(Question question, String answer) {
        switch (questions.get(question)) {
            case TextField words -> words.setValue(answer);
            case Select<?> choice -> ((Select<Question.Answer>) choice).setValue(Question.Answer.valueOf(answer));
            case null, default -> {
                // A question that this kind of procedure does not ask.
            }
        }
    }
}
