package org.espalier.today.ui;

import java.time.LocalDate;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Stream;
import org.espalier.film.FilmProtocol;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.science.quantity.Age;
import org.espalier.today.CareToday;
import org.espalier.today.Dated;
import org.espalier.today.Listed;
import org.espalier.today.NearTarget;

/** The lists of the care of children, what cannot wait first. Each hides itself when it is empty. */
final class CareLists {

    private CareLists() {}

    static Stream<WaitingList> of(CareToday care, LocalDate today) {
        return Stream.of(
                theatre(care),
                nearTarget(care.nearTarget(), today),
                late(care, today),
                list("to-film", care.toFilm(), child -> Urls.WORKLIST, CareLists::protocol),
                list("not-taken", care.notTaken(), Urls::course, one -> notTaken(one, today)),
                list(
                        "plates",
                        care.plates(),
                        Urls::course,
                        one -> Texts.text("today.plates.line", DateText.of(one.day()))));
    }

    private static WaitingList theatre(CareToday care) {
        var list = new WaitingList(Texts.text("today.theatre"));
        care.theatre()
                .forEach(day -> list.add(
                        Urls.theatre(day.day()),
                        Texts.text("today.theatre.line", DateText.inWords(day.day()), day.children())));
        return list.closed(Texts.text("today.theatre.order"), 0);
    }

    private static WaitingList late(CareToday care, LocalDate today) {
        var list = new WaitingList(Texts.text("today.late", care.late().all()));
        care.late()
                .shown()
                .forEach(one -> list.add(
                        Urls.visits(one.child().id().value()),
                        one.child(),
                        Texts.text("today.late.line", due(one, today), Texts.text("today.harm." + one.about()))));
        list.further(Urls.RECALL, care.late().further());
        if (care.toRemind() > 0) {
            list.add(Urls.RECALL, Texts.text("today.to-remind", care.toRemind()));
        }
        return list.closed(Texts.text("today.late.order"), 0);
    }

    private static WaitingList list(
            String name, Listed<Dated> listed, Function<UUID, String> url, Function<Dated, String> line) {
        var list = new WaitingList(Texts.text("today.list." + name, listed.all()));
        listed.shown().forEach(one -> list.add(url.apply(one.child().id().value()), one.child(), line.apply(one)));
        return list.closed(Texts.text("today.order." + name), listed.further());
    }

    private static WaitingList nearTarget(Listed<NearTarget> near, LocalDate today) {
        var list = new WaitingList(Texts.text("today.list.near-target", near.all()));
        near.shown()
                .forEach(one ->
                        list.add(Urls.treatment(one.child().id().value()), one.child(), NearTargetText.of(one, today)));
        return list.closed(Texts.text("today.order.near-target"), near.further());
    }

    private static String protocol(Dated one) {
        return Texts.of(FilmProtocol.valueOf(one.about()));
    }

    private static String notTaken(Dated one, LocalDate today) {
        return Texts.text("today.not-taken.line", protocol(one), since("today.not-taken.since", one, today));
    }

    private static String due(Dated one, LocalDate today) {
        return one.day().isBefore(today)
                ? since("today.late.since", one, today)
                : Texts.text("today.late.no-date", DateText.of(one.day()));
    }

    private static String since(String key, Dated one, LocalDate today) {
        var day = one.day().isAfter(today) ? today : one.day();
        return Texts.text(key, DateText.of(one.day()), DateText.of(Age.between(day, today)));
    }
}
