package org.espalier.patient.ui;

import java.util.Optional;
import java.util.UUID;
import org.espalier.platform.Draft;
import org.espalier.platform.Drafts;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** What is being typed into one form, kept at every change so that nothing typed is lost. */
final class FormDraft<T> {

    private static final JsonMapper JSON = JsonMapper.builder()
            .disable(
                    DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES,
                    DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .build();

    private final Drafts drafts;
    private final String kind;
    private final UUID subject;
    private final Class<T> type;
    private Optional<Draft> kept;

    /**
     * @param kind which form
     * @param subject what the form is about
     * @param type what is typed, a record of texts
     */
    FormDraft(Drafts drafts, String kind, UUID subject, Class<T> type) {
        this.drafts = drafts;
        this.kind = kind;
        this.subject = subject;
        this.type = type;
        kept = drafts.find(kind, subject);
    }

    Optional<Draft> kept() {
        return kept;
    }

    Optional<T> typed() {
        return kept.map(draft -> read(draft, type));
    }

    /** Whether it is kept; not when the same form is being filled in another window. */
    boolean keep(T typed) {
        var json = JSON.writeValueAsString(typed);
        var draft = kept.orElseGet(() -> drafts.start(kind, subject, json));
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

    static <T> T read(Draft draft, Class<T> type) {
        return JSON.readValue(draft.content(), type);
    }
}
