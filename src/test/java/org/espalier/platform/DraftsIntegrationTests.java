package org.espalier.platform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.sql.SQLException;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@IntegrationTest
class DraftsIntegrationTests {

    private static final String KIND = "test-form";

    @Autowired
    Drafts drafts;

    @Autowired
    TestNetwork network;

    UUID site;
    UUID nurse;
    UUID subject;

    @BeforeEach
    void people() {
        site = network.site();
        nurse = network.staff(site, "NURSE");
        subject = UUID.randomUUID();
    }

    @Test
    void givesBackWhatWasSavedLast() {
        var started = start("A");
        assertThat(save(started, 2, "B")).isTrue();
        var draft = network.as(nurse, () -> drafts.find(KIND, subject)).orElseThrow();
        assertThat(draft.id()).isEqualTo(started.id());
        assertThat(draft.revision()).isEqualTo(2);
        assertThat(draft.content()).isEqualTo(json("B"));
    }

    @Test
    void goesOnWithTheDraftThereIs() {
        var first = start("A");
        assertThat(start("other")).isEqualTo(first);
    }

    @Test
    void refusesOlderAndRepeatedRevisions() {
        var draft = start("first");
        assertThat(save(draft, 5, "newest")).isTrue();
        assertThat(save(draft, 4, "late")).isFalse();
        assertThat(save(draft, 5, "again")).isFalse();
        assertThat(network.as(nurse, () -> drafts.byId(draft.id()))
                        .orElseThrow()
                        .content())
                .isEqualTo(json("newest"));
    }

    @Test
    void keepsTheDraftOfOneFromAnotherAtTheSameSite() {
        var mine = start("mine");
        var colleague = network.staff(site, "NURSE");
        assertThat(network.as(colleague, () -> drafts.byId(mine.id()))).isEmpty();
        assertThat(network.as(colleague, () -> drafts.mine(KIND))).isEmpty();
        assertThat(network.as(colleague, () -> drafts.save(mine.id(), 2, json("theirs"))))
                .isFalse();
        discard(colleague, mine);
        assertThat(network.as(nurse, () -> drafts.mine(KIND))).containsExactly(mine);
    }

    @Test
    void forgetsADiscardedDraftAndKeepsNothingThatArrivesLater() {
        var draft = start("gone");
        discard(nurse, draft);
        assertThat(save(draft, 2, "late")).isFalse();
        assertThat(network.as(nurse, () -> drafts.find(KIND, subject))).isEmpty();
    }

    @Test
    void refusesToWorkForNobody() {
        assertThatThrownBy(() -> drafts.mine(KIND))
                .rootCause()
                .isInstanceOfSatisfying(
                        SQLException.class, e -> assertThat(e.getSQLState()).isEqualTo("ES001"));
    }

    private Draft start(String text) {
        return network.as(nurse, () -> drafts.start(KIND, subject, json(text)));
    }

    private boolean save(Draft draft, long revision, String text) {
        return network.as(nurse, () -> drafts.save(draft.id(), revision, json(text)));
    }

    private void discard(UUID staff, Draft draft) {
        network.as(staff, () -> {
            drafts.discard(draft.id());
            return draft;
        });
    }

    private static String json(String text) {
        return "{\"text\": \"" + text + "\"}";
    }
}
