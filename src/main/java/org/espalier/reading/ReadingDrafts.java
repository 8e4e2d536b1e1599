package org.espalier.reading;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.espalier.film.FilmId;
import org.espalier.platform.Draft;
import org.espalier.platform.Drafts;
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

    /** A reading of a film from nothing. */
    ReadingDraft begin(FilmId film) {
        return begin(film, new DraftContent(ReadingSettings.ofFilm(), Marks.NONE, 1, null, null));
    }

    /** A reading from what a signed one holds, to supersede it. */
    ReadingDraft beginFrom(Reading signed, Marks marks) {
        var second = signed.secondOf().map(ReadingId::value).orElse(null);
        return begin(
                signed.film(),
                new DraftContent(signed.settings(), marks, 1, signed.id().value(), second));
    }

    /** A reading of the limbs that another has read, from nothing. */
    ReadingDraft beginSecond(Reading first) {
        var settings = ReadingSettings.ofFilm().withLimbs(first.limbs());
        return begin(
                first.film(),
                new DraftContent(settings, Marks.NONE, 1, null, first.id().value()));
    }

    /** Films of which the caller is in the middle of a blind second reading. */
    Set<FilmId> blind() {
        return drafts.mine(KIND).stream()
                .map(this::reading)
                .filter(ReadingDraft::isBlind)
                .map(ReadingDraft::film)
                .collect(Collectors.toSet());
    }

    private ReadingDraft begin(FilmId film, DraftContent content) {
        return reading(drafts.start(KIND, film.value(), json.writeValueAsString(content)));
    }

    /**
     * Keeps the marks as the next revision; empty when they were changed elsewhere since the revision they build on.
     */
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
        var content = DraftContent.of(draft.content(), json);
        return new ReadingDraft(
                new ReadingId(draft.id()),
                new FilmId(draft.subject()),
                draft.revision(),
                draft.startedAt(),
                content.settings(),
                content.marks(),
                content.marksRevision(),
                Optional.ofNullable(content.supersedes()).map(ReadingId::new),
                Optional.ofNullable(content.secondOf()).map(ReadingId::new));
    }
}
