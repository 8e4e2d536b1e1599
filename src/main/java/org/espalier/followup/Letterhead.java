package org.espalier.followup;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a letter says of the hospital: where it is and whom the family calls.
 *
 * @param staffMail where a word about the recall goes each morning; null when it goes nowhere
 */
public record Letterhead(
        String address, String phone, @Nullable String staffMail) {

    public Letterhead(String address, String phone) {
        this(address, phone, null);
    }

    Optional<String> mailbox() {
        return Optional.ofNullable(staffMail);
    }
}
