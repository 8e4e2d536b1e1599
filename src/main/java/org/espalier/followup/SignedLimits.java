package org.espalier.followup;

import java.time.LocalDate;

/** Limits as somebody signed them for a site. */
public record SignedLimits(Limits limits, String reason, String signedBy, LocalDate signedOn) {}
