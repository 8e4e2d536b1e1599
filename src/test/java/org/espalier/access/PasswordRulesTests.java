package org.espalier.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PasswordRulesTests {

    PasswordRules rules;

    @BeforeEach
    void theCommonOnesThatAreShipped() throws IOException {
        rules = new PasswordRules(new CommonPasswords());
    }

    private java.util.Optional<PasswordProblem> problem(String password) {
        return rules.problem(password, "woakhollow", "Wendeline Oakhollow");
    }

    @Test
    void takeAnyTwelveSignsOfAnyComposition() {
        assertThat(problem("mossy gate a")).isEmpty();
        assertThat(problem("mossy gate")).hasValue(PasswordProblem.TOO_SHORT);
        assertThat(problem("gåte мох 苔の門門門")).isEmpty();
    }

    @Test
    void takeSixtyFourSignsAndRefuseWhatWouldBeCut() {
        assertThat(problem("mossy gate ".repeat(6))).isEmpty();
        assertThat(problem("mossy gate ".repeat(7))).hasValue(PasswordProblem.TOO_LONG);
    }

    @ParameterizedTest
    @ValueSource(strings = {"password1234", "Password1234", "123456789012"})
    void refuseCommonOnesAndTheirCores(String common) {
        assertThat(problem(common)).hasValue(PasswordProblem.COMMON);
    }

    @ParameterizedTest
    @ValueSource(strings = {"mossy woakhollow", "Oakhollow gate mossy", "the espalier gate"})
    void refuseTheOwnNameAndThatOfTheProgram(String known) {
        assertThat(problem(known)).hasValue(PasswordProblem.OWN_NAME);
    }
}
