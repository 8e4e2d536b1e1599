package org.espalier.plan;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.espalier.science.quantity.Length;

/**
 * One option at one limb, with all that stands beside it.
 *
 * @param notNow why it does not stand in the table today; empty when it does
 * @param course bony HKA from today on; empty where no forecast can be made of it
 * @param gained by how much the leg is longer from hip to ankle once straight; empty without lengths
 */
public record OptionOutlook(
        Option option,
        Optional<NotNow> notNow,
        List<PhysisReach> physes,
        List<CourseDay> course,
        Takes takes,
        Optional<Length> gained,
        Set<Flag> flags) {

    public OptionOutlook {
        physes = List.copyOf(physes);
        course = List.copyOf(course);
    }

    /** Whether it stands in the table today. */
    public boolean isOpen() {
        return notNow.isEmpty();
    }
}
