package org.espalier.plan;

import java.util.Optional;
import org.espalier.science.planning.CutKind;
import org.espalier.science.quantity.Side;

/** Where a cut lies on its film, as the address of a sheet holds it: {@code x1,y1,x2,y2,hx,hy,outwards,kind}. */
public record FilmPlace(
        double x1, double y1, double x2, double y2, double hx, double hy, double outwards, CutKind kind) {

    private static final String NAME = "cut";
    private static final int NUMBERS = 7;

    /** Empty when no cut is given, or what is given is none. */
    public static Optional<FilmPlace> of(SheetInputs inputs) {
        return inputs.text(NAME).flatMap(FilmPlace::parsed);
    }

    private static Optional<FilmPlace> parsed(String text) {
        var parts = text.split(",", -1);
        if (parts.length != NUMBERS && parts.length != NUMBERS + 1) {
            return Optional.empty();
        }
        try {
            var at = new double[NUMBERS];
            for (int i = 0; i < NUMBERS; i++) {
                at[i] = Double.parseDouble(parts[i]);
            }
            var kind = parts.length > NUMBERS && parts[NUMBERS].equals(CutKind.ROUND.name())
                    ? CutKind.ROUND
                    : CutKind.STRAIGHT;
            return Optional.of(new FilmPlace(at[0], at[1], at[2], at[3], at[4], at[5], at[6], kind));
        } catch (NumberFormatException noNumber) {
            return Optional.empty();
        }
    }

    public CutRequest request(Side side) {
        return new CutRequest(0, side, x1, y1, x2, y2, hx, hy, outwards, kind);
    }
}
