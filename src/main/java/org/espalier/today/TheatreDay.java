package org.espalier.today;

import java.time.LocalDate;

/** A day on which theatre has places for children of the hospital. */
public record TheatreDay(LocalDate day, int children) {}
