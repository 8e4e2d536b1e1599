package org.espalier.reading.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.time.ZoneId;
import java.util.stream.Collectors;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.reading.Reading;

/** Every signed reading of a film, the newest first; a superseded one stays, struck through, with the reason. */
class ReadingHistory extends Composite<Details> {

    ReadingHistory(FilmRoomState state, ZoneId zone) {
        var list = new UnorderedList();
        state.signed().forEach(reading -> list.add(item(reading, state, zone)));
        getContent().setSummaryText(Texts.text("reading.history", state.signed().size()));
        getContent().add(list);
        getContent().addClassNames("room-fold", "room-history");
    }

    private static ListItem item(Reading reading, FilmRoomState state, ZoneId zone) {
        var text = Texts.text(
                "reading.history.item",
                DateText.of(reading.signedAt().atZone(zone).toLocalDate()),
                reading.readerName(),
                reading.limbs().stream().map(Texts::of).collect(Collectors.joining(", ")));
        var address =
                Urls.film(reading.film().value()) + "?reading=" + reading.id().value();
        var item = new ListItem(new Anchor(address, text));
        state.signed().stream()
                .filter(later -> later.supersedes()
                        .filter(before -> before.reading().equals(reading.id()))
                        .isPresent())
                .findFirst()
                .flatMap(Reading::supersedes)
                .ifPresent(superseding -> {
                    item.addClassName("superseded");
                    item.add(new Span(Texts.text("reading.history.superseded", superseding.reason())));
                });
        return item;
    }
}
