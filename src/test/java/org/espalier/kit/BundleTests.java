package org.espalier.kit;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.vaadin.flow.component.dependency.CssImport;
import com.vaadin.flow.component.dependency.JsModule;
import com.vaadin.flow.component.dependency.NpmPackage;
import java.io.IOException;
import java.lang.annotation.Annotation;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The committed bundle is the one made from the sources beside it. It carries the hash of every source it was made
 * from; {@code frontend/rebuild} makes it anew.
 */
class BundleTests {

    private static final Path FRONTEND = Path.of("frontend");
    private static final Path BUNDLE = Path.of("src/main/bundles/prod.bundle");
    private static final String REBUILD =
            "the committed bundle is stale: run frontend/rebuild and commit what it writes";

    private static JsonNode stats;
    private static JavaClasses house;

    @BeforeAll
    static void openBundle() throws IOException {
        try (ZipFile bundle = new ZipFile(BUNDLE.toFile());
                var content = bundle.getInputStream(bundle.getEntry("config/stats.json"))) {
            stats = new JsonMapper().readTree(content);
        }
        house = new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("org.espalier");
    }

    @Test
    void isMadeFromTheSourcesAsTheyAre() throws IOException {
        Map<String, String> sources = new TreeMap<>();
        Map<String, String> bundled = new TreeMap<>();
        for (String name : sourceNames()) {
            sources.put(name, hashOf(FRONTEND.resolve(name)));
            bundled.put(name, stats.path("frontendHashes").path(name).asString("absent"));
        }
        assertThat(bundled).as(REBUILD).isEqualTo(sources).isNotEmpty();
    }

    @Test
    void holdsEveryModuleAndStyleTheHouseAsksFor() {
        List<String> wanted = Stream.concat(
                        annotations(JsModule.class).map(JsModule::value),
                        annotations(CssImport.class).map(CssImport::value))
                .map(module -> module.replaceFirst("^\\./", "Frontend/"))
                .toList();
        assertThat(stats.path("bundleImports").valueStream().map(JsonNode::asString))
                .as(REBUILD)
                .containsAll(wanted);
        assertThat(wanted).isNotEmpty();
    }

    @Test
    void holdsEveryPackageInTheVersionTheHouseAsksFor() {
        Map<String, String> wanted = new TreeMap<>();
        annotations(NpmPackage.class).forEach(npm -> wanted.put(npm.value(), npm.version()));
        Map<String, String> held = new TreeMap<>();
        wanted.keySet()
                .forEach(name -> held.put(
                        name, stats.path("packageJsonDependencies").path(name).asString("absent")));
        assertThat(held).as(REBUILD).isEqualTo(wanted).isNotEmpty();
    }

    /** All sources but descriptions of types, which leave nothing in a bundle. */
    private static List<String> sourceNames() throws IOException {
        try (Stream<Path> files = Files.walk(FRONTEND)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> FRONTEND.relativize(file).toString().replace('\\', '/'))
                    .filter(name -> !name.startsWith("generated/"))
                    .filter(name -> name.endsWith(".ts") || name.endsWith(".html"))
                    .filter(name -> !name.endsWith("/contract.ts"))
                    .sorted()
                    .toList();
        }
    }

    private static String hashOf(Path source) throws IOException {
        String content = Files.readString(source).replace("\r\n", "\n");
        try {
            MessageDigest sha256 = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(sha256.digest(content.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    private static <A extends Annotation> Stream<A> annotations(Class<A> type) {
        return house.stream()
                .map(JavaClass::reflect)
                .flatMap(one -> Arrays.stream(one.getDeclaredAnnotationsByType(type)));
    }
}
