package org.espalier.reading.ui;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.espalier.kit.DateText;
import org.espalier.kit.IdentityBanner;
import org.espalier.kit.Texts;
import org.espalier.kit.Who;

/** What is written over a film, so that it says itself whom it shows and when it was taken. */
final class FilmCaption {

    private FilmCaption() {}

    static List<String> of(FilmRoomState state, LocalDate today) {
        var lines = new ArrayList<String>();
        state.child().ifPresent(child -> {
            lines.add(IdentityBanner.name(child.who()));
            if (child.who() instanceof Who.Named named) {
                lines.add(Texts.text("reading.caption.born", DateText.born(named.birthDate(), today)));
            }
        });
        lines.add(state.film()
                .takenOn()
                .map(day -> Texts.text("reading.caption.taken", DateText.of(day)))
                .orElseGet(() -> Texts.text("reading.caption.no-day")));
        state.film().view().ifPresent(lines::add);
        return lines;
    }
}
