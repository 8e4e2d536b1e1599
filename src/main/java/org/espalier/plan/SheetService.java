package org.espalier.plan;

import java.util.Optional;
import org.espalier.film.FilmImages;
import org.espalier.patient.ChildId;
import org.espalier.patient.ExaminationService;
import org.espalier.prognosis.Ahead;
import org.espalier.prognosis.PrognosisService;
import org.espalier.science.quantity.Side;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The sheets of the desk, reckoned from the facts and from what was typed. */
@Service
@Transactional
public class SheetService {

    private final PrognosisService prognoses;
    private final OptionsDesk desk;
    private final JdbcComparisonRepository comparisons;
    private final ExaminationService examinations;
    private final FilmCuts cuts;
    private final FilmImages images;

    SheetService(
            PrognosisService prognoses,
            OptionsDesk desk,
            JdbcComparisonRepository comparisons,
            ExaminationService examinations,
            FilmCuts cuts,
            FilmImages images) {
        this.prognoses = prognoses;
        this.desk = desk;
        this.comparisons = comparisons;
        this.examinations = examinations;
        this.cuts = cuts;
        this.images = images;
    }

    /** Empty when there is no such child that the caller may see. */
    public Optional<Sheet> sheet(ChildId child, Side side, SheetKind kind, SheetInputs inputs) {
        return prognoses.ahead(child).map(ahead -> sheet(ahead, side, kind, inputs));
    }

    private Sheet sheet(Ahead ahead, Side side, SheetKind kind, SheetInputs inputs) {
        return switch (kind) {
            case OPTIONS ->
                new OptionsSheet(
                                ahead,
                                side,
                                desk.of(ahead, side),
                                comparisons.all(ahead.prognosis().child().id()))
                        .sheet();
            case BOW ->
                new BowSheet(
                                ahead,
                                side,
                                inputs,
                                examinations.stagePairs(
                                        ahead.prognosis().child().site()))
                        .sheet();
            case GROWTH -> new GrowthSheet(ahead, side, inputs).sheet();
            case OSTEOTOMY -> new OsteotomySheet(ahead, side, inputs, cut(ahead, side, inputs)).sheet();
            case LENGTH -> new LengthSheet(ahead, side).sheet();
        };
    }

    /** The film as it was cut on the screen; empty until it was turned. */
    private Optional<FilmCutPart> cut(Ahead ahead, Side side, SheetInputs inputs) {
        return FilmPlace.of(inputs).filter(place -> place.outwards() != 0).flatMap(place -> cuts.film(
                        ahead.prognosis().child().id(), side)
                .flatMap(film -> part(film, place)));
    }

    private Optional<FilmCutPart> part(CutFilm film, FilmPlace place) {
        try {
            return Optional.of(new FilmCutPart(
                    cuts.cut(film.film(), place.request(film.side())),
                    film.takenOn(),
                    box -> FilmPicture.of(images, film.film(), box)));
        } catch (CutRefusedException refused) {
            return Optional.empty();
        }
    }
}
