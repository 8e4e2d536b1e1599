package org.espalier.stock.code;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Codes as labels carry them. The GS1 examples use the number range that GS1 keeps for examples (from memory). */
class ScannedCodeTests {

    private static final LocalDate TODAY = LocalDate.of(2026, 1, 15);

    @ParameterizedTest
    @ValueSource(
            strings = {
                "(01)09506000134352(17)290228(10)AB-12(21)7",
                "(01) 09506000134352 (17) 290200 (10) AB-12 (21) 7",
                "]d20109506000134352172902001\u0030AB-12\u001D217",
                "]C101095060001343521729022810AB-12\u001D217",
                "]Q301095060001343521729022810AB-12\u001D217\u001D",
                "\u001D01095060001343521729022810AB-12\u001D217\r\n",
                "01095060001343521729022810AB-12^217",
                "01095060001343521729022810AB-12|217",
            })
    void readsTheSameLabelHoweverItComes(String text) {
        var code = read(text);
        assertThat(code.issuer()).isEqualTo(ReadCode.Issuer.GS1);
        assertThat(code.product()).contains("09506000134352");
        assertThat(code.expiry()).contains(LocalDate.of(2029, 2, 28));
        assertThat(code.lot()).contains("AB-12");
        assertThat(code.serial()).contains("7");
        assertThat(code.alone()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        // check digits of a GTIN-8, -12, -13 and -14 (from memory: the shapes of General Specifications, 7.9.1)
        "95060118, 00000095060118",
        "614141007349, 00614141007349",
        "9506000134352, 09506000134352",
        "09506000134352, 09506000134352",
        "]E09506000134352, 09506000134352",
    })
    void readsAnArticleNumberThatStandsAlone(String text, String gtin) {
        assertThat(read(text).product()).contains(gtin);
    }

    @Test
    void takesDayNoughtAsTheLastOfItsMonth() {
        assertThat(read("(17)280200").expiry()).contains(LocalDate.of(2028, 2, 29));
        assertThat(read("(17)270200").expiry()).contains(LocalDate.of(2027, 2, 28));
        assertThat(read("(17)760131").expiry()).contains(LocalDate.of(2076, 1, 31));
        assertThat(read("(17)770131").expiry()).contains(LocalDate.of(1977, 1, 31));
    }

    @Test
    void joinsTwoCodesOfOneLabel() {
        var lot = read("(17)290228(10)AB-12");
        assertThat(lot.alone()).extracting(ReadCode.Part::identifier).containsExactly("17", "10");
        assertThat(lot.joined(read("(01)09506000134352"))).isInstanceOfSatisfying(ReadCode.class, both -> {
            assertThat(both.product()).contains("09506000134352");
            assertThat(both.lot()).contains("AB-12");
            assertThat(both.alone()).isEmpty();
        });
        assertThat(problem(lot.joined(read("(10)AB-13")))).isEqualTo(CodeProblem.SAID_TWICE);
        assertThat(problem(lot.joined(read("+A99912349B")))).isEqualTo(CodeProblem.NOT_OF_ONE_LABEL);
    }

    /** Examples of ANSI/HIBC 2.6 (the standard's text was not at hand: as quoted by others and from memory). */
    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "+A123BJC5D6E71G, A123BJC5D6E71, -, -, -, -, -",
                "*+A123BJC5D6E71G*, A123BJC5D6E71, -, -, -, -, -",
                "+A99912349/$10X3/16D20111231/14D20200131/Q500Z, A99912349, 10X3, 2020-01-31, -, 2011-12-31, 500",
                "+A99912345/$$52025010X3/16D20111212/S77DEFG458, A99912345, 10X3, 2020-09-06, 77DEFG45, 2011-12-12, -",
                "+A99912345/$$812710X3/16D20111212/14D20200906/S77DEFG453, A99912345, 10X3, 2020-09-06, 77DEFG45,"
                        + " 2011-12-12, 12",
                "+A99912345/$$902345710X3/16D20111212/14D20200906/S77DEFG45F, A99912345, 10X3, 2020-09-06, 77DEFG45,"
                        + " 2011-12-12, 2345",
                "+J123AQ3451/25330BC34567/S4012X, J123AQ3451, BC34567, 2025-11-26, 4012, -, -",
                "+A123ABCDEFGHI1234567891/$$420020216LOT123456789012345/SXYZ456789012345678/16D20130202$,"
                        + " A123ABCDEFGHI1234567891, LOT123456789012345, 2020-02-02, XYZ456789012345678, 2013-02-02, -",
            })
    void readsPrintedExamplesOfHibc(
            String text,
            String product,
            String lot,
            LocalDate expiry,
            String serial,
            LocalDate produced,
            Integer count) {
        var code = read(text);
        assertThat(code.issuer()).isEqualTo(ReadCode.Issuer.HIBC);
        assertThat(code.product()).isEqualTo(Optional.ofNullable(product));
        assertThat(code.lot()).isEqualTo(Optional.ofNullable(lot));
        assertThat(code.expiry()).isEqualTo(Optional.ofNullable(expiry));
        assertThat(code.serial()).isEqualTo(Optional.ofNullable(serial));
        assertThat(code.produced()).isEqualTo(Optional.ofNullable(produced));
        assertThat(code.quantity()).isEqualTo(Optional.ofNullable(count));
    }

    @Test
    void linksTheSecondaryCodeOfHibcToItsPrimary() {
        var primary = read("+A123BJC5D6E71G");
        var secondary = read("+$$52001510X3GD");
        assertThat(secondary.expiry()).contains(LocalDate.of(2020, 1, 15));
        assertThat(secondary.lot()).contains("10X3");
        assertThat(secondary.link()).contains('G');
        assertThat(primary.joined(secondary)).isInstanceOfSatisfying(ReadCode.class, both -> {
            assertThat(both.product()).contains("A123BJC5D6E71");
            assertThat(both.lot()).contains("10X3");
        });
        assertThat(read("+$$+52001510X3GB").serial()).contains("10X3");
        assertThat(read("+2001510X3GG").lot()).contains("10X3");
        assertThat(problem(read("+A99912349B").joined(secondary))).isEqualTo(CodeProblem.NOT_OF_ONE_LABEL);
    }

    @ParameterizedTest
    @CsvSource({
        "0928, 2028-09-30",
        "2093028, 2028-09-30",
        "3280930, 2028-09-30",
        "428093014, 2028-09-30",
        "528274, 2028-09-30",
        "62827414, 2028-09-30"
    })
    void readsEveryFormOfADateOfHibc(String form, LocalDate day) {
        var body = "+$$" + form + "LOT7G";
        var code = read(body + CheckDigits.modulo43(body));
        assertThat(code.expiry()).contains(day);
        assertThat(code.lot()).contains("LOT7");
    }

    @ParameterizedTest
    @CsvSource({
        "'', EMPTY",
        "'  ', EMPTY",
        "ABC, NEITHER",
        "http://example.org/x, NEITHER",
        "(01)09506000134352(05)1, TOO_LONG",
        "010950600013435205X, UNKNOWN_IDENTIFIER",
        "(10), NOTHING_AFTER",
        "(17)2902, TOO_SHORT",
        "(10)ABCDEFGHIJKLMNOPQRSTU, TOO_LONG",
        "(17)29O228, WRONG_CHARACTER",
        "(01)09506000134353, WRONG_CHECK_DIGIT",
        "9506000134353, WRONG_CHECK_DIGIT",
        "(17)290230, NO_SUCH_DATE",
        "(17)291300, NO_SUCH_DATE",
        "(7003)2902282460, NO_SUCH_TIME",
        "(422)999, NOT_IN_LIST",
        "(8006)095060001343520201, NOT_ALLOWED",
        "(01)09506000134352(37)5, NOT_TOGETHER",
        "(01)09506000134352(10)A(10)B, SAID_TWICE",
        "+A123BJC5D6E71H, WRONG_CHECK_CHARACTER",
        "+A1_3, WRONG_CHARACTER",
        "+A, TOO_SHORT",
    })
    void saysWhatIsWrongWithACode(String text, CodeProblem problem) {
        assertThat(problem(ScannedCode.parse(text, TODAY))).isEqualTo(problem);
    }

    @ParameterizedTest
    @CsvSource({
        "+AB, NO_LABELLER",
        "+A123BJC5D6E7X, NO_LABELLER",
        "+A99912349/?, WRONG_CHARACTER",
        "+A99912349/X1, NO_SECONDARY_FORM",
        "+$$3281332LOT, NO_SUCH_DATE",
        "+$$1328LOTG, NO_SUCH_DATE",
        "+A99912349/14D20200230, NO_SUCH_DATE",
        "+$ABCDEFGHIJKLMNOPQRSTUG, TOO_LONG",
    })
    void saysWhatIsWrongWithAnHibcCodeWhoseCheckCharacterFits(String body, CodeProblem problem) {
        var text = CheckDigits.isOfSet43(body) ? body + CheckDigits.modulo43(body) : body;
        assertThat(problem(ScannedCode.parse(text, TODAY))).isEqualTo(problem);
    }

    @Test
    void explainsEveryProblemByWhatToDo() {
        var explained = Arrays.stream(CodeProblem.values())
                .map(problem -> new UnreadCode(problem, "(17) USE BY or EXPIRY", "291300").explained())
                .collect(Collectors.toSet());
        assertThat(explained).hasSize(CodeProblem.values().length).allSatisfy(text -> assertThat(text.split("[.:] "))
                .as("what is wrong, then what to do")
                .hasSizeGreaterThan(1));
        assertThat(((UnreadCode) ScannedCode.parse("(17)291300", TODAY)).explained())
                .isEqualTo(
                        "There is no such date: 291300 in (17) USE BY or EXPIRY. Compare with the date printed on the"
                                + " label.");
    }

    @Test
    void noticesEveryWrongDigitOfAGtin() {
        var gtin = "09506000134352";
        for (int at = 0; at < gtin.length(); at++) {
            for (char digit = '0'; digit <= '9'; digit++) {
                var text = gtin.substring(0, at) + digit + gtin.substring(at + 1);
                assertThat(ScannedCode.parse("(01)" + text, TODAY) instanceof ReadCode)
                        .isEqualTo(text.equals(gtin));
            }
        }
    }

    private static ReadCode read(String text) {
        var code = ScannedCode.parse(text, TODAY);
        assertThat(code).as(text).isInstanceOf(ReadCode.class);
        return (ReadCode) code;
    }

    private static CodeProblem problem(ScannedCode code) {
        assertThat(code).isInstanceOf(UnreadCode.class);
        return ((UnreadCode) code).problem();
    }
}
