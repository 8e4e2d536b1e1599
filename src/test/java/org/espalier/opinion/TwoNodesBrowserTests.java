package org.espalier.opinion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.espalier.Browser.button;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.espalier.Browser;
import org.espalier.Browser.Person;
import org.espalier.Browser.Screen;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.film.TestDoor.Sender;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.platform.Ids;
import org.espalier.platform.SecondNode;
import org.espalier.reading.TestReader;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Two people on two nodes over one database: live to each other, and nothing lost when a node dies. */
@IntegrationTest
class TwoNodesBrowserTests {

    private static final int MESSAGES = 5;

    @LocalServerPort
    int port;

    @Autowired
    SecondNode.Starter nodes;

    @Autowired
    TestNetwork network;

    @Autowired
    TestReader reader;

    @Autowired
    TestOpinion world;

    @Autowired
    OpinionService opinions;

    @Autowired
    Ids ids;

    private void enter(Person person, Sender who, ThreadId thread) {
        person.signIn(network, who.staff());
        person.open(Urls.opinion(thread.value()));
        person.page().locator("opinion-film[data-tiles=settled]").waitFor();
    }

    private static void say(Person person, String what) {
        person.page()
                .getByLabel(Texts.text("opinion.message"), new Page.GetByLabelOptions().setExact(true))
                .fill(what);
        person.settle();
        button(person.page(), Texts.text("opinion.say")).click();
        person.settle();
    }

    @Test
    void aMessageIsOnTheOtherNodeWithinASecondAndADeadNodeLosesNothing() throws IOException {
        var asker = reader.surgeon();
        var colleague = reader.surgeon();
        var child = reader.child(asker, LocalDate.of(2018, 3, 14));
        var film = reader.film(asker, child, LocalDate.of(2024, 3, 14));
        var thread = world.asked(asker, child, List.of(film), colleague);
        try (var node = nodes.start();
                var here = Browser.person(port, Screen.DESKTOP);
                var there = Browser.person(node.port(), Screen.DESKTOP)) {
            enter(here, asker, thread);
            enter(there, colleague, thread);
            var taken = new ArrayList<Long>();
            for (int i = 1; i <= MESSAGES; i++) {
                taken.add(millisecondsUntilSeen(there, asker, thread, "Message number " + i));
            }
            taken.sort(null);
            assertThat(taken.get(MESSAGES / 2))
                    .as("milliseconds until seen on the other node, of %s", taken)
                    .isLessThan(1000);

            say(there, "Said just before the power went.");
            here.page().getByText("Said just before the power went.").waitFor();
            there.page()
                    .getByLabel(Texts.text("opinion.message"), new Page.GetByLabelOptions().setExact(true))
                    .fill("Half a thought");
            there.page().waitForTimeout(900);
            there.settle();
            node.kill();
            asker.does(() -> opinions.say(thread, ids.next(), "Said meanwhile.", Optional.empty()));
        }
        try (var again = Browser.person(port, Screen.DESKTOP)) {
            enter(again, colleague, thread);
            again.page().getByText("Said just before the power went.").waitFor();
            again.page().getByText("Said meanwhile.").waitFor();
            assertThat(again.page()
                            .getByLabel(Texts.text("opinion.message"), new Page.GetByLabelOptions().setExact(true))
                            .inputValue())
                    .isEqualTo("Half a thought");
        }
    }

    /** From the commit on this node until the text stands on the page of the other. */
    private long millisecondsUntilSeen(Person there, Sender asker, ThreadId thread, String what) {
        asker.does(() -> opinions.say(thread, ids.next(), what, Optional.empty()));
        long said = System.nanoTime();
        there.page().getByText(what).waitFor();
        return (System.nanoTime() - said) / 1_000_000;
    }
}
