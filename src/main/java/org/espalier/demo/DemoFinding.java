package org.espalier.demo;

import java.time.LocalDate;
import java.util.Map;
import org.espalier.patient.ClinicalExamination;
import org.espalier.patient.LegAngle;
import org.espalier.patient.LegAnswer;
import org.espalier.patient.LegExamination;
import org.espalier.patient.LegSign;
import org.espalier.science.quantity.Angle;

/** What the hands of the demonstration find at a visit: bowed legs turn inwards and open laterally, others do not. */
final class DemoFinding {

    private static final double BOWED = 92;

    private DemoFinding() {}

    static ClinicalExamination of(DemoStory story, DemoVisit visit, LocalDate day) {
        return new ClinicalExamination(
                day,
                null,
                null,
                leg(story, visit, visit.right(), 0),
                leg(story, visit, visit.left(), 2),
                null,
                null,
                null);
    }

    private static LegExamination leg(DemoStory story, DemoVisit visit, DemoKnee knee, int apart) {
        double varus = knee.mLDFA().degrees() - knee.mMPTA().degrees();
        boolean turnedIn = story.diagnosis().isTibiaVara() && varus > 2;
        double thighFoot = Math.rint(turnedIn ? -8 - varus / 3 : 10 + visit.ageMonths() % 5.0) + apart;
        return new LegExamination(
                Map.of(
                        LegAngle.THIGH_FOOT, Angle.ofDegrees(thighFoot),
                        LegAngle.FOOT_PROGRESSION, Angle.ofDegrees(Math.rint(thighFoot / 2)),
                        LegAngle.HIP_INTERNAL_ROTATION, Angle.ofDegrees(50 + apart),
                        LegAngle.HIP_EXTERNAL_ROTATION, Angle.ofDegrees(45 - apart)),
                Map.of(
                        LegSign.LATERAL_LAXITY,
                        laxity(knee),
                        LegSign.THRUST,
                        knee.mLDFA().degrees() > BOWED ? LegAnswer.Thrust.VARUS : LegAnswer.Thrust.NONE));
    }

    private static LegAnswer laxity(DemoKnee knee) {
        double opens = knee.jlca().degrees();
        if (opens < 2) {
            return LegAnswer.Laxity.NONE;
        }
        return opens < 4 ? LegAnswer.Laxity.ONE : LegAnswer.Laxity.TWO;
    }
}
