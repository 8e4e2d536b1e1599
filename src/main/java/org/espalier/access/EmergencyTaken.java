package org.espalier.access;

/** A child of the hospital was opened in an emergency by somebody of another one. */
public record EmergencyTaken(SiteId site) {}
