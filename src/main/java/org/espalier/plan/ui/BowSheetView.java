package org.espalier.plan.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.router.Route;
import java.util.Optional;
import org.espalier.access.SiteService;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.plan.NormChoice;
import org.espalier.plan.SheetInputs;
import org.espalier.plan.SheetKind;
import org.espalier.plan.SheetService;
import org.espalier.science.quantity.Side;

/** Is it physiological? */
@Route("child/:child/plan/bow")
@StyleSheet("themes/plan.css")
class BowSheetView extends SheetScreen {

    BowSheetView(SheetService sheets, PatientService patients, SiteService sites) {
        super(SheetKind.BOW, sheets, patients, sites);
    }

    @Override
    Optional<Component> form(ChildId child, Side side, SheetInputs inputs) {
        return Optional.of(new InputsForm(inputs, typed -> reckonAnew(child, side, typed))
                .oneOf(NormChoice.NAME, NormChoice.all(), NormChoice::code, NormChoice::words));
    }
}
