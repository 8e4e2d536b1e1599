package org.espalier.plan.ui;

import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.router.Route;
import org.espalier.access.SiteService;
import org.espalier.patient.PatientService;
import org.espalier.plan.SheetKind;
import org.espalier.plan.SheetService;

/** How long is each leg, what will it be, and how does it turn? */
@Route("child/:child/plan/length")
@StyleSheet("themes/plan.css")
class LengthSheetView extends SheetScreen {

    LengthSheetView(SheetService sheets, PatientService patients, SiteService sites) {
        super(SheetKind.LENGTH, sheets, patients, sites);
    }
}
