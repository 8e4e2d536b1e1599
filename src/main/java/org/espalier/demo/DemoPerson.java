package org.espalier.demo;

import java.util.EnumSet;
import java.util.Set;
import org.espalier.access.Role;

/** The six who work in the demonstration. Their names belong to nobody. */
enum DemoPerson {
    HARBOUR_SURGEON("tessaly", "Tessaly Wrenfold", EnumSet.of(DemoHospital.HARBOUR), EnumSet.of(Role.SURGEON)),
    HARBOUR_NURSE(
            "corvin",
            "Corvin Ashmarl",
            EnumSet.of(DemoHospital.HARBOUR),
            EnumSet.of(Role.NURSE, Role.STOREKEEPER, Role.COST_ADMINISTRATOR)),
    HARBOUR_RADIOGRAPHER("sunniva", "Sunniva Quarle", EnumSet.of(DemoHospital.HARBOUR), EnumSet.of(Role.RADIOGRAPHER)),
    VALLEY_SURGEON("ludo", "Ludo Fennimark", EnumSet.of(DemoHospital.VALLEY), EnumSet.of(Role.SURGEON)),
    VALLEY_NURSE(
            "pia",
            "Pia Tarrowby",
            EnumSet.of(DemoHospital.VALLEY),
            EnumSet.of(Role.NURSE, Role.RADIOGRAPHER, Role.STOREKEEPER, Role.COST_ADMINISTRATOR)),
    OVERSEER(
            "emeric",
            "Emeric Solwane",
            EnumSet.allOf(DemoHospital.class),
            EnumSet.of(Role.PRIVACY_OFFICER, Role.AUDITOR));

    private final String login;
    private final String fullName;
    private final Set<DemoHospital> hospitals;
    private final Set<Role> roles;

    DemoPerson(String login, String fullName, Set<DemoHospital> hospitals, Set<Role> roles) {
        this.login = login;
        this.fullName = fullName;
        this.hospitals = Set.copyOf(hospitals);
        this.roles = Set.copyOf(roles);
    }

    String login() {
        return login;
    }

    String fullName() {
        return fullName;
    }

    Set<DemoHospital> hospitals() {
        return hospitals;
    }

    Set<Role> roles() {
        return roles;
    }
}
