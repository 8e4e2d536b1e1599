package org.espalier.stock.code;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Every identifier of the GS1 Barcode Syntax Dictionary takes what its line there allows and refuses what it forbids.
 * The good and bad values of each rule are those of the published GS1 Barcode Syntax Tests (2024), as far as they name
 * some.
 */
class Gs1DictionaryTests {

    private static final LocalDate TODAY = LocalDate.of(2026, 1, 15);
    private static final Map<String, List<String>> GOOD = new HashMap<>();
    private static final Map<String, List<String>> BAD = new HashMap<>();

    static {
        rule(
                "csumalpha",
                "1987654Ad4X4bL5ttr2310c2K 12345678901234567890123NT 12345_ABCDEFGHIJKLMCP 99999zzzzzzzzzzzzzzzzzzT2",
                "1987654Ad4X4bL5ttr2310cXK 1987654Ad4X4bL5ttr2310c2X");
        rule("yymmdd", "200229 991231 000229", "210229 201301 200001 200431 200200");
        rule("yymmd0", "200229 200200 991231", "210229 201301 200001 200431");
        rule("yyyymmdd", "20200229 18991231", "20210229 20201301 20200400");
        rule("hhmi", "0000 2359", "2400 2360 9999");
        rule("hh", "00 23", "24 99");
        rule("mi", "00 59", "60 99");
        rule("ss", "00 59", "60 99");
        rule("iso3166", "004 276 894", "000 003 895 999");
        rule("iso3166999", "004 894 999", "000 003 895");
        rule("iso3166alpha2", "AD ZW DE", "AA ZZ");
        rule("iso4217", "008 978 999", "000 001 995");
        rule("iso5218", "0 1 2 9", "3 8");
        rule("mediatype", "01 10 80 99", "00 11 79");
        rule("packagetype", "1A 200 8 9 APE ZZ", "0 00 000 1A_");
        rule("yesno", "0 1", "2 9");
        rule("winding", "0 1 9", "2 8");
        rule("importeridx", "- 0 A Z _ a z", "! . /");
        rule("hyphen", "-", "_ A");
        rule("zero", "0", "1 9");
        rule("nozeroprefix", "0 1 123456789012", "01 00 0123");
        rule("hasnondigit", "1987654Ad4X4bL5ttr2310c2K", "");
        rule("pcenc", "abc ABC%20 %C3%A9", "ABC% %4 %GG");
        rule("latitude", "0000000000 1800000000", "1800000001 9999999999");
        rule("longitude", "0000000000 3600000000", "3600000001 9999999999");
        rule("pieceoftotal", "0101 0102 9999", "0000 0001 0100 0201");
        rule("posinseqslash", "1/1 1/3 9/9", "0/1 1/0 2/1 1// /11 9/8");
        rule(
                "iban",
                "GB82WEST12345698765432 DE89370400440532013000",
                "GB83WEST12345698765432 ZZ82WEST12345698765432 GB82");
        rule(
                "couponcode",
                "012345612345611110123",
                "01 0123456123456 712345678901 012345612345611115123 0123456123456111101231");
        rule(
                "couponposoffer",
                "001234561234560123456 101234561234560123456 061234567890121234569123456789012345",
                "201234561234560123456 0 00123456123456 0012345612345601234567");
    }

    private static void rule(String name, String good, String bad) {
        GOOD.put(name, List.of(good.split(" ")));
        BAD.put(
                name,
                Stream.of(bad.split(" ")).filter(value -> !value.isEmpty()).toList());
    }

    @Test
    void readsEveryIdentifierOfTheDictionary() {
        // counted in the file: 200 lines, of which the ranges 310n to 369n, 390n to 395n and 91 to 99 make more
        assertThat(SyntaxDictionary.GS1.all()).hasSizeGreaterThan(500);
        assertThat(SyntaxDictionary.GS1.all()).allSatisfy(one -> {
            assertThat(one.components()).as(one.digits()).isNotEmpty();
            assertThat(one.title()).as(one.digits()).isNotNull();
        });
        assertThat(SyntaxDictionary.GS1.find("17").orElseThrow().name()).isEqualTo("(17) USE BY or EXPIRY");
        assertThat(SyntaxDictionary.GS1.find("235").orElseThrow().predefinedLength())
                .isFalse();
        assertThat(SyntaxDictionary.GS1.find("3102").orElseThrow().predefinedLength())
                .isTrue();
    }

    @TestFactory
    Stream<DynamicTest> takesAndRefusesWhatTheLineOfEachIdentifierSays() {
        return SyntaxDictionary.lines("gs1-syntax-dictionary.txt").stream()
                .map(line ->
                        DynamicTest.dynamicTest(line.substring(0, Math.min(60, line.length())), () -> check(line)));
    }

    private static void check(String line) {
        var words = List.of(line.split(" # ")[0].trim().split("\\s+"));
        var digits = words.getFirst().split("-")[0];
        var components = words.stream()
                .skip(1)
                .filter(word -> word.matches("\\[?[NXYZ].*"))
                .toList();
        var values = components.stream().map(Gs1DictionaryTests::good).toList();
        assertThat(problem(digits, String.join("", values)))
                .as("all of %s", line)
                .isEmpty();
        assertThat(problem(digits, values.getFirst()))
                .as("without what may be missing")
                .matches(found ->
                        found.isEmpty() || components.stream().skip(1).anyMatch(word -> !word.startsWith("[")));
        assertThat(problem(digits, "")).isPresent();
        assertThat(problem(digits, "~")).isPresent();
        assertThat(problem(digits, longest(components)))
                .as("one too many in %s", line)
                .isPresent();
        for (int at = 0; at < components.size(); at++) {
            for (var bad : bad(components.get(at))) {
                var broken = new ArrayList<>(values);
                broken.set(at, bad);
                assertThat(problem(digits, String.join("", broken)))
                        .as("%s of %s", bad, line)
                        .isPresent();
            }
        }
    }

    private static Optional<UnreadCode> problem(String digits, String value) {
        return SyntaxDictionary.GS1.find(digits).orElseThrow().problem(value);
    }

    private static String longest(List<String> components) {
        return components.stream().map(word -> "0".repeat(size(word))).collect(Collectors.joining()) + "0";
    }

    private static String good(String word) {
        int size = size(word);
        var rule = rules(word).stream().filter(GOOD::containsKey).findFirst();
        if (rule.isPresent()) {
            return GOOD.getOrDefault(rule.get(), List.of()).stream()
                    .filter(value -> fits(word, value))
                    .findFirst()
                    .orElseThrow();
        }
        return rules(word).contains("nonzero") ? "0".repeat(size - 1) + "1" : "0".repeat(size);
    }

    private static List<String> bad(String word) {
        var bad = new TreeSet<String>();
        for (var rule : rules(word)) {
            BAD.getOrDefault(rule, List.of()).stream()
                    .filter(value -> fits(word, value))
                    .forEach(bad::add);
        }
        int size = size(word);
        if (rules(word).contains("csum")) {
            bad.add("0".repeat(size - 1) + "1");
        }
        if (rules(word).contains("nonzero")) {
            bad.add("0".repeat(size));
        }
        if (rules(word).contains("gcppos1") && !rules(word).contains("csum")) {
            bad.add("ABC4567");
        }
        if (word.contains("N")) {
            bad.add("A".repeat(size));
        }
        return List.copyOf(bad);
    }

    private static boolean fits(String word, String value) {
        return word.contains("..") ? value.length() <= size(word) : value.length() == size(word);
    }

    private static int size(String word) {
        return Integer.parseInt(word.split(",")[0].replaceAll("\\D", ""));
    }

    private static List<String> rules(String word) {
        return List.of(word.split(",")).subList(1, word.split(",").length);
    }

    @Test
    void knowsTheListsOfCountriesAndCurrenciesAsTheJavaPlatformDoes() {
        assertThat(SyntaxDictionary.lines("code-lists.txt").stream()
                        .filter(line -> line.startsWith("country"))
                        .mapToLong(line -> line.split(" ").length - 1)
                        .sum())
                .isEqualTo(Locale.getISOCountries().length);
        // the platform keeps currencies that are gone as well, and may lag behind by one that is new
        var platform = Currency.getAvailableCurrencies().stream()
                .map(Currency::getNumericCodeAsString)
                .collect(Collectors.toSet());
        var unknown = SyntaxDictionary.lines("code-lists.txt").stream()
                .filter(line -> line.startsWith("currency"))
                .flatMap(line -> Stream.of(line.split(" ")).skip(1))
                .filter(code -> !platform.contains(code))
                .toList();
        assertThat(unknown).hasSizeLessThan(3);
    }

    @Test
    void takesTheCenturyThatIsNear() {
        // General Specifications, 7.12: from the year of reading, 51 to 99 ahead is the last century, 50 to 99 back the
        // next
        assertThat(ShortDates.year(76, TODAY)).isEqualTo(2076);
        assertThat(ShortDates.year(77, TODAY)).isEqualTo(1977);
        assertThat(ShortDates.year(99, TODAY)).isEqualTo(1999);
        assertThat(ShortDates.year(0, TODAY)).isEqualTo(2000);
        assertThat(ShortDates.year(26, TODAY)).isEqualTo(2026);
        assertThat(ShortDates.year(20, LocalDate.of(2070, 1, 1))).isEqualTo(2120);
        assertThat(ShortDates.year(21, LocalDate.of(2070, 1, 1))).isEqualTo(2021);
    }
}
