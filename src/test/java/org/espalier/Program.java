package org.espalier;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** A program of the tests in a process of its own, on the classes of this one. */
public final class Program {

    private Program() {}

    /** Its command: quick to start, sparing with the machine. */
    public static ProcessBuilder of(Class<?> main, String... arguments) {
        var java = List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "--enable-native-access=ALL-UNNAMED",
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-Xmx768m",
                "-cp",
                System.getProperty("java.class.path"),
                main.getName());
        return new ProcessBuilder(
                Stream.concat(java.stream(), Stream.of(arguments)).toList());
    }
}
