package org.espalier.interchange;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.espalier.Browser.button;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.UUID;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.espalier.Browser;
import org.espalier.Browser.Person;
import org.espalier.Browser.Screen;
import org.espalier.IntegrationTest;
import org.espalier.OnEachScreen;
import org.espalier.TestNetwork;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

@IntegrationTest
class BringInBrowserTests {

    private static final String GOOD = """
            local_number,family_name,given_name,birth_date,sex
            1,Quay,Invented,2014-03-02,female
            2,Reed,Invented,2016-08-09,male
            """;

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    TestClinic clinic;

    @Autowired
    ClinicExport export;

    @TempDir
    Path folder;

    private TestClinic.Hospital hospital;
    private UUID nurse;

    @BeforeEach
    void openHospital() {
        hospital = clinic.empty();
        nurse = network.staff(hospital.site().value(), "NURSE");
    }

    @OnEachScreen
    void looksIsToldWhatToMendMendsAndTakes(Screen screen) {
        try (var person = signedIn(screen)) {
            var page = person.page();
            person.open("bring-in");
            person.settle().picture("bring-in-" + screen).assertAccessible().assertFits();
            send(page, table("children.csv", GOOD + "3,Alder,,2.3.2017,male\n"), table("examinations.csv", """
                    local_number,date,kind,entry,item,side,value
                    1,2024-01-08,body size,1,height_cm,,141.5
                    9,2024-01-08,body size,1,height_cm,,99
                    """));
            assertThat(page.getByText("There: children.csv, examinations.csv")).isVisible();
            button(page, "Look what it would do").click();
            assertThat(page.getByRole(AriaRole.STATUS)).containsText("2 things are to be mended first");
            var problems = page.getByRole(AriaRole.GROUP, new Page.GetByRoleOptions().setName("What is to be mended"));
            assertThat(problems).containsText("\"2.3.2017\" is not a date. Write it as in 2019-07-14.");
            assertThat(problems).containsText("no child that was taken or is on record has the number \"9\"");
            assertThat(button(page, "Take it")).isDisabled();
            person.settle().picture("bring-in-bad-" + screen).assertAccessible().assertFits();

            send(page, table("children.csv", GOOD + "9,Alder,,2017-03-02,male\n"));
            button(page, "Look what it would do").click();
            assertThat(page.getByRole(AriaRole.STATUS)).containsText("All rows can be taken");
            button(page, "Take it").click();
            assertThat(page.getByRole(AriaRole.STATUS)).containsText("Taken. No row was bad.");
            assertThat(page.locator("ol.before")).containsText("children.csv: 3 new, 0 known, 0 changed, 0 bad");
            person.settle()
                    .picture("bring-in-taken-" + screen)
                    .assertAccessible()
                    .assertFits();

            button(page, "Look what it would do").click();
            assertThat(page.getByRole(AriaRole.STATUS)).containsText("All of it is on record already");
            person.open("children");
            assertThat(page.getByText("QUAY")).isVisible();
        }
    }

    @Test
    void takesThePackedRecordsOfAnotherHospital() throws IOException {
        export.write(clinic.rich().site(), folder);
        try (var person = signedIn(Screen.DESKTOP)) {
            var page = person.page();
            person.open("bring-in");
            send(page, new FilePayload("records.zip", "application/zip", packed()));
            assertThat(page.getByText("visits.csv, care.csv, families.csv, phones.csv; 2 film files"))
                    .isVisible();
            button(page, "Look what it would do").click();
            assertThat(page.getByRole(AriaRole.STATUS)).containsText("All rows can be taken");
            button(page, "Take it").click();
            assertThat(page.getByRole(AriaRole.STATUS)).containsText("Taken. No row was bad.");
            person.settle().picture("bring-in-packed").assertAccessible().assertFits();
        }
    }

    @Test
    void takesTheGoodRowsOnlyWhenTheyAreAskedFor() {
        try (var person = signedIn(Screen.DESKTOP)) {
            var page = person.page();
            person.open("bring-in");
            send(page, table("children.csv", GOOD + "3,,,2017-03-02,male\n"));
            page.getByLabel("Take the good rows although others are bad").check();
            button(page, "Look what it would do").click();
            assertThat(page.getByRole(AriaRole.STATUS)).containsText("the rest can be taken");
            button(page, "Take it").click();
            assertThat(page.getByRole(AriaRole.STATUS)).containsText("One thing was bad and stayed out");
        }
    }

    private byte[] packed() throws IOException {
        var packed = new ByteArrayOutputStream();
        try (var zip = new ZipOutputStream(packed);
                var files = Files.walk(folder)) {
            for (var file : files.filter(Files::isRegularFile).toList()) {
                zip.putNextEntry(new ZipEntry("records/" + folder.relativize(file)));
                Files.copy(file, zip);
            }
        }
        return packed.toByteArray();
    }

    private static FilePayload table(String name, String text) {
        return new FilePayload(name, "text/csv", text.getBytes(StandardCharsets.UTF_8));
    }

    private static void send(Page page, FilePayload... files) {
        page.locator("vaadin-upload input[type=file]").setInputFiles(files);
    }

    private Person signedIn(Screen screen) {
        return Browser.person(port, screen).signIn(network, nurse);
    }
}
