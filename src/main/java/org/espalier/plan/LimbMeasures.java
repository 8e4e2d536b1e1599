package org.espalier.plan;

import java.util.Optional;
import org.espalier.prognosis.Ahead;
import org.espalier.prognosis.FilmAngle;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.forecast.PhysisSite;
import org.espalier.science.growth.GrowthAge;
import org.espalier.science.growth.GrowthPlate;
import org.espalier.science.growth.PhysisWidth;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;

/** The latest lengths, widths and angles of a limb as its films tell them. */
public record LimbMeasures(Ahead ahead, Side side) {

    /** The latest reading of a number of the limb. */
    public Optional<FilmAngle> latest(Quantity quantity) {
        return ahead.films().latest(side, quantity);
    }

    public Optional<Length> femur() {
        return latest(Quantity.FEMUR_LENGTH).map(film -> new Length(film.value()));
    }

    public Optional<Length> tibia() {
        return latest(Quantity.TIBIA_LENGTH).map(film -> new Length(film.value()));
    }

    /** HKA with the knee's laxity, + varus. */
    public Optional<Angle> hka() {
        return latest(Quantity.HKA).map(film -> new Angle(film.value()));
    }

    /** The width of a growth plate as measured, else as assumed for the age. */
    public Optional<PhysisWidth> width(PhysisSite site) {
        return latest(quantityOfWidth(site))
                .map(film -> PhysisWidth.measured(new Length(film.value())))
                .or(() -> ahead.prognosis().age().flatMap(age -> assumed(site, age)));
    }

    private static Optional<PhysisWidth> assumed(PhysisSite site, GrowthAge age) {
        return PhysisWidth.assumed(plate(site), age.sex(), age.age());
    }

    /** The growth plate of a site of the knee. */
    public static GrowthPlate plate(PhysisSite site) {
        return switch (site) {
            case DISTAL_FEMUR -> GrowthPlate.DISTAL_FEMUR;
            case PROXIMAL_TIBIA -> GrowthPlate.PROXIMAL_TIBIA;
        };
    }

    private static Quantity quantityOfWidth(PhysisSite site) {
        return switch (site) {
            case DISTAL_FEMUR -> Quantity.FEMUR_PHYSIS_WIDTH;
            case PROXIMAL_TIBIA -> Quantity.TIBIA_PHYSIS_WIDTH;
        };
    }
}
