package org.espalier.stock.code;

import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Locale.IsoCountryCode;
import java.util.Map;
import java.util.Set;

/** The lists of others that element strings refer to. */
final class CodeLists {

    private static final Map<String, Set<String>> LISTS = read();
    private static final Set<String> COUNTRY_LETTERS = Locale.getISOCountries(IsoCountryCode.PART1_ALPHA2);

    private CodeLists() {}

    static boolean isCountry(String digits) {
        return has("country", digits);
    }

    static boolean isCountryLetters(String letters) {
        return COUNTRY_LETTERS.contains(letters);
    }

    static boolean isCurrency(String digits) {
        return has("currency", digits);
    }

    static boolean isPackage(String code) {
        return has("package", code);
    }

    private static boolean has(String list, String code) {
        return LISTS.getOrDefault(list, Set.of()).contains(code);
    }

    private static Map<String, Set<String>> read() {
        var lists = new HashMap<String, Set<String>>();
        for (var line : SyntaxDictionary.lines("code-lists.txt")) {
            var words = line.split(" ");
            lists.computeIfAbsent(words[0], name -> new HashSet<>())
                    .addAll(Arrays.asList(words).subList(1, words.length));
        }
        return lists;
    }
}
