package org.espalier.followup.ui;

import java.util.Optional;
import org.espalier.followup.AttemptOutcome;
import org.espalier.followup.Channel;
import org.jspecify.annotations.Nullable;

/** What is being typed of an attempt, as it stands in the fields. */
record TypedAttempt(
        @Nullable String channel, @Nullable String outcome, String consent, String note, String next, String nextOn) {

    static TypedAttempt of(
            @Nullable Channel channel,
            @Nullable AttemptOutcome outcome,
            String consent,
            String note,
            String next,
            String nextOn) {
        return new TypedAttempt(
                channel == null ? null : channel.name(),
                outcome == null ? null : outcome.name(),
                consent,
                note,
                next,
                nextOn);
    }

    Optional<Channel> toChannel() {
        return Optional.ofNullable(channel).map(Channel::valueOf);
    }

    Optional<AttemptOutcome> toOutcome() {
        return Optional.ofNullable(outcome).map(AttemptOutcome::valueOf);
    }
}
