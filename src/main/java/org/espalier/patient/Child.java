package org.espalier.patient;

import java.util.Optional;
import org.espalier.access.ChildRef;
import org.espalier.access.SiteId;
import org.espalier.kit.Who;

/**
 * A child as the reader may know it.
 *
 * @param site the hospital that has care
 * @param version counts the changes of who the child is
 * @param who by name for those who treat the child, by initials for everybody else
 */
public record Child(ChildId id, SiteId site, long version, Who who) {

    /** Who the child is, to be edited; empty for a reader who may not know. */
    public Optional<ChildData> data() {
        return who instanceof Who.Named named ? Optional.of(ChildData.of(named)) : Optional.empty();
    }

    /** The child as the access log names it. */
    public ChildRef ref() {
        return new ChildRef(site, id.value());
    }
}
