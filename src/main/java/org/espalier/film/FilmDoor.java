package org.espalier.film;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import org.espalier.access.SiteId;
import org.espalier.film.FilmInspector.Findings;
import org.espalier.platform.BlobRef;
import org.espalier.platform.Blobs;
import org.espalier.platform.Ids;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * The one door for every film, from a browser or an archive. The bytes are on the disk before the row that names them
 * is written, and no transaction is open while they come in.
 */
@Component
class FilmDoor {

    private static final Logger LOG = LoggerFactory.getLogger(FilmDoor.class);

    private final FilmRepository films;
    private final Blobs blobs;
    private final FilmMatcher matcher;
    private final FilmDecoding decoding;
    private final FilmProperties limits;
    private final Ids ids;
    private final Clock clock;
    private final ApplicationEventPublisher events;
    private final TransactionTemplate transactions;

    FilmDoor(
            FilmRepository films,
            Blobs blobs,
            FilmMatcher matcher,
            FilmDecoding decoding,
            FilmProperties limits,
            Ids ids,
            Clock clock,
            ApplicationEventPublisher events,
            TransactionTemplate transactions) {
        this.films = films;
        this.blobs = blobs;
        this.matcher = matcher;
        this.decoding = decoding;
        this.limits = limits;
        this.ids = ids;
        this.clock = clock;
        this.events = events;
        this.transactions = transactions;
    }

    Received receive(SiteId site, InputStream bytes, String originalName) {
        try {
            var start = bytes.readNBytes(FilmKind.TELLING_BYTES);
            if (start.length == 0) {
                return new Received.Refused(DoorReason.EMPTY);
            }
            var kind = FilmKind.of(start);
            return kind.isEmpty()
                    ? new Received.Refused(DoorReason.NOT_A_FILM)
                    : keep(site, kind.get(), whole(start, bytes), originalName);
        } catch (IOException e) {
            LOG.warn("A film could not be stored", e);
            return new Received.Refused(DoorReason.NOT_STORED);
        }
    }

    private static InputStream whole(byte[] start, InputStream rest) {
        return new SequenceInputStream(new ByteArrayInputStream(start), rest);
    }

    private Received keep(SiteId site, FilmKind kind, InputStream bytes, String originalName) throws IOException {
        long room = limits.siteQuota().toBytes() - inTransaction(() -> films.bytesUsed(site));
        if (room <= 0) {
            return new Received.Refused(DoorReason.QUOTA_REACHED);
        }
        long largest = limits.largestFile().toBytes();
        try {
            return write(site, kind, blobs.put(bytes, Math.min(largest, room)), originalName);
        } catch (Blobs.TooLarge e) {
            return new Received.Refused(room < largest ? DoorReason.QUOTA_REACHED : DoorReason.TOO_LARGE);
        } catch (Blobs.Infected e) {
            return new Received.Refused(DoorReason.MALICIOUS);
        } catch (Blobs.DiskFull e) {
            return new Received.Refused(DoorReason.DISK_FULL);
        }
    }

    private Received write(SiteId site, FilmKind kind, BlobRef ref, String originalName) {
        var known = inTransaction(() -> films.withBytes(site, ref.sha256()));
        if (known.isPresent()) {
            return alreadyHere(known.get());
        }
        Findings found = FilmInspector.inspect(kind, blobs.path(ref), limits);
        var arrival = new Arrival(
                new FilmId(ids.next()),
                site,
                kind,
                ref,
                FilmInspector.cleaned(originalName),
                found.tags(),
                found.aside(),
                clock.instant().truncatedTo(ChronoUnit.MICROS));
        return inTransaction(() -> write(arrival));
    }

    private Received write(Arrival arrival) {
        if (films.add(arrival)) {
            return settle(arrival);
        }
        var known = films.withBytes(arrival.site(), arrival.bytes().sha256());
        if (known.isPresent()) {
            return alreadyHere(known.get());
        }
        var second = arrival.keptAside(
                AsideReason.SAME_NUMBER_OTHER_PICTURE, "another film has the SOP Instance UID of this one");
        if (films.add(second)) {
            return settle(second);
        }
        return alreadyHere(
                films.withBytes(arrival.site(), arrival.bytes().sha256()).orElseThrow());
    }

    private Received settle(Arrival arrival) {
        if (arrival.aside().isPresent()) {
            return new Received.KeptAside(arrival.id(), arrival.aside().get().reason());
        }
        var child = matcher.match(arrival);
        decoding.request(arrival.id(), arrival.site());
        events.publishEvent(new FilmReceived(arrival.id(), arrival.site(), child));
        return new Received.Taken(arrival.id());
    }

    private static Received alreadyHere(Film film) {
        Optional<AsideReason> aside = film.aside();
        return aside.<Received>map(reason -> new Received.KeptAside(film.id(), reason))
                .orElseGet(() -> new Received.AlreadyHere(film.id()));
    }

    private <T> T inTransaction(Supplier<T> work) {
        return Objects.requireNonNull(transactions.execute(status -> work.get()));
    }
}
