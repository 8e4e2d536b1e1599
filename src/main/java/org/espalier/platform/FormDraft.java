package org.espalier.platform;

import java.util.Optional;
import java.util.UUID;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** What is being typed into one form, kept at every change so that nothing typed is lost. */
public final class FormDraft<T> {

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
    public FormDraft(Drafts drafts, String kind, UUID subject, Class<T> type) {
        this.drafts = drafts;
        this.kind = kind;
        this.subject = subject;
        this.type = type;
        kept = drafts.find(kind, subject);
    }

    /** What was typed so far. */
    public Optional<T> typed() {
        return kept.map(draft -> read(draft, type));
    }

    /** Whether it is kept; not when the same form is being filled in another window. */
    public boolean keep(T typed) {
        var json = JSON.writeValueAsString(typed);
        var draft = kept.orElseGet(() -> drafts.start(kind, subject, json));
        boolean saved = drafts.save(draft.id(), draft.revision() + 1, json);
        if (saved) {
            kept = drafts.byId(draft.id());
        }
        return saved;
    }

    /** Forgets what was typed, once it is saved or given up. */
    public void discard() {
        kept.ifPresent(draft -> drafts.discard(draft.id()));
        kept = Optional.empty();
    }

    /** What a draft of a form holds. */
    public static <T> T read(Draft draft, Class<T> type) {
        return JSON.readValue(draft.content(), type);
    }
}
