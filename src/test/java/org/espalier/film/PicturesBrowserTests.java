package org.espalier.film;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.espalier.Browser.button;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import java.time.LocalDate;
import java.util.Base64;
import org.espalier.Browser;
import org.espalier.Browser.Screen;
import org.espalier.IntegrationTest;
import org.espalier.OnEachScreen;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildData;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.platform.Ids;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

@IntegrationTest
class PicturesBrowserTests {

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    PatientService patients;

    @Autowired
    Ids ids;

    @OnEachScreen
    void keepsAndPlaysAClipThatABrowserRecorded(Screen screen) {
        var site = network.site();
        var surgeon = network.staff(site, "SURGEON");
        var child = new ChildId(ids.next());
        var data = new ChildData("Walking", "Wanda", LocalDate.of(2019, 7, 14), null, null);
        network.as(surgeon, () -> patients.register(new SiteId(site), child, data));
        try (var person = Browser.person(port, screen).signIn(network, surgeon)) {
            var page = person.page();
            person.open("child/" + child.value() + "/examination");
            var clip = Base64.getDecoder().decode((String) page.evaluate(TestPictures.RECORD));
            var part = part(page);
            button(part, "Add a photo or clip").click();
            assertThat(part.locator("vaadin-upload")).isHidden();
            person.choose(part.getByLabel("Who agreed today that it is kept"), "A parent");
            assertThat(button(part, "Choose a photo or clip")).isVisible();
            person.settle();
            bring(part, new FilePayload("page.webm", "video/webm", TestPictures.text("<script>alert(1)</script>")));
            assertThat(part.getByText("This is neither a photo")).isVisible();
            person.settle().picture("pictures-refused-" + screen).assertAccessible();
            person.settle();
            bring(part, new FilePayload("walk.webm", "video/webm", clip));
            assertThat(part.getByText("Kept.")).isVisible();
            assertThat(part.getByText("A parent agreed on")).isVisible();
            page.waitForFunction("() => document.querySelector('video')?.readyState >= 1");
            assertThat((Integer) page.evaluate("() => document.querySelector('video').videoHeight"))
                    .isEqualTo(240);
            bring(part, new FilePayload("legs.png", "image/png", TestPictures.photo(300, 400, "png")));
            page.waitForFunction("() => document.querySelector('ul.pictures img')?.naturalWidth === 300");
            part.scrollIntoViewIfNeeded();
            person.settle().picture("pictures-" + screen).assertAccessible().assertFits();
            button(part, "Show it no more").first().click();
            var dialog = page.getByRole(AriaRole.DIALOG);
            dialog.getByLabel("Why").fill("consent taken back");
            button(dialog, "Show it no more").click();
            assertThat(part.getByText("No longer shown: consent taken back")).isVisible();
        }
    }

    private static void bring(Locator part, FilePayload file) {
        part.locator("vaadin-upload input[type=file]").setInputFiles(file);
    }

    private static Locator part(Page page) {
        return page.locator("section.sheet")
                .filter(new Locator.FilterOptions()
                        .setHas(page.getByRole(
                                AriaRole.HEADING, new Page.GetByRoleOptions().setName("Photo and gait clip"))));
    }
}
