package org.espalier.followup;

import org.espalier.patient.Child;

/** A family to be reminded of its date, fourteen and two days before. */
public record Reminder(Child child, Visit visit, Family family) {}
