package org.espalier.opinion;

import java.util.List;
import org.espalier.patient.Child;

/** What of a child's course can be put before colleagues, in the order of time. */
public record Showable(
        Child child, List<ShowableFilm> films, List<ShowablePicture> pictures, List<ShowableFact> facts) {

    public Showable {
        films = List.copyOf(films);
        pictures = List.copyOf(pictures);
        facts = List.copyOf(facts);
    }
}
