package org.espalier.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.YearMonth;
import org.espalier.kit.Who;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A report with a child's name in it is stopped; the words of the trade are not. */
class NamelessTests {

    private static final Who CHILD =
            new Who.Named("Lerchen-Sporn", "Rosa Invented", LocalDate.of(2016, 5, 20), null, "SN-77");

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Lerchen-Sporn: head broken.",
                "The screw of LERCHEN-SPORN broke",
                "seen in Invented, Rosa",
                "number SN-77."
            })
    void noticesANameOrANumber(String text) {
        assertThat(Nameless.isNamed(CHILD, text)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "The head of the screw broke off.", "Rosa light on the film", "SN-778", "Sporn of bone"})
    void letsOtherWordsPass(String text) {
        assertThat(Nameless.isNamed(CHILD, text)).isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"L. R.", "Lerchen-Sporn"})
    void knowsNoNameOfAChildItKnowsByInitials(String text) {
        assertThat(Nameless.isNamed(new Who.Initialled("L. R.", YearMonth.of(2016, 5), null), text))
                .isFalse();
    }
}
