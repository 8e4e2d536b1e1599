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
        save(1, "A");
        save(2, "B");
        var draft = network.as(nurse, () -> drafts.find(KIND, subject)).orElseThrow();
        assertThat(draft.revision()).isEqualTo(2);
        assertThat(draft.content()).isEqualTo("{\"text\": \"B\"}");
    }

    @Test
    void refusesOlderAndRepeatedRevisions() {
        assertThat(save(5, "newest")).isTrue();
        assertThat(save(4, "late")).isFalse();
        assertThat(save(5, "again")).isFalse();
        assertThat(network.as(nurse, () -> drafts.find(KIND, subject))
                        .orElseThrow()
                        .content())
                .contains("newest");
    }

    @Test
    void keepsTheDraftOfOneFromAnotherAtTheSameSite() {
        save(1, "mine");
        var colleague = network.staff(site, "NURSE");
        assertThat(network.as(colleague, () -> drafts.find(KIND, subject))).isEmpty();
        assertThat(network.as(colleague, () -> drafts.mine(KIND))).isEmpty();
        network.as(colleague, () -> {
            drafts.discard(KIND, subject);
            return subject;
        });
        assertThat(network.as(nurse, () -> drafts.mine(KIND))).hasSize(1);
    }

    @Test
    void forgetsADiscardedDraft() {
        save(1, "gone");
        network.as(nurse, () -> {
            drafts.discard(KIND, subject);
            return subject;
        });
        assertThat(network.as(nurse, () -> drafts.find(KIND, subject))).isEmpty();
    }

    @Test
    void refusesToWorkForNobody() {
        assertThatThrownBy(() -> drafts.mine(KIND))
                .rootCause()
                .isInstanceOfSatisfying(
                        SQLException.class, e -> assertThat(e.getSQLState()).isEqualTo("ES001"));
    }

    private boolean save(long revision, String text) {
        return network.as(nurse, () -> drafts.save(KIND, subject, revision, "{\"text\": \"" + text + "\"}"));
    }
}
