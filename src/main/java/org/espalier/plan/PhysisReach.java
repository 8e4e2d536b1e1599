package org.espalier.plan;

import java.util.Optional;
import org.espalier.prognosis.Outlook;
import org.espalier.prognosis.PhysisStep;
import org.espalier.science.forecast.PhysisSite;
import org.espalier.science.growth.PlateWindow;
import org.espalier.science.quantity.Length;

/**
 * What an option does at one physis.
 *
 * @param window between which days a plate there can do its work; empty where one is in
 * @param lost by how much the middle of the bone grows less while the joint turns to its target; empty where nothing is
 *     held
 */
public record PhysisReach(
        PhysisSite site, PhysisStep step, Outlook outlook, Optional<PlateWindow> window, Optional<Length> lost) {}
