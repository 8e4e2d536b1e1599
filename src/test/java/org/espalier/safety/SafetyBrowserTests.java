package org.espalier.safety;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.espalier.Browser;
import org.espalier.Browser.Person;
import org.espalier.Browser.Screen;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.film.TestDoor.Sender;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.patient.ChildData;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.platform.Ids;
import org.espalier.reading.TestReader;
import org.espalier.science.quantity.Sex;
import org.espalier.stock.TestStock;
import org.espalier.treatment.ImplantFinding;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** A safety notice from its start by a storekeeper, who meets no name, until the surgeon has told everybody. */
@IntegrationTest
class SafetyBrowserTests {

    private static final LocalDate FAR = LocalDate.of(2036, 1, 31);
    private static final String NAME = "Lerchensporn";

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    TestStock stocks;

    @Autowired
    TestSafety test;

    @Autowired
    TestReader reader;

    @Autowired
    PatientService patients;

    @Autowired
    SafetyService safety;

    @Autowired
    Ids ids;

    @Test
    void fromTheStartUntilAllAreTold() {
        var surgeon = reader.surgeon();
        var stocked = stocks.empty(surgeon.site());
        var lot = stocks.arrive(stocked, stocked.plate(), stocked.store(), "NOTICE-1", FAR, 4);
        var child = child(surgeon);
        var plated = test.plate(surgeon.staff(), child, stocked.store(), stocked.plate(), Optional.of(lot.id()));
        try (var keeper = Browser.person(port, Screen.DESKTOP, NAME)) {
            signIn(keeper, stocked.keeper());
            keeper.open(Urls.stockLot(lot.id().value()));
            keeper.page().getByText(Texts.text("stock.to-safety")).click();
            keeper.settle();
            keeper.page().getByLabel(Texts.text("safety.source")).fill("Invented maker, notice 12");
            keeper.page().getByLabel(Texts.text("safety.why")).fill("Heads may break.");
            keeper.picture("safety-open-desktop");
            press(keeper, "safety.open");
            keeper.page().getByText(Texts.text("safety.open-now")).waitFor();
            keeper.picture("safety-notice-keeper-desktop").assertAccessible().assertFits();
            assertThat(keeper.page().content()).doesNotContain(NAME);
        }
        var notice = surgeon.does(() -> safety.all()).stream()
                .filter(one -> one.lot().equals(lot.id()))
                .findFirst()
                .orElseThrow();
        try (var person = Browser.person(port, Screen.PHONE)) {
            signIn(person, surgeon.staff());
            person.open(Urls.safetyNotice(notice.id()));
            person.page()
                    .getByText(java.util.regex.Pattern.compile(NAME, java.util.regex.Pattern.CASE_INSENSITIVE))
                    .waitFor();
            person.picture("safety-notice-surgeon-phone").assertAccessible().assertFits();
            person.page().getByLabel(Texts.text("safety.how")).fill("by phone, comes on Monday");
            press(person, "safety.told");
            person.page()
                    .getByText(java.util.regex.Pattern.compile("^closed"))
                    .first()
                    .waitFor();
            person.picture("safety-notice-closed-phone");
            test.breaks(surgeon.staff(), child, plated.implant(), ImplantFinding.Part.BODY);
            person.open(Urls.incidents(child.value()));
            person.page().getByLabel(Texts.text("safety.what")).fill("Broken at the upper hole.");
            press(person, "safety.report");
            person.page().getByText("Broken at the upper hole.").waitFor();
            assertThat(person.page().content()).contains("NOTICE-1");
            person.picture("safety-incident-phone").assertAccessible().assertFits();
        }
        assertThat(surgeon.does(() -> safety.notice(notice.id())).orElseThrow().isOpen())
                .isFalse();
    }

    private ChildId child(Sender surgeon) {
        var child = new ChildId(ids.next());
        var data = new ChildData(NAME, "Invented", LocalDate.of(2016, 5, 20), Sex.FEMALE, "SN-" + ids.next());
        surgeon.does(() -> patients.register(surgeon.site(), child, data));
        return child;
    }

    private void signIn(Person person, UUID staff) {
        person.signIn(network.login(staff), network.password(staff));
    }

    private static void press(Person person, String key) {
        person.page()
                .getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(Texts.text(key)).setExact(true))
                .click();
        person.settle();
    }
}
