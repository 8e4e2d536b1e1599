package org.espalier.patient;

import org.espalier.access.SiteId;

/** Something found on a child was written down, corrected or withdrawn; told in the same transaction. */
public record FindingRecorded(ChildId child, SiteId site) {}
