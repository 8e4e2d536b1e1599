package org.espalier.prognosis;

import java.util.List;
import java.util.Optional;
import org.espalier.science.growth.PlateWindow;
import org.espalier.science.quantity.Angle;
import org.espalier.treatment.PhysisKey;
import org.espalier.treatment.PhysisState;

/**
 * Where one physis is going.
 *
 * @param target the joint angle it is guided to
 * @param last the joint angle as last read
 * @param growth growth left by each way of reckoning that reaches its age; empty without sex
 * @param window between which days a plate could take it to its target, another one where one is in; empty where none
 *     is asked for
 */
public record PhysisPrognosis(
        PhysisKey physis,
        PhysisState state,
        Angle target,
        Optional<FilmAngle> last,
        Outlook outlook,
        List<GrowthOf> growth,
        Optional<PlateWindow> window) {

    public PhysisPrognosis {
        growth = List.copyOf(growth);
    }

    /** Where it is going, if that can be said. */
    public Optional<Forecast> forecast() {
        return outlook instanceof Forecast forecast ? Optional.of(forecast) : Optional.empty();
    }
}
