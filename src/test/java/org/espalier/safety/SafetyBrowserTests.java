package org.espalier.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.espalier.Browser.button;

import com.microsoft.playwright.Locator;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;
import org.espalier.Browser;
import org.espalier.Browser.Person;
import org.espalier.Browser.Screen;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.access.SiteService;
import org.espalier.film.TestDoor.Sender;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.patient.ChildData;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.platform.Ids;
import org.espalier.reading.TestReader;
import org.espalier.science.quantity.Sex;
import org.espalier.stock.Lot;
import org.espalier.stock.TestStock;
import org.espalier.stock.TestStock.Stocked;
import org.espalier.treatment.ImplantFinding;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/**
 * A safety notice over two hospitals from its start by a storekeeper, who meets no name, until both surgeons have told
 * everybody in their care; and a broken screw, from the film to the report that leaves the hospital.
 */
@IntegrationTest
class SafetyBrowserTests {

    private static final LocalDate FAR = LocalDate.of(2036, 1, 31);
    private static final String CERTAIN = "Lerchensporn";
    private static final String FORMER = "Wiesenraute";
    private static final String POSSIBLE = "Mauerpfeffer";
    private static final String[] NAMES = {CERTAIN, FORMER, POSSIBLE};

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
    SiteService sites;

    @Autowired
    SafetyService safety;

    @Autowired
    Ids ids;

    Sender here;
    Sender there;
    Stocked stockHere;
    Stocked stockThere;

    @BeforeEach
    void twoHospitals() {
        here = reader.surgeon();
        there = reader.surgeon();
        stockHere = stocks.empty(here.site());
        stockThere = stocks.empty(there.site());
    }

    @Test
    void aNoticeGoesFromItsStartUntilAllAreTold() {
        var lot = stocks.arrive(stockHere, stockHere.plate(), stockHere.store(), "NOTICE-1", FAR, 4);
        stocks.arrive(stockThere, stockHere.plate(), stockThere.tray(), "NOTICE-1", FAR, 2);
        stocks.arrive(stockThere, stockHere.plate(), stockThere.tray(), "OTHER-1", FAR, 2);
        test.plate(here.staff(), child(here, CERTAIN), stockHere.store(), stockHere.plate(), Optional.of(lot.id()));
        var former = test.plate(
                here.staff(), child(here, FORMER), stockHere.store(), stockHere.plate(), Optional.of(lot.id()));
        test.explant(here.staff(), here.site(), stockHere.plate(), lot, former);
        test.plate(there.staff(), child(there, POSSIBLE), stockThere.tray(), stockHere.plate(), Optional.empty());
        var notice = keeperHoldsTheLot(lot);
        surgeonTells(notice);
        colleagueTellsTheLast(notice);
        assertThat(here.does(() -> safety.notice(notice)).orElseThrow().isOpen())
                .isFalse();
    }

    private UUID keeperHoldsTheLot(Lot lot) {
        try (var keeper = Browser.person(port, Screen.DESKTOP, NAMES)) {
            signIn(keeper, stockHere.keeper());
            keeper.open(Urls.stockLot(lot.id().value()));
            keeper.page().getByText(Texts.text("stock.to-safety")).click();
            keeper.settle();
            press(keeper, "safety.open");
            assertThat(keeper.page().content()).contains(Texts.text("safety.source.missing"));
            keeper.page().getByLabel(Texts.text("safety.source")).fill("Invented maker, notice 12");
            keeper.page().getByLabel(Texts.text("safety.why")).fill("Heads may break.");
            keeper.picture("safety-open-desktop");
            press(keeper, "safety.open");
            keeper.page().getByText(Texts.text("safety.open-now")).waitFor();
            keeper.picture("safety-notice-keeper-desktop").assertAccessible().assertFits();
            assertThat(row(keeper, name(here)).allInnerTexts())
                    .as("two of the store, and the one that was taken out")
                    .containsExactly("3", "0", "1", "0", "1", "1");
            assertThat(row(keeper, name(there)).allInnerTexts())
                    .as("the whole mixed slot")
                    .containsExactly("3", "0", "0", "1", "0", "1");
            press(keeper, "safety.close");
            assertThat(keeper.page().content())
                    .contains(Texts.text("safety.not-all-told"))
                    .doesNotContain(NAMES);
        }
        return here.does(() -> safety.all()).stream()
                .filter(one -> one.lot().equals(lot.id()))
                .findFirst()
                .orElseThrow()
                .id();
    }

    private void surgeonTells(UUID notice) {
        try (var person = Browser.person(port, Screen.PHONE, POSSIBLE)) {
            signIn(person, here.staff());
            person.open(Urls.safetyNotice(notice));
            named(person, CERTAIN).waitFor();
            named(person, FORMER).waitFor();
            assertThat(person.page().content()).contains(Texts.text("safety.for-information"));
            person.picture("safety-notice-surgeon-phone").assertAccessible().assertFits();
            press(person, "safety.told");
            assertThat(person.page().content()).contains(Texts.text("safety.how.missing"));
            person.page().getByLabel(Texts.text("safety.how")).fill("by phone, comes on Monday");
            press(person, "safety.told");
            person.page()
                    .getByText(Pattern.compile("by phone, comes on Monday"))
                    .waitFor();
            assertThat(person.page().content())
                    .as("one is to be told elsewhere")
                    .contains(Texts.text("safety.open-now"));
        }
    }

    private void colleagueTellsTheLast(UUID notice) {
        try (var person = Browser.person(port, Screen.DESKTOP, CERTAIN, FORMER)) {
            signIn(person, there.staff());
            person.open(Urls.safetyNotice(notice));
            named(person, POSSIBLE).waitFor();
            assertThat(person.page().content()).contains(Texts.of(Carrier.Certainty.POSSIBLE));
            person.picture("safety-notice-colleague-desktop").assertAccessible().assertFits();
            person.page().getByLabel(Texts.text("safety.how")).fill("in clinic");
            press(person, "safety.told");
            person.page().getByText(Pattern.compile("^closed")).first().waitFor();
            person.picture("safety-notice-closed-desktop");
        }
    }

    @Test
    void aPrivacyOfficerHasNoNoticeToSee() {
        var officer = network.staff(here.site().value(), "PRIVACY_OFFICER");
        try (var person = Browser.person(port, Screen.DESKTOP)) {
            signIn(person, officer);
            assertThat(person.page().locator("a[href='" + Urls.SAFETY + "']").count())
                    .isZero();
            person.open(Urls.SAFETY);
            assertThat(person.page().content()).doesNotContain(Texts.text("safety.notices"));
        }
    }

    @Test
    void aBrokenScrewBecomesAReportWithItsLotAndNoName() {
        var child = child(here, CERTAIN);
        stocks.arrive(stockHere, stockHere.screw(), stockHere.tray(), "SCREW-1", FAR, 4);
        stocks.arrive(stockHere, stockHere.screw(), stockHere.tray(), "SCREW-2", FAR, 4);
        var plated = test.plate(here.staff(), child, stockHere.tray(), stockHere.screw(), Optional.empty());
        test.breaks(here.staff(), child, plated.implant(), ImplantFinding.Part.METAPHYSEAL_SCREW);
        try (var person = Browser.person(port, Screen.PHONE)) {
            signIn(person, here.staff());
            person.open(Urls.SAFETY_INCIDENTS);
            person.picture("safety-incidents-phone").assertAccessible().assertFits();
            named(person, CERTAIN).click();
            person.settle();
            var what = person.page().getByLabel(Texts.text("safety.what"));
            what.fill("The screw of " + CERTAIN + " broke below its head.");
            press(person, "safety.report");
            assertThat(person.page().content()).contains(Texts.text("safety.what.named"));
            what.fill("Broken below its head, the rest left in place.");
            person.picture("safety-incident-form-phone").assertAccessible().assertFits();
            press(person, "safety.report");
            person.page()
                    .getByText("Broken below its head, the rest left in place.")
                    .waitFor();
            person.picture("safety-incident-phone").assertAccessible().assertFits();
            person.page().getByText(Texts.text("safety.to-the-report")).click();
            person.page().getByText(Pattern.compile("^Report ")).first().waitFor();
            person.settle();
            assertThat(person.page().content())
                    .contains(Texts.text("safety.one-of", "SCREW-1, SCREW-2"), "Broken below its head")
                    .doesNotContain(CERTAIN);
            person.picture("safety-report-phone").assertAccessible().assertFits();
            person.open(Urls.SAFETY_INCIDENTS);
            assertThat(person.page().content()).contains(Texts.text("safety.unreported.none"));
        }
    }

    /** The numbers of a hospital. */
    private static Locator row(Person person, String hospital) {
        return person.page()
                .locator("tr")
                .filter(new Locator.FilterOptions().setHasText(hospital))
                .locator("td:not(:first-child)");
    }

    private String name(Sender surgeon) {
        return surgeon.does(() -> sites.get(surgeon.site())).name();
    }

    private static Locator named(Person person, String name) {
        return person.page()
                .getByText(Pattern.compile(name, Pattern.CASE_INSENSITIVE))
                .first();
    }

    private ChildId child(Sender surgeon, String name) {
        var child = new ChildId(ids.next());
        var data = new ChildData(name, "Invented", LocalDate.of(2016, 5, 20), Sex.FEMALE, "SN-" + ids.next());
        surgeon.does(() -> patients.register(surgeon.site(), child, data));
        return child;
    }

    private void signIn(Person person, UUID staff) {
        person.signIn(network, staff);
    }

    private static void press(Person person, String key) {
        button(person.page(), Texts.text(key)).click();
        person.settle();
    }
}
