package org.espalier.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;

/**
 * A film that was cut on the screen, as a part of a sheet: its numbers before and after, and on paper the film itself.
 *
 * @param takenOn the day of the film
 * @param pictures reads a part of the film
 */
record FilmCutPart(FilmCut cut, LocalDate takenOn, Function<FilmBox, Optional<FilmPicture>> pictures) {

    List<Sheet.Part> parts() {
        var parts = new ArrayList<Sheet.Part>();
        var answer = CutDrawing.answer(cut, 0);
        parts.add(new Sheet.Paper(new Sheet.Drawing(
                Texts.text("plan.cut.film", DateText.of(takenOn)),
                words(answer),
                page -> FilmDrawing.draw(cut, answer, pictures.apply(FilmBox.of(answer)), page))));
        parts.add(new Sheet.Table(
                CutWords.sentence(cut, takenOn),
                List.of(Texts.text("plan.cut.number"), Texts.text("plan.cut.before"), Texts.text("plan.cut.after")),
                answer.numbers().stream()
                        .map(number -> List.of(number.label(), number.before(), number.after()))
                        .toList()));
        answer.notes().forEach(note -> parts.add(new Sheet.Note(note)));
        return parts;
    }

    private String words(CutAnswer answer) {
        var scale = FilmDrawing.ratio(cut, answer)
                .map(ratio -> Texts.text("plan.cut.film.scale", ratio))
                .orElseGet(() -> Texts.text("plan.cut.no-scale"));
        return Texts.text("plan.cut.film.words", Texts.of(cut.limb().side()), scale);
    }
}
