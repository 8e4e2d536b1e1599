package org.espalier.followup;

import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** How the family of a child is reached. */
@Service
@Transactional
public class FamilyService {

    private final JdbcFamilyRepository families;

    FamilyService(JdbcFamilyRepository families) {
        this.families = families;
    }

    /** What is known, for a screen that has opened the child's record. */
    public Family of(ChildId child) {
        return families.of(child);
    }

    /**
     * Keeps what is known now.
     *
     * @return false when somebody else changed it meanwhile; nothing is kept then
     */
    public boolean save(SiteId site, ChildId child, Family family) {
        return families.save(site, child, family);
    }
}
