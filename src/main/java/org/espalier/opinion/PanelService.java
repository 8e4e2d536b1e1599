package org.espalier.opinion;

import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.espalier.access.StaffId;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Named groups of colleagues to ask together. A panel opens nothing: each member gets a grant of their own when asked.
 */
@Service
@Transactional
public class PanelService {

    private final JdbcMemberRepository members;
    private final Clock clock;

    PanelService(JdbcMemberRepository members, Clock clock) {
        this.members = members;
        this.clock = clock;
    }

    /** Every panel of the network, by name. */
    public List<Panel> all() {
        return members.panels();
    }

    /**
     * Makes a panel.
     *
     * @return false when there is one of that name
     */
    public boolean make(UUID id, String name, List<StaffId> colleagues) {
        boolean made = members.make(id, name.strip(), clock.instant());
        if (made) {
            colleagues.forEach(one -> members.join(id, one));
        }
        return made;
    }

    /** Adds a colleague to a panel of the caller's. */
    public void add(UUID panel, StaffId colleague) {
        members.join(panel, colleague);
    }

    /** Takes somebody out of a panel: oneself, or whom one put in. */
    public boolean remove(UUID panel, StaffId colleague) {
        return members.leave(panel, colleague);
    }
}
