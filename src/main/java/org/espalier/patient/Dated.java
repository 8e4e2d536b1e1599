package org.espalier.patient;

import java.time.LocalDate;

/** A value of a day: one point of a series. */
public record Dated<T>(LocalDate on, T value) {}
