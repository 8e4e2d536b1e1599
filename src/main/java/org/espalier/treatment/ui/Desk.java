package org.espalier.treatment.ui;

import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.SignAgain;
import org.espalier.platform.Ids;
import org.espalier.stock.CatalogueService;
import org.espalier.stock.ReservationService;
import org.espalier.treatment.ImplantService;
import org.espalier.treatment.ReversalService;
import org.espalier.treatment.Treatment;
import org.espalier.treatment.TreatmentFactService;
import org.espalier.treatment.TreatmentService;
import org.springframework.stereotype.Component;

/** What the dialogs of treatment work with. */
@Component
record Desk(
        TreatmentService treatments,
        TreatmentFactService facts,
        ReversalService reversals,
        ImplantService implants,
        ReservationService reservations,
        CatalogueService catalogue,
        CurrentStaff staff,
        SignAgain signAgain,
        Ids ids) {

    boolean isSurgeonAt(Treatment treatment) {
        return staff.has(Role.SURGEON, treatment.site());
    }

    boolean mayWriteAt(Treatment treatment) {
        return isSurgeonAt(treatment) || staff.has(Role.NURSE, treatment.site());
    }
}
