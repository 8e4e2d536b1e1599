package org.espalier.plan.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.router.Route;
import java.util.Optional;
import org.espalier.access.SiteService;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.plan.SheetInputs;
import org.espalier.plan.SheetKind;
import org.espalier.plan.SheetService;
import org.espalier.science.planning.LoadIndex;
import org.espalier.science.quantity.Side;

/** Is there growth enough, until when, and what does a plate bring month by month? */
@Route("child/:child/plan/growth")
@StyleSheet("themes/plan.css")
class GrowthSheetView extends SheetScreen {

    private static final double MOST_CORE = 8;
    private static final double MOST_EXPOSED = 20;

    GrowthSheetView(SheetService sheets, PatientService patients, SiteService sites) {
        super(SheetKind.GROWTH, sheets, patients, sites);
    }

    @Override
    Optional<Component> form(ChildId child, Side side, SheetInputs inputs) {
        return Optional.of(new InputsForm(inputs, typed -> reckonAnew(child, side, typed))
                .number("core", 1.5, MOST_CORE)
                .number("bore", 0, MOST_CORE)
                .choice("material", LoadIndex.Material.class)
                .number("exposed", 0, MOST_EXPOSED));
    }
}
