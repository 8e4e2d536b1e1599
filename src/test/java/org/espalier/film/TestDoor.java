package org.espalier.film;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.UUID;
import java.util.function.Supplier;
import org.awaitility.Awaitility;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.springframework.stereotype.Component;

/** Brings films to the door as one radiographer of one site, and waits for their pictures. */
@Component
public class TestDoor {

    private final FilmService films;
    private final TestNetwork network;

    TestDoor(FilmService films, TestNetwork network) {
        this.films = films;
        this.network = network;
    }

    /** Somebody at a site of their own. */
    public record Sender(UUID staff, SiteId site) {

        /** Does the work as this person, outside any transaction. */
        public <T> T does(Supplier<T> work) {
            return Callers.callAs(new Caller.Staff(staff), work);
        }
    }

    /** A person with the roles at a new site. */
    public Sender at(String... roles) {
        var site = network.site();
        return new Sender(network.staff(site, roles), new SiteId(site));
    }

    public Received send(Sender sender, byte[] bytes, String name) {
        return sender.does(() -> films.receive(sender.site(), new ByteArrayInputStream(bytes), name));
    }

    public Received send(Sender sender, Path file) {
        try {
            return send(sender, Files.readAllBytes(file), file.getFileName().toString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The film once its picture is prepared or it is kept aside. */
    public Film settled(Sender sender, FilmId id) {
        return Awaitility.await()
                .atMost(Duration.ofSeconds(60))
                .until(
                        () -> sender.does(() -> films.find(id)).orElseThrow(),
                        film -> film.state() != FilmState.RECEIVED);
    }

    public static FilmId taken(Received received) {
        return ((Received.Taken) received).film();
    }
}
