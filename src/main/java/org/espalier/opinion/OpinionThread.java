package org.espalier.opinion;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.espalier.access.SiteId;
import org.espalier.access.StaffId;
import org.espalier.patient.ChildId;

/**
 * A case as the caller sees it.
 *
 * @param child whose it is; empty for everybody but those who treat the child
 * @param mayWrite whether the caller may write
 * @param mayLead whether the caller may add, invite, withdraw and close
 * @param newer how many facts of which kind were written down since and are not shown
 */
public record OpinionThread(
        ThreadId id,
        SiteId site,
        String siteName,
        StaffId asker,
        String askerName,
        Question question,
        boolean everybody,
        Instant askedAt,
        Instant openUntil,
        Optional<ChildId> child,
        boolean mayWrite,
        boolean mayLead,
        List<Member> members,
        List<ShownFact> facts,
        List<ShownFilm> films,
        List<ShownClip> clips,
        List<Message> messages,
        List<Opinion> opinions,
        List<HandOver> handOvers,
        Map<String, Long> newer,
        Optional<Closing> closing,
        List<Outcome> outcomes) {

    OpinionThread with(
            List<Member> members,
            List<ShownFact> facts,
            List<ShownFilm> films,
            List<ShownClip> clips,
            List<Message> messages,
            List<Opinion> opinions,
            List<HandOver> handOvers,
            Map<String, Long> newer,
            Optional<Closing> closing,
            List<Outcome> outcomes) {
        return new OpinionThread(
                id, site, siteName, asker, askerName, question, everybody, askedAt, openUntil, child, mayWrite, mayLead,
                members, facts, films, clips, messages, opinions, handOvers, newer, closing, outcomes);
    }
}
