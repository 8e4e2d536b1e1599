package org.espalier;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.espalier.Browser.Person;
import org.espalier.Browser.Screen;
import org.espalier.stock.TestStock;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/**
 * Who keeps the stock or counts the cost works in the hospital of a child without ever meeting who the child is: from
 * the menu they follow every link, and no answer of the server holds the name or the number.
 */
@IntegrationTest
class NamelessRolesBrowserTests {

    private static final int MOST_PAGES = 60;
    private static final String[] CANARIES = Stream.of(
                    TestWorld.CHILD.familyName(), TestWorld.CHILD.givenName(), TestWorld.CHILD.localNumber())
            .map(String::valueOf)
            .toArray(String[]::new);

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    TestWorld world;

    @Autowired
    TestStock stock;

    @ParameterizedTest
    @CsvSource({"STOREKEEPER, 12, stock/move", "COST_ADMINISTRATOR, 6, stock/products"})
    void neverMeetsAName(String role, int pages, String among) {
        var hospital = world.hospital();
        stock.empty(hospital.site());
        var staff = network.staff(hospital.site().value(), role);
        try (var person = Browser.person(port, Screen.DESKTOP, CANARIES)) {
            person.signIn(network, staff);
            var seen = walk(person);
            assertThat(seen).hasSizeGreaterThanOrEqualTo(pages).anyMatch(page -> page.startsWith(among));
        }
    }

    /** Follows links from the first page on; one page of each kind and three more of it. */
    private static Set<String> walk(Person person) {
        var seen = new LinkedHashSet<String>();
        var waiting = new ArrayDeque<>(List.of(""));
        while (!waiting.isEmpty() && seen.size() < MOST_PAGES) {
            var next = waiting.removeFirst();
            if (seen.stream().filter(one -> kind(one).equals(kind(next))).count() < 4 && seen.add(next)) {
                var file = next.startsWith("api/");
                var text = file ? file(person, next) : person.open(next).page().content();
                assertThat(text.toLowerCase(Locale.ROOT))
                        .as("page %s", next)
                        .doesNotContain(Stream.of(CANARIES)
                                .map(word -> word.toLowerCase(Locale.ROOT))
                                .toArray(String[]::new));
                if (!file) {
                    waiting.addAll(links(person));
                }
            }
        }
        return seen;
    }

    /** What a link to a file gives, without leaving the page. */
    private static String file(Person person, String address) {
        return String.valueOf(person.page().evaluate("""
                        async to => {
                            const got = await fetch('/' + to);
                            if (!got.ok) throw new Error(`${to} answers ${got.status}`);
                            return got.text();
                        }
                        """, address));
    }

    private static String kind(String page) {
        return page.replaceAll("\\?.*", "").replaceAll("[0-9a-f-]{36}", "x");
    }

    /** Where the page leads inside the house, but not out of the session. */
    private static List<String> links(Person person) {
        var found = (List<?>) person.page().evaluate("""
                () => [...document.querySelectorAll('a[href]')].map(link => new URL(link.href))
                    .filter(to => to.origin === location.origin)
                    .map(to => to.pathname.slice(1) + to.search)
                """);
        return found.stream()
                .map(String::valueOf)
                .filter(page -> !page.startsWith("logout"))
                .distinct()
                .toList();
    }
}
