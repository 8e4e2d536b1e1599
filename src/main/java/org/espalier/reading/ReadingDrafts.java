package org.espalier.reading;

import java.util.Optional;
import org.espalier.film.FilmId;
import org.espalier.platform.Draft;
import org.espalier.platform.Drafts;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/** The drafts of readings among all drafts: one a reader and film. */
@Component
class ReadingDrafts {

    private static final String KIND = "reading";

    private final Drafts drafts;
    private final JsonMapper json;

    ReadingDrafts(Drafts drafts, JsonMapper json) {
        this.drafts = drafts;
        this.json = json;
    }

    Optional<ReadingDraft> find(FilmId film) {
        return drafts.find(KIND, film.value()).map(this::reading);
    }

    Optional<ReadingDraft> byId(ReadingId id) {
        return drafts.byId(id.value())
                .filter(draft -> draft.kind().equals(KIND))
                .map(this::reading);
    }

    ReadingDraft begin(FilmId film, ReadingSettings settings, Marks marks, @Nullable ReadingId supersedes) {
        var content = new DraftContent(settings, marks, 1, supersedes == null ? null : supersedes.value());
        return reading(drafts.start(KIND, film.value(), json.writeValueAsString(content)));
    }

    /** Keeps the marks as the next revision; empty when they were changed elsewhere since the revision they build on. */
    Optional<ReadingDraft> saveMarks(ReadingDraft draft, long basedOn, Marks marks) {
        return basedOn < draft.marksRevision() ? Optional.empty() : save(draft.withMarks(marks));
    }

    /** Keeps the settings as the next revision; empty when the draft has just been changed elsewhere. */
    Optional<ReadingDraft> saveSettings(ReadingDraft draft, ReadingSettings settings) {
        return save(draft.withSettings(settings));
    }

    void discard(ReadingDraft draft) {
        drafts.discard(draft.id().value());
    }

    private Optional<ReadingDraft> save(ReadingDraft next) {
        var content = json.writeValueAsString(DraftContent.of(next));
        return drafts.save(next.id().value(), next.revision(), content) ? Optional.of(next) : Optional.empty();
    }

    private ReadingDraft reading(Draft draft) {
        var content = json.readValue(draft.content(), DraftContent.class);
        return new ReadingDraft(
                new ReadingId(draft.id()),
                new FilmId(draft.subject()),
                draft.revision(),
                draft.startedAt(),
                content.settings(),
                content.marks(),
                content.marksRevision(),
                Optional.ofNullable(content.supersedes()).map(ReadingId::new));
    }
}
