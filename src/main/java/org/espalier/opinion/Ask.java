package org.espalier.opinion;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.espalier.patient.ChildId;

/**
 * A case as it is sent.
 *
 * @param id made by whoever asks: sent again it is asked once
 * @param films in the order they are shown; the asker has looked at each
 * @param pictures photos, each looked at, and clips, each played to its end by the asker
 * @param facts which facts to show, by what they are made from
 */
public record Ask(
        ThreadId id,
        ChildId child,
        Question question,
        Invitation invitation,
        List<FilmToShow> films,
        List<PictureToShow> pictures,
        Set<UUID> facts) {

    public Ask {
        films = List.copyOf(films);
        pictures = List.copyOf(pictures);
        facts = Set.copyOf(facts);
    }
}
