package org.espalier.opinion.ui;

import java.util.Optional;
import java.util.UUID;
import org.espalier.platform.Draft;
import org.espalier.platform.Drafts;
import tools.jackson.databind.json.JsonMapper;

/** Keeps a question in the making at every change, so that nothing of it is lost. */
final class AskDraft {

    private static final String KIND = "opinion";
    private static final JsonMapper JSON = new JsonMapper();

    private final Drafts drafts;
    private final UUID child;
    private Optional<Draft> kept;

    AskDraft(Drafts drafts, UUID child) {
        this.drafts = drafts;
        this.child = child;
        kept = drafts.find(KIND, child);
    }

    TypedAsk typed() {
        return kept.map(draft -> JSON.readValue(draft.content(), TypedAsk.class))
                .orElseGet(() -> TypedAsk.begun(UUID.randomUUID()));
    }

    void keep(TypedAsk typed) {
        var json = JSON.writeValueAsString(typed);
        var draft = kept.orElseGet(() -> drafts.start(KIND, child, json));
        drafts.save(draft.id(), draft.revision() + 1, json);
        kept = drafts.byId(draft.id());
    }

    void discard() {
        kept.ifPresent(draft -> drafts.discard(draft.id()));
    }
}
