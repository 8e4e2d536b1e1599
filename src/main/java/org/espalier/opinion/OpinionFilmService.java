package org.espalier.opinion;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.film.ClipCopies;
import org.espalier.film.FilmCopies;
import org.espalier.film.OpenFilm;
import org.espalier.kit.Texts;
import org.espalier.platform.Draft;
import org.espalier.platform.Drafts;
import org.espalier.platform.Ids;
import org.espalier.reading.BlindMeasure;
import org.espalier.reading.Marks;
import org.espalier.reading.MeasureAnswer;
import org.espalier.reading.MeasureOutcome;
import org.espalier.reading.MeasureRequest;
import org.espalier.science.alignment.Corner;
import org.espalier.science.quantity.Calibration;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.PlanePoint;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import tools.jackson.databind.json.JsonMapper;

/**
 * Copies of films in a thread: looked at, drawn on by each in a layer of their own, and read by each blind to the
 * others.
 */
@Service
@Transactional
public class OpinionFilmService {

    private static final String READING = "opinion-reading";

    private final JdbcThreadRepository threads;
    private final JdbcShownRepository shown;
    private final JdbcMarkRepository marks;
    private final FilmCopies copies;
    private final ClipCopies clips;
    private final Drafts drafts;
    private final JsonMapper json;
    private final Ids ids;
    private final Clock clock;

    OpinionFilmService(
            JdbcThreadRepository threads,
            JdbcShownRepository shown,
            JdbcMarkRepository marks,
            FilmCopies copies,
            ClipCopies clips,
            Drafts drafts,
            JsonMapper json,
            Ids ids,
            Clock clock) {
        this.threads = threads;
        this.shown = shown;
        this.marks = marks;
        this.copies = copies;
        this.clips = clips;
        this.drafts = drafts;
        this.json = json;
        this.ids = ids;
        this.clock = clock;
    }

    /** What is kept of a blind reading in the making. */
    private record Kept(UUID thread, Marks marks) {}

    /** Opens a copy; empty when there is none for the caller. */
    public Optional<OpenFilm> open(ThreadId thread, UUID film) {
        return look(thread, film)
                .flatMap(copy -> threads.find(thread).map(found -> copies.open(film, found.site(), copy.copy())));
    }

    /** The copy's own file. */
    public Optional<byte[]> file(ThreadId thread, UUID film) {
        return look(thread, film).map(copy -> {
            try (var bytes = copies.file(copy.copy())) {
                return bytes.readAllBytes();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    /** A clip to be played; empty when there is none for the caller. */
    public Optional<OpenClip> clip(ThreadId thread, UUID clip) {
        return shown.clips(thread).stream()
                .filter(one -> one.id().equals(clip))
                .findFirst()
                .filter(one -> threads.look(ids.next(), thread, Optional.of(clip), now()))
                .map(one ->
                        new OpenClip(clips.file(one.copy()), one.copy().kind().mediaType()));
    }

    /** What each person drew on a copy. */
    public List<Layer> layers(ThreadId thread, UUID film) {
        return look(thread, film)
                .map(copy -> marks.layers(thread, film).stream()
                        .map(kept -> layer(kept, calibration(copy)))
                        .toList())
                .orElse(List.of());
    }

    /** Keeps the caller's own layer as it is now; what it was before stays in the record. */
    public List<Layer> draw(ThreadId thread, UUID film, List<Drawing> drawings) {
        if (drawings.size() > Drawing.MOST) {
            throw new IllegalArgumentException("A layer holds at most " + Drawing.MOST + " things");
        }
        if (threads.find(thread).filter(OpinionThread::mayWrite).isEmpty()
                || shown.film(thread, film).isEmpty()) {
            return List.of();
        }
        marks.keep(ids.next(), thread, film, drawings, now());
        return layers(thread, film);
    }

    /** The caller's blind reading of a copy in the making, begun if need be; empty once it is signed. */
    public Optional<BlindDraft> read(ThreadId thread, UUID film) {
        boolean mayRead = threads.find(thread).filter(OpinionThread::mayWrite).isPresent()
                && shown.film(thread, film).filter(copy -> !copy.photo()).isPresent();
        boolean done = marks.readings(thread, film).stream().anyMatch(BlindReading::mine);
        if (!mayRead || done || look(thread, film).isEmpty()) {
            return Optional.empty();
        }
        var draft = drafts.start(READING, film, json.writeValueAsString(new Kept(thread.value(), Marks.NONE)));
        return Optional.of(
                new BlindDraft(draft.id(), draft.revision(), kept(draft).marks()));
    }

    /** The numbers and lines of a blind reading in the making. */
    public Optional<MeasureAnswer> answer(ThreadId thread, UUID film) {
        return drafts.find(READING, film).flatMap(draft -> shown.film(thread, film)
                .map(copy -> answer(copy, kept(draft).marks(), 0, draft.revision())));
    }

    /** Measures while a hand moves; keeps the marks when asked to. */
    public MeasureOutcome measure(UUID id, MeasureRequest request) {
        var draft = drafts.byId(id).filter(one -> one.kind().equals(READING));
        var copy = draft.flatMap(one -> shown.film(new ThreadId(kept(one).thread()), one.subject()));
        if (draft.isEmpty() || copy.isEmpty()) {
            return MeasureOutcome.gone();
        }
        long revision = draft.get().revision();
        if (request.revision() < revision) {
            return MeasureOutcome.conflict(revision, kept(draft.get()).marks());
        }
        if (request.isCommit()) {
            revision++;
            drafts.save(
                    id,
                    revision,
                    json.writeValueAsString(new Kept(kept(draft.get()).thread(), request.marks())));
        }
        return new MeasureOutcome.Answered(answer(copy.get(), request.marks(), request.seq(), revision));
    }

    /** Signs the caller's blind reading; from now on they see how the others read the film. */
    public boolean sign(ThreadId thread, UUID film) {
        var draft = drafts.find(READING, film);
        var copy = shown.film(thread, film);
        if (draft.isEmpty() || copy.isEmpty()) {
            return false;
        }
        var set = kept(draft.get()).marks();
        var numbers = BlindMeasure.measure(set, calibration(copy.get())).values().stream()
                .map(number -> new BlindReading.Number(
                        number.side(), number.quantity(), number.value().orElseThrow()))
                .toList();
        if (numbers.isEmpty()) {
            return false;
        }
        marks.read(draft.get().id(), thread, film, set, numbers, now());
        drafts.discard(draft.get().id());
        return true;
    }

    /** How the film was read; those of others once the caller has read it, or asks. */
    public List<BlindReading> readings(ThreadId thread, UUID film) {
        return marks.readings(thread, film);
    }

    private Optional<ShownFilm> look(ThreadId thread, UUID film) {
        return shown.film(thread, film).filter(copy -> threads.look(ids.next(), thread, Optional.of(film), now()));
    }

    private static MeasureAnswer answer(ShownFilm copy, Marks marks, long seq, long revision) {
        return BlindMeasure.answer(BlindMeasure.measure(marks, calibration(copy)), seq, revision);
    }

    private Kept kept(Draft draft) {
        return json.readValue(draft.content(), Kept.class);
    }

    private static Calibration calibration(ShownFilm copy) {
        return copy.copy().scale().toCalibration();
    }

    private static Layer layer(JdbcMarkRepository.Kept kept, Calibration scale) {
        return new Layer(
                kept.name(),
                kept.mine(),
                kept.drawings().stream()
                        .map(one -> new Layer.Drawn(one, text(one, scale)))
                        .toList());
    }

    private static String text(Drawing drawing, Calibration scale) {
        if (drawing.kind() != Drawing.Kind.ANGLE) {
            return drawing.label();
        }
        var points = drawing.points().stream().map(spot -> plane(spot, scale)).toList();
        var angle = Corner.angle(points.get(0), points.get(1), points.get(2))
                .map(one -> Texts.text("opinion.degrees", one.degrees()))
                .orElse("");
        return (angle + " " + drawing.label()).strip();
    }

    private static PlanePoint plane(Drawing.Spot spot, Calibration scale) {
        return scale.toPlane(new PixelPoint(spot.x(), spot.y()));
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}
