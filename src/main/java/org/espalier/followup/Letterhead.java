package org.espalier.followup;

/** What a letter says of the hospital: where it is and whom the family calls. */
public record Letterhead(String address, String phone) {}
