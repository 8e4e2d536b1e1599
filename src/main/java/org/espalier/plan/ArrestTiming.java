package org.espalier.plan;

import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.prognosis.Ahead;
import org.espalier.science.growth.Arrest;
import org.espalier.science.growth.GrowthAge;
import org.espalier.science.growth.GrowthPlate;
import org.espalier.science.growth.LegMultiplier;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;

/** On which day a permanent arrest of the longer leg would even out what both legs will differ by at maturity. */
record ArrestTiming(Ahead ahead, Side side, LimbMeasures measures) {

    /** Growth may be so much more or less than reckoned. */
    private static final double DOUBT = 0.25;

    private static final Set<GrowthPlate> FEMUR = EnumSet.of(GrowthPlate.DISTAL_FEMUR);
    private static final Set<GrowthPlate> TIBIA = EnumSet.of(GrowthPlate.PROXIMAL_TIBIA);
    private static final Set<GrowthPlate> BOTH = EnumSet.of(GrowthPlate.DISTAL_FEMUR, GrowthPlate.PROXIMAL_TIBIA);

    Sheet.Part part() {
        var facts = new Sheet.Gathered();
        var lengths = ahead.prognosis().lengths();
        if (lengths.isEmpty() || ahead.prognosis().age().isEmpty() || leg().isEmpty()) {
            facts.with("plan.length.even", Texts.text("plan.length.even.unread"));
            return facts.under("plan.length.timing");
        }
        double rightLonger =
                lengths.get().byMultiplier().sinceBirth().difference().millimetres();
        double longer = side == Side.RIGHT ? rightLonger : -rightLonger;
        if (Math.round(longer) <= 0) {
            facts.with("plan.length.even", Texts.text("plan.length.even.shorter", Texts.of(side)));
            return facts.under("plan.length.timing");
        }
        var age = ahead.prognosis().age().get();
        var leg = leg().get();
        facts.with("plan.length.even", Texts.text("plan.length.even.mm", longer));
        facts.with("plan.length.even.femur", day(age, leg, longer, FEMUR));
        facts.with("plan.length.even.tibia", day(age, leg, longer, TIBIA));
        facts.with("plan.length.even.both", day(age, leg, longer, BOTH));
        return facts.under("plan.length.timing");
    }

    private Optional<Length> leg() {
        return measures.femur().flatMap(femur -> measures.tibia().map(femur::plus));
    }

    private String day(GrowthAge age, Length leg, double longer, Set<GrowthPlate> plates) {
        var middle = years(age, leg, longer, plates);
        var early = years(age, leg, longer / (1 - DOUBT), plates);
        var late = years(age, leg, longer / (1 + DOUBT), plates);
        if (middle.isEmpty()
                || late.isEmpty()
                || middle.getAsDouble() < age.age().decimalYears()) {
            return Texts.text("plan.length.even.late", now(age, leg, plates));
        }
        return Texts.text(
                "plan.length.even.day",
                DateText.of(age.dayAt(middle.getAsDouble())),
                early.isEmpty() || early.getAsDouble() < age.age().decimalYears()
                        ? Texts.text("plan.length.even.before-today")
                        : DateText.of(age.dayAt(early.getAsDouble())),
                DateText.of(age.dayAt(late.getAsDouble())));
    }

    private static OptionalDouble years(GrowthAge age, Length leg, double longer, Set<GrowthPlate> plates) {
        return Arrest.yearsFor(age.sex(), age.age(), leg, new Length(longer), plates);
    }

    /** What an arrest today would take off, in millimetres. */
    private static double now(GrowthAge age, Length leg, Set<GrowthPlate> plates) {
        double left = leg.millimetres() * (LegMultiplier.at(age.sex(), age.age()) - 1);
        return Arrest.shortening(new Length(left), plates).millimetres();
    }
}
