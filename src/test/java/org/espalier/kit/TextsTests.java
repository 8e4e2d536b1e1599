package org.espalier.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every text that a screen or an element of it asks for is there, and every text that is there is asked for. */
class TextsTests {

    private static final Path SOURCES = Path.of("src/main/java/org/espalier");
    private static final Path CLASSES = Path.of("target/classes");
    private static final Path BUNDLES = Path.of("src/main/resources/org/espalier");
    private static final Pattern LITERAL = Pattern.compile("\"([a-z]+\\.[A-Za-z][A-Za-z0-9_.-]*)\"");
    private static final Pattern ELEMENT_TEXTS = Pattern.compile("interface Texts \\{([^}]*)}");
    private static final Pattern ELEMENT_WORD = Pattern.compile("([\\w-]+)'?: string;");
    private static final Pattern LONE_APOSTROPHE = Pattern.compile("(?<!')'(?!')");

    private final Map<String, Properties> bundles = bundles();

    @Test
    void hasEveryTextThatIsAskedFor() {
        var asked = literals().stream().filter(this::isOfABundle).toList();
        assertThat(asked).isNotEmpty().allSatisfy(key -> assertThat(keys())
                .as(key)
                .anyMatch(one -> key.endsWith(".") ? one.startsWith(key) : one.equals(key)));
    }

    @Test
    void asksForEveryTextThatItHas() {
        var asked = literals();
        var ofEnums = textsOfEnums();
        assertThat(keys()).allSatisfy(key -> assertThat(asked.contains(key)
                        || ofEnums.contains(key)
                        || asked.stream().anyMatch(one -> one.endsWith(".") && key.startsWith(one)))
                .as(key)
                .isTrue());
    }

    @Test
    void hasATextForEveryConstantOfATypeThatHasOne() {
        var keys = keys();
        assertThat(enums()).allSatisfy(type -> {
            var wanted = Arrays.stream(type.getEnumConstants())
                    .map(one -> Texts.key((Enum<?>) one))
                    .collect(Collectors.toSet());
            assertThat(keys.containsAll(wanted) || wanted.stream().noneMatch(keys::contains))
                    .as("texts of " + type)
                    .isTrue();
        });
    }

    @Test
    void hasTextsThatCanBeFilledIn() {
        bundles.forEach((module, texts) -> texts.forEach((key, text) -> {
            assertThat((String) key).startsWith(module + ".");
            assertThat((String) text).isNotBlank();
            assertThat(LONE_APOSTROPHE.matcher((String) text).find())
                    .as("a lone apostrophe opens a quotation in %s", key)
                    .isFalse();
            assertThat(new MessageFormat((String) text, Locale.ENGLISH).format(new Object[] {1, 2, 3, 4, 5}))
                    .isNotBlank();
        }));
    }

    @ParameterizedTest
    @CsvSource({
        "course-chart, kit.chart.",
        "film-room, reading.room.",
        "film-pair, reading.pair.",
        "cut-film, plan.film.",
        "opinion-film, opinion.film.",
    })
    void hasEveryWordThatAnElementOfThePageDrawsWith(String element, String beginning) {
        var words = wordsOf(element);
        assertThat(words).isNotEmpty();
        assertThat(Texts.under(beginning)).containsKeys(words.toArray(String[]::new));
    }

    @Test
    void refusesAKeyThatIsNotThere() {
        assertThatThrownBy(() -> Texts.text("kit.no-such-text")).isInstanceOf(MissingResourceException.class);
    }

    @Test
    void showsArgumentsWhereTheTextWantsThem() {
        assertThat(Texts.text("kit.age.years", 6, 4)).isEqualTo("6y 4m");
    }

    /** The words that the sources of an element name as its own. */
    private static Set<String> wordsOf(String element) {
        try (var files = Files.list(Path.of("frontend", element))) {
            return files.map(TextsTests::read)
                    .flatMap(source -> ELEMENT_TEXTS.matcher(source).results())
                    .flatMap(found -> ELEMENT_WORD.matcher(found.group(1)).results())
                    .map(found -> found.group(1))
                    .collect(Collectors.toSet());
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private boolean isOfABundle(String key) {
        return bundles.containsKey(key.substring(0, key.indexOf('.')));
    }

    private Set<String> keys() {
        return bundles.values().stream()
                .flatMap(texts -> texts.stringPropertyNames().stream())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> literals() {
        try (var files = Files.walk(SOURCES)) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .map(TextsTests::read)
                    .flatMap(source -> LITERAL.matcher(source).results())
                    .map(found -> found.group(1))
                    .collect(Collectors.toCollection(TreeSet::new));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Set<String> textsOfEnums() {
        return enums().stream()
                .flatMap(type -> Arrays.stream(type.getEnumConstants()))
                .map(one -> Texts.key((Enum<?>) one))
                .collect(Collectors.toSet());
    }

    private static Set<Class<?>> enums() {
        try (var files = Files.walk(CLASSES.resolve("org/espalier"))) {
            return files.map(file -> CLASSES.relativize(file).toString())
                    .filter(file -> file.matches("org/espalier/\\w+/.*\\.class") && !file.endsWith("-info.class"))
                    .map(file -> named(file.replace(".class", "").replace('/', '.')))
                    .filter(Class::isEnum)
                    .collect(Collectors.toSet());
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Class<?> named(String name) {
        try {
            return Class.forName(name, false, TextsTests.class.getClassLoader());
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Map<String, Properties> bundles() {
        try (var modules = Files.list(BUNDLES)) {
            var bundles = new TreeMap<String, Properties>();
            modules.filter(module -> Files.exists(module.resolve("messages.properties")))
                    .forEach(module -> bundles.put(
                            BUNDLES.relativize(module).toString(), load(module.resolve("messages.properties"))));
            return bundles;
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Properties load(Path file) {
        try {
            var texts = new Properties();
            texts.load(new StringReader(read(file)));
            return texts;
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
