package org.espalier.access.internal;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A browser and its system in two words, taken from what the browser says of itself (RFC 9110, section 10.1.5), so that
 * a person knows their own devices again. No list of browsers is kept: the last product names it, but for those that
 * every browser names.
 */
final class Device {

    static final String UNKNOWN = "?";

    private static final int LONGEST = 60;
    private static final Pattern COMMENT = Pattern.compile("\\(([^)]*)\\)");
    private static final Pattern PRODUCT = Pattern.compile("([\\p{Alpha}][\\p{Alnum}._-]*)/[\\w.]+");
    private static final Set<String> NAMED_BY_ALL =
            Set.of("Mozilla", "AppleWebKit", "Gecko", "Version", "Mobile", "Safari");
    private static final Set<String> NO_SYSTEM = Set.of("X11", "U", "compatible", "Linux");

    private Device() {}

    /** Of a {@code User-Agent}. */
    static String of(@Nullable String agent) {
        if (agent == null || agent.isBlank()) {
            return UNKNOWN;
        }
        var said = agent.substring(0, Math.min(agent.length(), 400));
        var words = browser(said) + system(said);
        return words.substring(0, Math.min(words.length(), LONGEST));
    }

    private static String browser(String agent) {
        var products = new ArrayDeque<String>();
        var all = new ArrayDeque<String>();
        PRODUCT.matcher(COMMENT.matcher(agent).replaceAll("")).results().forEach(found -> {
            all.push(found.group(1));
            if (!NAMED_BY_ALL.contains(found.group(1))) {
                products.push(found.group(1));
            }
        });
        return products.isEmpty() ? all.isEmpty() ? UNKNOWN : all.peek() : products.peek();
    }

    private static String system(String agent) {
        var comment = COMMENT.matcher(agent);
        if (!comment.find()) {
            return "";
        }
        var parts =
                Arrays.stream(comment.group(1).split(";")).map(String::strip).toList();
        return parts.stream()
                .filter(part -> !NO_SYSTEM.contains(part) && !part.startsWith("rv:"))
                .findFirst()
                .or(() -> parts.stream().findFirst())
                .map(part -> ", " + part.replaceAll("[^\\p{Alnum} ._-]", ""))
                .orElse("");
    }
}
