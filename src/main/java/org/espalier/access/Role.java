package org.espalier.access;

/** What somebody may be at a site. */
public enum Role {
    SURGEON,
    NURSE,
    RADIOGRAPHER,
    STOREKEEPER,
    COST_ADMINISTRATOR,
    PRIVACY_OFFICER,
    AUDITOR,
    /** The site's picture archive, a machine that signs in with a site token. */
    ARCHIVE
}
