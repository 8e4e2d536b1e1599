package org.espalier.plan.ui;

import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.router.Route;
import org.espalier.access.SiteService;
import org.espalier.patient.PatientService;
import org.espalier.plan.SheetKind;
import org.espalier.plan.SheetService;

/** Is it physiological? */
@Route("child/:child/plan/bow")
@StyleSheet("themes/plan.css")
class BowSheetView extends SheetScreen {

    BowSheetView(SheetService sheets, PatientService patients, SiteService sites) {
        super(SheetKind.BOW, sheets, patients, sites);
    }
}
