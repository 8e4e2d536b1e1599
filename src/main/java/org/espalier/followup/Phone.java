package org.espalier.followup;

/** A telephone of a family. */
public record Phone(String number, String owner, String language) {}
