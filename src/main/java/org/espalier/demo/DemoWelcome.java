package org.espalier.demo;

import java.io.PrintStream;
import java.util.Locale;
import java.util.stream.Collectors;

/** What the demonstration says on the screen it was started from. */
final class DemoWelcome {

    private final PrintStream out;

    DemoWelcome(PrintStream out) {
        this.out = out;
    }

    void print(DemoState state, String port) {
        out.println();
        out.println("Espalier demonstration. Every hospital, person and film in it is invented.");
        out.println("  http://localhost:" + port);
        out.println();
        for (DemoPerson person : DemoPerson.values()) {
            out.printf("  %-10s %-44s %s%n", person.login(), secret(state, person.login()), tells(person));
        }
        out.printf("  %-10s %-44s runs the network%n", DemoHouse.OPERATOR, secret(state, DemoHouse.OPERATOR));
        out.println();
        out.println("  Site token of " + DemoHospital.HARBOUR.title() + " for DICOMweb at /dicom-web:");
        out.println("  " + state.find(DemoHouse.token()).orElseThrow());
        out.println();
        out.println("  The first time, films are drawn for some minutes and appear one after another.");
        out.flush();
    }

    private static String secret(DemoState state, String login) {
        return state.find(DemoHouse.password(login)).orElseThrow();
    }

    private static String tells(DemoPerson person) {
        String roles = person.roles().stream()
                .sorted()
                .map(role -> role.name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .collect(Collectors.joining(", "));
        String places =
                person.hospitals().stream().sorted().map(DemoHospital::code).collect(Collectors.joining(" and "));
        return person.fullName() + ", " + roles + " at " + places;
    }
}
