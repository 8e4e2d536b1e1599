package org.espalier.kit;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.i18n.I18NProvider;
import java.awt.ComponentOrientation;
import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;

/**
 * The words of every screen. Each module keeps its own in {@code org/espalier/<module>/messages.properties}; a key
 * begins with the module's name. A missing text is an error: a screen that shows keys is not readable.
 */
@Component
public class Texts implements I18NProvider {

    /** A language is there when the kit speaks it; English always is. */
    private static final List<Locale> LANGUAGES = Stream.concat(
                    Stream.of(Locale.ENGLISH),
                    Stream.of(Locale.getISOLanguages())
                            .filter(code -> Texts.class.getResource("messages_" + code + ".properties") != null)
                            .map(Locale::of))
            .toList();

    /** The text of a key in the reader's language. */
    public static String text(String key, Object... arguments) {
        return lookUp(key, language(), arguments);
    }

    /** What the window of a page is called: the key's text and the house. */
    public static String page(String key) {
        return text("kit.page", text(key));
    }

    /** The text of a constant: {@code <module>.<Type>.<CONSTANT>}; those of science are in the words of the kit. */
    public static String of(Enum<?> constant) {
        return text(key(constant));
    }

    /** The text of a constant that speaks of something. */
    public static String text(Enum<?> constant, Object... arguments) {
        return text(key(constant), arguments);
    }

    /** The words an element of the page draws with: all whose key begins so, by the rest of the key. */
    public static Map<String, String> under(String beginning) {
        return bundle(beginning, language()).keySet().stream()
                .filter(key -> key.startsWith(beginning))
                .collect(Collectors.toMap(key -> key.substring(beginning.length()), key -> text(key)));
    }

    /** The language the reader asked for, among those there are. */
    public static Locale language() {
        var ui = UI.getCurrent();
        var wanted = ui == null ? Locale.ENGLISH : ui.getLocale();
        return LANGUAGES.stream()
                .filter(one -> one.getLanguage().equals(wanted.getLanguage()))
                .findFirst()
                .orElse(Locale.ENGLISH);
    }

    /** Whether the reader's language runs from right to left. */
    public static boolean isRightToLeft() {
        return !ComponentOrientation.getOrientation(language()).isLeftToRight();
    }

    static String key(Enum<?> constant) {
        var type = constant.getDeclaringClass();
        var module = type.getPackageName().split("\\.")[2];
        return (module.equals("science") ? "kit" : module) + "." + type.getSimpleName() + "." + constant.name();
    }

    @Override
    public List<Locale> getProvidedLocales() {
        return LANGUAGES;
    }

    @Override
    public String getTranslation(String key, Locale locale, Object... arguments) {
        return lookUp(key, locale, arguments);
    }

    private static String lookUp(String key, Locale locale, Object... arguments) {
        return new MessageFormat(bundle(key, locale).getString(key), locale).format(arguments);
    }

    private static ResourceBundle bundle(String key, Locale locale) {
        var module = key.substring(0, key.indexOf('.'));
        return ResourceBundle.getBundle("org.espalier." + module + ".messages", locale);
    }
}
