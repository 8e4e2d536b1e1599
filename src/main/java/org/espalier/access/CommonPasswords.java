package org.espalier.access;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.core.io.ClassPathResource;
import org.springframework.security.authentication.password.CompromisedPasswordChecker;
import org.springframework.security.authentication.password.CompromisedPasswordDecision;
import org.springframework.stereotype.Component;

/**
 * Knows the passwords that are tried first. One of them with digits or signs around it, or repeated, is as bad as
 * itself.
 */
@Component
class CommonPasswords implements CompromisedPasswordChecker {

    private final Set<String> list;

    CommonPasswords() throws IOException {
        list = new ClassPathResource("common-passwords.txt", CommonPasswords.class)
                .getContentAsString(StandardCharsets.UTF_8)
                .lines()
                .filter(line -> !line.startsWith("#"))
                .collect(Collectors.toUnmodifiableSet());
    }

    @Override
    public CompromisedPasswordDecision check(@Nullable String password) {
        return new CompromisedPasswordDecision(password != null && isCommon(password.toLowerCase(Locale.ROOT)));
    }

    private boolean isCommon(String password) {
        var core = password.replaceAll("^[^\\p{L}]+|[^\\p{L}]+$", "");
        return list.contains(password) || core.length() < 4 || list.contains(core) || isRepeated(core);
    }

    /** Whether the text is one of the list, or a few letters, over and over. */
    private boolean isRepeated(String text) {
        var matcher = Pattern.compile("(.+?)\\1+").matcher(text);
        return matcher.matches() && (matcher.group(1).length() < 5 || list.contains(matcher.group(1)));
    }
}
