package org.espalier.treatment.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextField;
import java.util.Map;
import org.espalier.kit.Texts;
import org.espalier.treatment.Act;
import org.jspecify.annotations.Nullable;

/** What went in or came out, in words and in number. The pieces tell it, unless somebody says it in other words. */
final class ImplantWords {

    private static final int MOST_PIECES = 40;

    private final TextField words = Choices.text("treatment.implants", Act.IMPLANTS_LENGTH);
    private final IntegerField count = new IntegerField(Texts.text("treatment.pieces"));
    private String told = "";
    private int counted;

    ImplantWords() {
        words.setHelperText(Texts.text("treatment.implants.help"));
        count.setMin(0);
        count.setMax(MOST_PIECES);
        count.setStepButtonsVisible(true);
    }

    TextField words() {
        return words;
    }

    IntegerField count() {
        return count;
    }

    void fill(String text, @Nullable Integer number, PieceFields pieces) {
        words.setValue(text);
        count.setValue(number);
        told = inWords(pieces);
        counted = pieces.count();
    }

    /** Goes with the pieces as far as nobody said otherwise. */
    void follow(PieceFields pieces) {
        if (words.getValue().isBlank() || words.getValue().equals(told)) {
            told = inWords(pieces);
            words.setValue(told);
        }
        if (count.getValue() == null || count.getValue() == counted) {
            counted = pieces.count();
            count.setValue(counted);
        }
    }

    void demand(Map<Component, String> missing) {
        Problems.demand(missing, words, !words.getValue().isBlank(), "treatment.implants.missing");
        var number = count.getValue();
        Problems.demand(
                missing, count, number != null && number >= 0 && number <= MOST_PIECES, "treatment.pieces.missing");
    }

    private static String inWords(PieceFields pieces) {
        var words = pieces.inWords();
        return words.substring(0, Math.min(words.length(), Act.IMPLANTS_LENGTH)).strip();
    }
}
