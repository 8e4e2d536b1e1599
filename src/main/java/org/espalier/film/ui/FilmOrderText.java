package org.espalier.film.ui;

import java.time.LocalDate;
import java.util.Optional;
import org.espalier.film.DoseAreaProduct;
import org.espalier.film.FilmHappening;
import org.espalier.film.FilmOrderStep;
import org.espalier.film.FilmWish;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.jspecify.annotations.Nullable;

/** Orders of films in words. */
final class FilmOrderText {

    private FilmOrderText() {}

    /** What is to be done: {@code Both legs, standing, hip to ankle; block 15 mm under the left foot; ball}. */
    static String of(FilmWish wish) {
        return switch (wish) {
            case FilmWish.NoFilm none -> Texts.text("film.order.none", none.reason());
            case FilmWish.Film film ->
                Texts.text(
                        "film.order.film",
                        Texts.of(film.protocol()),
                        Texts.text("film.order.sides." + film.sides()),
                        Optional.ofNullable(film.lift())
                                .map(FilmOrderText::of)
                                .orElseGet(() -> Texts.text("film.order.no-lift")),
                        Texts.text(film.ball() ? "film.order.ball" : "film.order.no-ball"));
        };
    }

    /** Why it is asked for; empty when it was not said. */
    static Optional<String> reason(FilmWish wish) {
        return wish instanceof FilmWish.Film film ? Optional.ofNullable(film.reason()) : Optional.empty();
    }

    static String of(FilmOrderStep step) {
        var by = step.by() == null ? Texts.text("film.by.house") : step.by();
        return Texts.text("film.step", of(step.what()), by);
    }

    static String of(DoseAreaProduct dose) {
        return Texts.text("film.dose.of", dose.value().toPlainString(), Texts.of(dose.unit()));
    }

    private static String of(FilmHappening what) {
        return switch (what) {
            case FilmHappening.Taken taken -> withDose(Texts.text("film.step.taken"), taken.dose());
            case FilmHappening.Rejected rejected ->
                withDose(Texts.text("film.step.rejected", Texts.of(rejected.why())), rejected.dose());
            case FilmHappening.NotTaken not -> Texts.text("film.step.not-taken", not.reason());
            case FilmHappening.Withdrawn withdrawn -> Texts.text("film.step.withdrawn", withdrawn.reason());
        };
    }

    private static String withDose(String what, @Nullable DoseAreaProduct dose) {
        return dose == null ? Texts.text("film.step.no-dose", what) : Texts.text("film.step.dose", what, of(dose));
    }

    private static String of(FilmWish.Lift lift) {
        return Texts.text(
                "film.order.lift",
                Math.round(lift.height().millimetres()),
                Texts.text("film.order.foot." + lift.side()));
    }

    /** The day a film is asked for, said beside today's when it is another. */
    static String day(LocalDate forDay, LocalDate today) {
        return forDay.isBefore(today)
                ? Texts.text("film.order.overdue", DateText.of(forDay))
                : Texts.text("film.order.for", DateText.of(forDay));
    }
}
