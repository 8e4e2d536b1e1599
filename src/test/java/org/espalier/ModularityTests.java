package org.espalier;

import org.junit.jupiter.api.Test;
import org.springframework.modulith.core.ApplicationModules;

class ModularityTests {

    @Test
    void modulesUseNoMoreThanTheyDeclare() {
        ApplicationModules.of(Espalier.class).verify();
    }
}
