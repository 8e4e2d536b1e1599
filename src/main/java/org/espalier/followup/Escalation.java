package org.espalier.followup;

import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.stream.Collectors;

/**
 * Proposes the next way to a family: the gentlest not tried yet; a family not to be contacted goes to the lead at once.
 */
final class Escalation {

    private Escalation() {}

    static Channel next(Family family, Collection<Channel> tried) {
        if (!family.mayBeContacted()) {
            return Channel.SAFEGUARDING_LEAD;
        }
        var gone = tried.isEmpty() ? EnumSet.noneOf(Channel.class) : EnumSet.copyOf(tried);
        var possible = Arrays.stream(Channel.values())
                .filter(channel -> !family.phones().isEmpty() || channel != Channel.CALL && channel != Channel.MESSAGE)
                .collect(Collectors.toList());
        return possible.stream()
                .filter(channel -> !gone.contains(channel))
                .findFirst()
                .orElse(Channel.SAFEGUARDING_LEAD);
    }
}
