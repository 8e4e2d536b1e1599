package org.espalier.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.espalier.Browser;
import org.espalier.Browser.Screen;
import org.espalier.IntegrationTest;
import org.espalier.OnEachScreen;
import org.espalier.PseudoLanguage;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildData;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.platform.Ids;
import org.espalier.science.quantity.Sex;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/**
 * Screens read in a language of brackets that runs from right to left: every word on them comes from a bundle, and they
 * fit.
 */
@IntegrationTest
class PseudoLanguageBrowserTests {

    private static final String DATA = "Bracketed|BRACKETED|Beatrix|Test person|Test hospital|BR-1";

    /**
     * Text that is seen or read aloud: what stands between tags, and labels; the framework's own sign of the connection
     * and sources that a table quotes apart.
     */
    private static final String WORDS = """
            () => {
                const words = [];
                const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
                for (let node = walk.nextNode(); node; node = walk.nextNode()) {
                    const parent = node.parentElement;
                    const seen = parent &&
                        !parent.closest('script, style, template, [hidden], td[lang=en]') &&
                        !parent.closest('vaadin-connection-indicator') &&
                        parent.checkVisibility();
                    if (seen && node.textContent.trim()) {
                        words.push(node.textContent.trim());
                    }
                }
                document.querySelectorAll('[aria-label]').forEach(one => words.push(one.getAttribute('aria-label')));
                return words;
            }""";

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    PatientService patients;

    @Autowired
    Ids ids;

    @OnEachScreen
    void findsNoWordOutsideABundleAndRunsFromRightToLeft(Screen screen) {
        var site = new SiteId(network.site());
        var surgeon = network.staff(site.value(), "SURGEON");
        var child = register(site, surgeon);
        try (var person = Browser.reading(port, screen, PseudoLanguage.CODE).signIn(network, surgeon)) {
            for (var path : List.of(
                    "",
                    "children",
                    "recall",
                    "limits",
                    "bookings",
                    "rates",
                    "bring-in",
                    "child/" + child + "/visits",
                    "child/" + child + "/treatment",
                    "child/" + child + "/prognosis")) {
                person.open(path);
                person.settle();
                var name = path.replace(child.toString(), "").replace('/', '-');
                person.picture("pseudo-" + name + "-" + screen);
                assertThat(person.page().evaluate("document.documentElement.dir"))
                        .isEqualTo("rtl");
                assertThat(outside(person.page().evaluate(WORDS))).as(path).isEmpty();
                person.assertFits();
            }
        }
    }

    private static List<String> outside(Object words) {
        return ((List<?>) words)
                .stream()
                        .map(String::valueOf)
                        .filter(text -> !text.contains(PseudoLanguage.OPEN))
                        .filter(text -> text.replaceAll(DATA, "").matches("(?s).*\\p{IsLatin}{3,}.*"))
                        .toList();
    }

    private UUID register(SiteId site, UUID surgeon) {
        var child = new ChildId(ids.next());
        var data = new ChildData("Bracketed", "Beatrix", LocalDate.of(2019, 7, 14), Sex.FEMALE, "BR-1");
        network.as(surgeon, () -> patients.register(site, child, data));
        return child.value();
    }
}
