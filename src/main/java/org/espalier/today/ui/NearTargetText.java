package org.espalier.today.ui;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.espalier.kit.DateText;
import org.espalier.kit.QuantityText;
import org.espalier.kit.Texts;
import org.espalier.prognosis.Arrival;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Angle;
import org.espalier.today.NearTarget;
import org.espalier.treatment.TreatmentText;

/** A growth plate near its target in words: where it stands, when it comes, by when to act, and what is missing. */
final class NearTargetText {

    private NearTargetText() {}

    static List<String> of(NearTarget near, LocalDate today) {
        var words = new ArrayList<String>();
        words.add(listBy(near.listBy(), today));
        near.plate()
                .ifPresentOrElse(
                        plate -> words.addAll(List.of(left(plate), arrival(plate.arrival()))),
                        () -> words.add(Texts.text("today.near-target.unknown")));
        near.filmsMissing().forEach(film -> words.add(film(film, today)));
        if (near.dateMissing()) {
            words.add(Texts.text("today.near-target.no-date"));
        }
        return words;
    }

    private static String left(NearTarget.Plate plate) {
        var where = TreatmentText.of(plate.physis());
        boolean past = plate.left().degrees() < 0;
        var into = past ? plate.corrects().opposite() : plate.corrects();
        return Texts.text(
                past ? "today.near-target.past" : "today.near-target.left",
                where,
                Math.abs(plate.left().degrees()),
                Texts.of(into),
                bound(plate.least()),
                bound(plate.most()),
                plate.lastFilm()
                        .map(film -> Texts.text("today.near-target.by-film", DateText.of(film)))
                        .orElseGet(() -> Texts.text("today.near-target.no-film")));
    }

    /** A bound may lie on the other side of the target than the middle does. */
    private static String bound(Angle left) {
        boolean past = left.degrees() < 0;
        return Texts.text(past ? "today.near-target.beyond" : "today.near-target.within", Math.abs(left.degrees()));
    }

    private static String arrival(Arrival arrival) {
        return Texts.text(
                "today.near-target.straight",
                orEnd(arrival.middle()),
                orEnd(arrival.earliest()),
                orEnd(arrival.latest()),
                QuantityText.ofChance(arrival.never()));
    }

    private static String orEnd(Optional<LocalDate> day) {
        return day.map(DateText::of).orElseGet(() -> Texts.text("today.near-target.growth-end"));
    }

    private static String listBy(LocalDate day, LocalDate today) {
        return day.isBefore(today)
                ? Texts.text("today.near-target.gone", DateText.of(day), DateText.of(Age.between(day, today)))
                : Texts.text("today.near-target.list", DateText.of(day));
    }

    private static String film(NearTarget.MissingFilm film, LocalDate today) {
        return Texts.text(
                film.forDay().isBefore(today) ? "today.near-target.film" : "today.near-target.film-to-come",
                DateText.of(film.askedOn()),
                DateText.of(film.forDay()),
                Texts.of(film.protocol()));
    }
}
