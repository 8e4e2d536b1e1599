package org.espalier.access.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * Settings of the door.
 *
 * @param passkey the site that passkeys belong to
 * @param session how long a session may last
 * @param rate how fast one caller may ask
 * @param firstOperator who runs an empty network until there are others
 */
@ConfigurationProperties("espalier.access")
record AccessProperties(
        @DefaultValue Passkey passkey,
        @DefaultValue Session session,
        @DefaultValue Rate rate,
        @DefaultValue FirstOperator firstOperator) {

    /**
     * @param id the host name that browsers bind passkeys to
     * @param origins the addresses people type, scheme and port included
     */
    record Passkey(
            @DefaultValue("localhost") String id,
            @DefaultValue("http://localhost:8080") Set<String> origins) {}

    /**
     * @param idle time without a deed of the person after which the session ends
     * @param whole time after which it ends however busy it is
     * @param proof time after which a person proves again who they are before signing
     */
    record Session(
            @DefaultValue("30m") Duration idle,
            @DefaultValue("12h") Duration whole,
            @DefaultValue("10m") Duration proof) {}

    /**
     * @param perSecond pieces of a film, or a fifth of as many screens
     * @param burst as many at once after a rest
     */
    record Rate(
            @DefaultValue("100") int perSecond,
            @DefaultValue("3000") int burst) {}

    /**
     * @param login empty when nobody is to be added
     * @param password opens once, and must then be changed
     * @param passwordFile file that holds the password instead
     */
    record FirstOperator(
            @DefaultValue("") String login,
            @DefaultValue("") String password,
            @Nullable Path passwordFile) {

        String secret() throws IOException {
            return passwordFile == null || passwordFile.toString().isEmpty()
                    ? password
                    : Files.readString(passwordFile).strip();
        }

        /** A password never reaches a log. */
        @Override
        public String toString() {
            return login;
        }
    }
}
