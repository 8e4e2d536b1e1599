package org.espalier.today;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.espalier.Browser;
import org.espalier.Browser.Screen;
import org.espalier.IntegrationTest;
import org.espalier.OnEachScreen;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.patient.Bone;
import org.espalier.patient.BoneEnd;
import org.espalier.patient.ChildData;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.platform.Drafts;
import org.espalier.platform.Ids;
import org.espalier.reading.TestReader;
import org.espalier.science.quantity.Sex;
import org.espalier.science.quantity.Side;
import org.espalier.treatment.Act;
import org.espalier.treatment.ImplantId;
import org.espalier.treatment.NextLook;
import org.espalier.treatment.PhysisKey;
import org.espalier.treatment.PlateSide;
import org.espalier.treatment.ProcedureData;
import org.espalier.treatment.ProcedureId;
import org.espalier.treatment.ProcedureKind;
import org.espalier.treatment.TreatmentService;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

@IntegrationTest
class TodayBrowserTests {

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    PatientService patients;

    @Autowired
    Drafts drafts;

    @Autowired
    TestReader reader;

    @Autowired
    TreatmentService treatments;

    @Autowired
    SiteService sites;

    @Autowired
    Ids ids;

    SiteId site;
    UUID surgeon;

    @BeforeEach
    void aHospital() {
        site = new SiteId(network.site());
        surgeon = network.staff(site.value(), "SURGEON");
    }

    @OnEachScreen
    void opensFirstAndLeadsToWhatWaits(Screen screen) {
        try (var person = Browser.person(port, screen)) {
            var page = person.page();
            person.signIn(network, surgeon);
            assertThat(page.getByText("Nothing waits for you here")).isVisible();
            person.picture("today-empty-" + screen).assertAccessible().assertFits();

            var child = child("Wolfeschlegelsteinhausenbergerdorff-Featherstonehaugh", "Maximiliane Theodora");
            film(child, "READY", LocalDate.of(2026, 9, 1));
            film(child("Moss", "Ida"), "READY", LocalDate.of(2025, 11, 3));
            film(null, "RECEIVED", null);
            film(null, "KEPT_ASIDE", null);
            network.as(surgeon, () -> drafts.start("child-edit", child.value(), "{\"givenName\": \"Begun\"}"));
            person.open("");
            assertThat(page.getByText("Films to read (2)")).isVisible();
            assertThat(page.getByText("Films in the tray (2)")).isVisible();
            assertThat(page.getByText("What you began (1)")).isVisible();
            person.picture("today-" + screen).assertAccessible().assertFits();
            page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("who the child is"))
                    .click();
            assertThat(page.getByLabel("Given name")).hasValue("Begun");
            person.open("child/" + child.value() + "/visits")
                    .picture("banner-long-name-" + screen)
                    .assertFits();
        }
    }

    @OnEachScreen
    void namesThePlateNearItsTarget(Screen screen) {
        var sender = reader.surgeon();
        var today = sender.does(() -> sites.today(sender.site()));
        var child = reader.child(sender, today.minusYears(8));
        reader.signed(sender, reader.film(sender, child, today.minusMonths(13)), 0);
        var plate = Act.of(
                ProcedureKind.PLATE_PLACED,
                new PhysisKey(Side.RIGHT, Bone.TIBIA, BoneEnd.PROXIMAL),
                PlateSide.LATERAL,
                new ImplantId(ids.next()),
                "plate, 2 screws",
                3);
        var placed =
                new ProcedureData(today.minusMonths(12), true, null, null, List.of(plate), new NextLook(today, "film"));
        sender.does(() -> treatments.record(child, new ProcedureId(ids.next()), placed));
        reader.signed(sender, reader.film(sender, child, today.minusMonths(6)), 7.9);
        reader.signed(sender, reader.film(sender, child, today.minusDays(1)), 14);
        try (var person = Browser.person(port, screen)) {
            person.signIn(network, sender.staff());
            assertThat(person.page().getByText("Near target, nothing asked for (1)"))
                    .isVisible();
            assertThat(person.page().getByText("Right proximal tibia: ")).isVisible();
            assertThat(person.page().getByText("target about ")).isVisible();
            assertThat(person.page().getByText("missing: a date for the next look"))
                    .isVisible();
            person.picture("today-near-target-" + screen).assertAccessible().assertFits();
        }
    }

    @Test
    void hasAPlainWordForThoseWhoTreatNobody() {
        var storekeeper = network.staff(site.value(), "STOREKEEPER");
        try (var person = Browser.person(port, Screen.DESKTOP)) {
            person.signIn(network, storekeeper);
            assertThat(person.page().getByText("Films and children stand here for those who treat them"))
                    .isVisible();
            person.assertAccessible();
        }
    }

    private ChildId child(String family, String given) {
        var id = new ChildId(ids.next());
        var data = new ChildData(family, given, LocalDate.of(2019, 7, 14), Sex.FEMALE, null);
        network.as(surgeon, () -> patients.register(site, id, data));
        return id;
    }

    private void film(@Nullable ChildId child, String state, @Nullable LocalDate takenOn) {
        TodayFilms.add(network, ids, site, child, state, takenOn);
    }
}
