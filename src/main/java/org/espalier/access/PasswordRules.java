package org.espalier.access;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.security.authentication.password.CompromisedPasswordChecker;
import org.springframework.stereotype.Component;

/** What a password must be: long, and not the one that everybody tries. No rule on kinds of signs, no expiry. */
@Component
class PasswordRules {

    static final int LEAST_CHARACTERS = 12;

    /** The hash looks at no more. */
    static final int MOST_BYTES = 72;

    private static final int SHORTEST_NAME = 4;

    private final CompromisedPasswordChecker common;

    PasswordRules(CompromisedPasswordChecker common) {
        this.common = common;
    }

    /** Why the password is not good enough; empty when it is. */
    Optional<PasswordProblem> problem(String password, String login, String name) {
        if (password.codePointCount(0, password.length()) < LEAST_CHARACTERS) {
            return Optional.of(PasswordProblem.TOO_SHORT);
        }
        if (password.getBytes(StandardCharsets.UTF_8).length > MOST_BYTES) {
            return Optional.of(PasswordProblem.TOO_LONG);
        }
        if (common.check(password).isCompromised()) {
            return Optional.of(PasswordProblem.COMMON);
        }
        return holdsName(password.toLowerCase(Locale.ROOT), login, name)
                ? Optional.of(PasswordProblem.OWN_NAME)
                : Optional.empty();
    }

    private static boolean holdsName(String password, String login, String name) {
        return Stream.concat(
                        Stream.of(login, "espalier"),
                        Arrays.stream(name.toLowerCase(Locale.ROOT).split("\\P{L}+")))
                .filter(word -> word.length() >= SHORTEST_NAME)
                .anyMatch(password::contains);
    }
}
