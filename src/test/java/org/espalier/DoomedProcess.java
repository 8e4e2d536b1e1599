package org.espalier;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;

/** The whole application in a process of its own, to be killed amid its work, and to be started again after it. */
public final class DoomedProcess {

    /** The exit status of one that was killed. */
    public static final int KILLED = 137;

    private static final int SECONDS = 240;

    private DoomedProcess() {}

    /** Begins a life of the program in a folder, waits for its end and says how it ended. */
    public static int run(Class<?> program, Path folder, Enum<?> life) throws IOException, InterruptedException {
        var process = Program.of(program, folder.toString(), life.name())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve(life + ".log").toFile())
                .start();
        assertThat(process.waitFor(SECONDS, TimeUnit.SECONDS))
                .as(life + " took too long")
                .isTrue();
        return process.exitValue();
    }

    /** What a life said. */
    public static List<String> said(Path folder, Enum<?> life) throws IOException {
        return Files.readAllLines(folder.resolve(life + ".said"));
    }

    /** What is lived in the house; what it says is kept. */
    public interface Life {

        void in(ConfigurableApplicationContext house, PrintStream said) throws IOException;
    }

    /** Within the process: starts the house in the folder of the first argument and lives in it. */
    public static void live(String[] arguments, Life life) throws IOException {
        live(arguments, new Object(), life);
    }

    /**
     * The same with somebody who hears what happens in the house.
     *
     * @param listener its methods that listen to events are called
     */
    public static void live(String[] arguments, Object listener, Life life) throws IOException {
        var folder = Path.of(arguments[0]);
        try (var said = new PrintStream(Files.newOutputStream(folder.resolve(arguments[1] + ".said")), true);
                var house = new SpringApplicationBuilder(Espalier.class)
                        .initializers(context -> context.getBeanFactory().registerSingleton("listener", listener))
                        .run(
                                "--espalier.data=" + folder.resolve("data"),
                                "--espalier.database.embedded=true",
                                "--server.port=0",
                                "--management.server.port=0")) {
            life.in(house, said);
        }
    }

    /** Dies as a killed process does: nothing is closed, nothing is said. */
    public static void die() {
        Runtime.getRuntime().halt(KILLED);
    }
}
