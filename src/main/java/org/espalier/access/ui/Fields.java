package org.espalier.access.ui;

import com.vaadin.flow.component.HasValidation;
import org.espalier.kit.Texts;

/** Says at a field what is wrong with what was typed in it. */
final class Fields {

    private Fields() {}

    /** Marks the field as right or wrong and passes the answer on. */
    static boolean check(HasValidation field, boolean fits, String words) {
        field.setErrorMessage(fits ? "" : Texts.text(words));
        field.setInvalid(!fits);
        return fits;
    }
}
