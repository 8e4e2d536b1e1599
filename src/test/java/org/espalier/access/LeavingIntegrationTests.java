package org.espalier.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.TestScreens;
import org.espalier.TestSession;
import org.espalier.film.TestDoor.Sender;
import org.espalier.reading.ReadingService;
import org.espalier.reading.TestReader;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Somebody leaves: access ends at once, in sessions that run too; their words stay, with their name. */
@IntegrationTest
class LeavingIntegrationTests {

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    TestReader reader;

    @Autowired
    ReadingService readings;

    @Autowired
    StaffService staff;

    @Autowired
    JdbcClient jdbc;

    Sender surgeon;

    @BeforeEach
    void aSurgeon() {
        network.owner().sql("delete from sign_in_throttle").update();
        surgeon = reader.surgeon();
    }

    private void leaves(UUID who) {
        network.as(network.operator(), () -> {
            staff.shutOut(new StaffId(who));
            return who;
        });
    }

    @Test
    void endsWhatASessionThatRunsMayDoAtItsNextQuestion() {
        var password = network.password(surgeon.staff());
        var session = new TestSession(port).signIn(network.login(surgeon.staff()), password);
        var screens = new TestScreens(session);
        assertThat(screens.open("children")).doesNotContain("There is no such page here");
        leaves(surgeon.staff());
        assertThat(session.get("recall").statusCode()).isEqualTo(302);
        assertThat(session.get("api/films/none").statusCode()).isEqualTo(401);
        var again = new TestSession(port).trySignIn(network.login(surgeon.staff()), password);
        assertThat(again.headers().firstValue("Location").orElse("")).endsWith("?error");
        network.as(network.operator(), () -> {
            staff.letIn(new StaffId(surgeon.staff()));
            return surgeon;
        });
        assertThat(session.get("recall").statusCode()).isEqualTo(302);
    }

    @Test
    void seesNoRowOfTheHospitalAnyMoreInTheDatabase() {
        reader.child(surgeon, LocalDate.of(2018, 3, 4));
        leaves(surgeon.staff());
        for (var table : new String[] {"child", "child_identity", "limb", "visit"}) {
            assertThat(network.as(surgeon.staff(), () -> jdbc.sql("select count(*) from " + table)
                            .query(Long.class)
                            .single()))
                    .as(table)
                    .isZero();
        }
    }

    @Test
    void leavesTheirSignedReadingUnderTheirName() {
        var child = reader.child(surgeon, LocalDate.of(2018, 3, 4));
        var film = reader.film(surgeon, child, LocalDate.of(2025, 5, 20));
        reader.signed(surgeon, film);
        var colleague = network.staff(surgeon.site().value(), "SURGEON");
        var before = network.as(colleague, () -> readings.ofFilm(film));
        leaves(surgeon.staff());
        assertThat(network.as(colleague, () -> readings.ofFilm(film)))
                .isEqualTo(before)
                .hasSize(1);
    }
}
