package org.espalier;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;

/**
 * A language of brackets: every text of every bundle between two, under the code of a language that runs from right to
 * left. On a screen read in it, what stands outside brackets did not come from a bundle.
 */
public final class PseudoLanguage {

    public static final String CODE = "ar";
    public static final String OPEN = "⟦";
    public static final String CLOSE = "⟧";

    private static final Path BUNDLES = Path.of("target", "classes", "org", "espalier");
    private static final Path PSEUDO = Path.of("target", "test-classes", "org", "espalier");

    private PseudoLanguage() {}

    static void write() throws IOException {
        try (var modules = Files.list(BUNDLES)) {
            for (var module : modules.filter(Files::isDirectory).toList()) {
                var bundle = module.resolve("messages.properties");
                if (Files.exists(bundle)) {
                    write(bundle, PSEUDO.resolve(module.getFileName()));
                }
            }
        }
    }

    private static void write(Path bundle, Path folder) throws IOException {
        var words = new Properties();
        try (var file = Files.newBufferedReader(bundle)) {
            words.load(file);
        }
        words.replaceAll((key, text) -> OPEN + text + CLOSE);
        Files.createDirectories(folder);
        try (var file = Files.newBufferedWriter(folder.resolve("messages_" + CODE + ".properties"))) {
            words.store(file, null);
        }
    }
}
