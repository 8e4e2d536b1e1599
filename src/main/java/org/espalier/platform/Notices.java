package org.espalier.platform;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.espalier.platform.DatabaseConfiguration.DatabaseServer;
import org.postgresql.PGConnection;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.ContextClosedEvent;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/**
 * Tells what changed on any node. A notice holds ids only; whoever hears it reads again. One connection of its own
 * listens on each node: what was missed while it was broken, and whatever else went astray, is made up for by telling
 * everybody on every reconnect and every 30 seconds.
 */
@Component
public class Notices {

    private static final Logger LOG = LoggerFactory.getLogger(Notices.class);
    private static final int WAIT_MS = 1000;
    private static final int PATIENCE_MS = 1000;
    private static final int WAITS_A_ROUND = 30;

    private final DatabaseServer server;
    private final Map<String, Set<Runnable>> listeners = new ConcurrentHashMap<>();
    private volatile boolean running;

    Notices(DatabaseServer server) {
        this.server = server;
    }

    /**
     * Calls the listener on every notice of this text, and at times without one; quickly, on a thread of the house.
     *
     * @return to be run when nothing more is to be heard
     */
    public Runnable listen(String notice, Runnable listener) {
        listeners.computeIfAbsent(notice, key -> ConcurrentHashMap.newKeySet()).add(listener);
        return () -> listeners.computeIfPresent(notice, (key, all) -> {
            all.remove(listener);
            return all.isEmpty() ? null : all;
        });
    }

    @EventListener(ApplicationReadyEvent.class)
    void start() {
        running = true;
        Thread.ofVirtual().name("notices").start(this::run);
    }

    @EventListener(ContextClosedEvent.class)
    void stop() {
        running = false;
    }

    private void run() {
        while (running) {
            try (var connection = connect()) {
                hear(connection);
            } catch (SQLException broken) {
                LOG.warn("Notices are not heard just now: {}", broken.getSQLState());
                pause();
            }
        }
    }

    private Connection connect() throws SQLException {
        var settings = server.settings();
        return DriverManager.getConnection(
                settings.url(), DatabaseRole.APP.user(), settings.password(DatabaseRole.APP));
    }

    private void hear(Connection connection) throws SQLException {
        try (var statement = connection.createStatement()) {
            statement.execute("listen espalier_notice");
        }
        var heard = connection.unwrap(PGConnection.class);
        for (int waits = 0; running; waits++) {
            if (waits % WAITS_A_ROUND == 0) {
                listeners.values().forEach(Notices::tell);
            }
            for (var notice : heard.getNotifications(WAIT_MS)) {
                tell(listeners.getOrDefault(notice.getParameter(), Set.of()));
            }
        }
    }

    private static void tell(Set<Runnable> listening) {
        for (var listener : listening) {
            try {
                listener.run();
            } catch (RuntimeException careless) {
                LOG.warn("A listener failed: {}", careless.getClass().getName());
            }
        }
    }

    private void pause() {
        try {
            Thread.sleep(PATIENCE_MS);
        } catch (InterruptedException e) {
            running = false;
            Thread.currentThread().interrupt();
        }
    }
}
