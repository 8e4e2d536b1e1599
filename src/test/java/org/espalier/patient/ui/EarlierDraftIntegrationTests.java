package org.espalier.patient.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.TestScreens;
import org.espalier.TestSession;
import org.espalier.TestWorld;
import org.espalier.TestWorld.Hospital;
import org.espalier.platform.Drafts;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/**
 * A draft that an earlier version of a form left behind, whatever it lacks, never keeps the screen from being shown.
 */
@IntegrationTest
class EarlierDraftIntegrationTests {

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    TestWorld world;

    @Autowired
    Drafts drafts;

    Hospital hospital;
    UUID nurse;

    @BeforeEach
    void aChild() {
        hospital = world.hospital();
        nurse = network.staff(hospital.site().value(), "NURSE");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{}",
                "{\"fields\": {\"height\": \"141.3\"}}",
                "{\"fields\": {\"on\": null, \"kind\": \"NO_SUCH_KIND\", \"onset\": \"?\", \"later\": \"x\"}}"
            })
    void examinationIsShownWithDraftsThatLackWhatTheyShouldHold(String content) {
        for (var kind : new String[] {"diagnosis", "body-size", "bone-age"}) {
            network.as(nurse, () -> drafts.start(kind, hospital.child().value(), content));
        }
        var shown = screen("examination");
        assertThat(shown).contains(hospital.who().familyName().toUpperCase(java.util.Locale.ROOT));
        assertThat(shown.contains("141.3")).isEqualTo(content.contains("141.3"));
    }

    @Test
    void editIsShownWithADraftThatLacksWhatItShouldHold() {
        network.as(nurse, () -> drafts.start("child-edit", hospital.child().value(), "{}"));
        assertThat(screen("edit")).contains(hospital.who().familyName().toUpperCase(java.util.Locale.ROOT));
    }

    private String screen(String part) {
        var session = new TestSession(port).signIn(network.login(nurse), network.password(nurse));
        return new TestScreens(session).open("child/" + hospital.child().value() + "/" + part);
    }
}
