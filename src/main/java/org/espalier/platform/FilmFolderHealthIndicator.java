package org.espalier.platform;

import java.io.IOException;
import org.springframework.boot.health.contributor.Health;
import org.springframework.boot.health.contributor.HealthIndicator;
import org.springframework.stereotype.Component;

/** Ready only while a film that arrives can be kept. */
@Component
class FilmFolderHealthIndicator implements HealthIndicator {

    private final Blobs blobs;

    FilmFolderHealthIndicator(Blobs blobs) {
        this.blobs = blobs;
    }

    @Override
    public Health health() {
        try {
            blobs.refuseWhenFull();
            return Health.up().build();
        } catch (IOException e) {
            return Health.down()
                    .withDetail("reason", String.valueOf(e.getMessage()))
                    .build();
        }
    }
}
