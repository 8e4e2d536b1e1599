package org.espalier.plan;

import java.util.Optional;
import org.espalier.film.FilmId;
import org.espalier.patient.ChildId;
import org.espalier.science.quantity.Side;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Cuts films on the screen: by the landmarks of the reading that counts, never by what a browser says of them. */
@Service
@Transactional
public class CutService {

    private final FilmCuts cuts;

    CutService(FilmCuts cuts) {
        this.cuts = cuts;
    }

    /** The latest film from the front with a reading of the limb that counts; empty while there is none. */
    public Optional<CutFilm> film(ChildId child, Side side) {
        return cuts.film(child, side);
    }

    /**
     * The film cut and moved.
     *
     * @throws IllegalArgumentException when there is no such film that the caller may see, no reading of the limb on
     *     it, or no cut can run so
     */
    public CutAnswer move(FilmId film, CutRequest request) {
        return CutDrawing.answer(cuts.cut(film, request), request.seq());
    }
}
