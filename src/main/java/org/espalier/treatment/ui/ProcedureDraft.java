package org.espalier.treatment.ui;

import java.util.Optional;
import java.util.UUID;
import org.espalier.platform.Draft;
import org.espalier.platform.Drafts;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** The procedure that is being typed, kept at every change so that nothing typed is lost. */
final class ProcedureDraft {

    private static final String KIND = "procedure";
    private static final JsonMapper JSON = JsonMapper.builder()
            .disable(
                    DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES,
                    DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .build();

    private final Drafts drafts;
    private final UUID subject;
    private Optional<Draft> kept;

    /** @param subject the child; of a correction the procedure that is corrected */
    ProcedureDraft(Drafts drafts, UUID subject) {
        this.drafts = drafts;
        this.subject = subject;
        kept = drafts.find(KIND, subject);
    }

    Optional<TypedProcedure> typed() {
        return kept.map(draft -> JSON.readValue(draft.content(), TypedProcedure.class));
    }

    /** Whether it is kept; not when the same form is being filled in another window. */
    boolean keep(TypedProcedure typed) {
        var json = JSON.writeValueAsString(typed);
        var draft = kept.orElseGet(() -> drafts.start(KIND, subject, json));
        boolean saved = drafts.save(draft.id(), draft.revision() + 1, json);
        if (saved) {
            kept = drafts.byId(draft.id());
        }
        return saved;
    }

    void discard() {
        kept.ifPresent(draft -> drafts.discard(draft.id()));
        kept = Optional.empty();
    }
}
