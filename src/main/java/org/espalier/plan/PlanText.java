package org.espalier.plan;

import java.time.LocalDate;
import java.util.Optional;
import org.espalier.kit.DateText;
import org.espalier.kit.QuantityText;
import org.espalier.kit.Texts;
import org.espalier.prognosis.AngleSpread;
import org.espalier.prognosis.Arrival;
import org.espalier.science.forecast.Deformity;
import org.espalier.science.forecast.PhysisSite;
import org.espalier.science.growth.PlateWindow;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;

/** Numbers of a plan in words: every angle with its direction, every date with its doubt. */
public final class PlanText {

    private PlanText() {}

    public static String deviation(AngleSpread spread) {
        return Texts.text(
                "plan.spread",
                QuantityText.ofDeviation(spread.middle()),
                QuantityText.ofDeviation(spread.low90()),
                QuantityText.ofDeviation(spread.high90()));
    }

    /** A joint angle or another one that is its own direction by its name. */
    public static String angle(Angle angle) {
        return Texts.text("plan.angle", angle.degrees());
    }

    public static String angle(AngleSpread spread) {
        return Texts.text("plan.spread", angle(spread.middle()), angle(spread.low90()), angle(spread.high90()));
    }

    public static String millimetres(Length length) {
        return Texts.text("plan.mm", length.millimetres());
    }

    public static String tenths(Length length) {
        return Texts.text("plan.mm-tenths", length.millimetres());
    }

    public static String site(PhysisSite site) {
        return Texts.text("plan.site." + site.name());
    }

    /** The name of the joint angle at a site. */
    public static String quantity(PhysisSite site) {
        return Texts.text("plan.quantity." + site.name());
    }

    /** The side of the bone a plate lies on to correct it. */
    public static String plateSide(Deformity deformity) {
        return Texts.text(deformity == Deformity.VARUS ? "kit.lateral" : "kit.medial");
    }

    public static String arrival(Arrival arrival) {
        var never = QuantityText.ofChance(arrival.never());
        return arrival.middle()
                .map(day -> Texts.text(
                        "plan.arrival", DateText.of(day), orEnd(arrival.earliest()), orEnd(arrival.latest()), never))
                .orElseGet(() -> Texts.text("plan.arrival.unlikely", orEnd(arrival.earliest()), never));
    }

    private static String orEnd(Optional<LocalDate> day) {
        return day.map(DateText::of).orElseGet(() -> Texts.text("plan.after-growth"));
    }

    static String window(PhysisSite site, PlateWindow window, LocalDate today) {
        return Texts.text("plan.at", site(site), window(window, today));
    }

    public static String window(PlateWindow window, LocalDate today) {
        return switch (window) {
            case PlateWindow.None(var reason) -> Texts.text("plan.window.none." + reason.name());
            case PlateWindow.Dates dates -> window(dates, today);
        };
    }

    private static String window(PlateWindow.Dates dates, LocalDate today) {
        var method = Texts.text("plan.method." + dates.decidedBy().name());
        var width = Texts.text(dates.isWidthAssumed() ? "plan.window.assumed" : "plan.window.measured");
        if (dates.isClosed(today)) {
            return Texts.text("plan.window.closed", DateText.of(dates.evenly()), method, width);
        }
        var first = dates.notBefore()
                .map(day -> Texts.text("plan.window.not-before", DateText.of(day)))
                .orElseGet(() -> Texts.text("plan.window.any"));
        return Texts.text("plan.window", first, DateText.of(dates.by()), DateText.of(dates.evenly()), method, width);
    }
}
