package org.espalier.treatment;

import java.time.LocalDate;

/** What is written down beside the procedures. */
public sealed interface TreatmentFact
        permits CareStep, Complication, ImplantFinding, Maturity, Plan, Target, TheatreCheck {

    /** The longest reason or remark that is kept. */
    int REMARK_LENGTH = 400;

    /** The day it is about. */
    LocalDate on();
}
