package org.espalier.kit;

import com.vaadin.flow.component.Component;
import java.time.LocalDate;
import java.util.UUID;

/** What another module adds to the page on which a child is examined. */
public interface ExaminationPart {

    /**
     * The part for a child.
     *
     * @param who the child as far as the reader may know
     * @param today by the zone of the hospital that has care
     */
    Component of(UUID child, Who who, LocalDate today);
}
