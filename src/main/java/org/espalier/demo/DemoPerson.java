package org.espalier.demo;

import java.util.EnumSet;
import java.util.Set;
import org.espalier.access.Role;

/** The twelve who work in the demonstration. Their names belong to nobody. */
enum DemoPerson {
    HARBOUR_SURGEON("tessaly", "Tessaly Wrenfold", EnumSet.of(DemoHospital.HARBOUR), EnumSet.of(Role.SURGEON)),
    HARBOUR_SECOND_SURGEON("yselle", "Yselle Maundry", EnumSet.of(DemoHospital.HARBOUR), EnumSet.of(Role.SURGEON)),
    HARBOUR_NURSE("corvin", "Corvin Ashmarl", EnumSet.of(DemoHospital.HARBOUR), EnumSet.of(Role.NURSE)),
    HARBOUR_RADIOGRAPHER("sunniva", "Sunniva Quarle", EnumSet.of(DemoHospital.HARBOUR), EnumSet.of(Role.RADIOGRAPHER)),
    VALLEY_SURGEON("ludo", "Ludo Fennimark", EnumSet.of(DemoHospital.VALLEY), EnumSet.of(Role.SURGEON)),
    VALLEY_NURSE(
            "pia",
            "Pia Tarrowby",
            EnumSet.of(DemoHospital.VALLEY),
            EnumSet.of(Role.NURSE, Role.RADIOGRAPHER, Role.STOREKEEPER)),
    MOOR_SURGEON(
            "ingram", "Ingram Voskuld", EnumSet.of(DemoHospital.MOOR, DemoHospital.VALLEY), EnumSet.of(Role.SURGEON)),
    MOOR_NURSE("odile", "Odile Brannoch", EnumSet.of(DemoHospital.MOOR), EnumSet.of(Role.NURSE)),
    MOOR_RADIOGRAPHER("bastien", "Bastien Corle", EnumSet.of(DemoHospital.MOOR), EnumSet.of(Role.RADIOGRAPHER)),
    STOREKEEPER(
            "marit",
            "Marit Hollowell",
            EnumSet.of(DemoHospital.HARBOUR, DemoHospital.MOOR),
            EnumSet.of(Role.STOREKEEPER)),
    COSTS("quillon", "Quillon Dray", EnumSet.allOf(DemoHospital.class), EnumSet.of(Role.COST_ADMINISTRATOR)),
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
