package org.espalier.treatment;

import java.time.LocalDate;
import java.util.Optional;
import org.espalier.patient.Bone;
import org.espalier.patient.BoneEnd;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;

/**
 * A wanted procedure on one physis or limb. It is listed once theatre was asked for; listed stands beside the state.
 *
 * @param on the day it was decided
 * @param bone null when the whole limb is meant; its end likewise
 * @param plateSide null where the procedure has none
 * @param deformity what is to be corrected; required for whatever tethers one side
 * @param implants what is to lie ready, in words
 * @param intent what the surgeon means to reach
 * @param expectation what the surgeon expects, to be asked again later
 * @param askedOn when theatre was asked for
 * @param theatreOn the day in theatre
 * @param pastTarget how far past the target the limb is expected to be on that day; negative while short of it
 */
public record Plan(
        LocalDate on,
        ProcedureKind kind,
        Side side,
        @Nullable Bone bone,
        @Nullable BoneEnd end,
        @Nullable PlateSide plateSide,
        @Nullable Deformity deformity,
        @Nullable String implants,
        @Nullable String intent,
        @Nullable String expectation,
        @Nullable LocalDate askedOn,
        @Nullable LocalDate theatreOn,
        @Nullable Angle pastTarget)
        implements TreatmentFact {

    public Plan {
        if ((bone == null) != (end == null)) {
            throw new IllegalArgumentException("A physis has a bone and an end: " + bone + ", " + end);
        }
        if (kind.needsPhysis() && bone == null) {
            throw new IllegalArgumentException(kind + " is planned for a physis");
        }
        if (kind.needsPlateSide() && plateSide == null) {
            throw new IllegalArgumentException(kind + " is planned with its side of the bone");
        }
        if (kind.turnsBone() && deformity == null) {
            throw new IllegalArgumentException(kind + " is planned against a deformity");
        }
        if (theatreOn != null && (askedOn == null || theatreOn.isBefore(askedOn))) {
            throw new IllegalArgumentException("Theatre is asked for before its day, " + theatreOn);
        }
        if (askedOn != null && askedOn.isBefore(on)) {
            throw new IllegalArgumentException("Decided on " + on + ", so not asked for on " + askedOn);
        }
        implants = Written.tidy(implants, Act.IMPLANTS_LENGTH);
        intent = Written.tidy(intent, REMARK_LENGTH);
        expectation = Written.tidy(expectation, REMARK_LENGTH);
    }

    /** A decision, not yet listed. */
    public static Plan decided(
            LocalDate on,
            ProcedureKind kind,
            PhysisKey physis,
            @Nullable PlateSide plateSide,
            @Nullable Deformity deformity) {
        return new Plan(
                on,
                kind,
                physis.side(),
                physis.bone(),
                physis.end(),
                plateSide,
                deformity,
                null,
                null,
                null,
                null,
                null,
                null);
    }

    /** The same, listed: theatre asked for, with its day when there is one. */
    public Plan listed(@Nullable LocalDate asked, @Nullable LocalDate theatre, @Nullable Angle past) {
        return new Plan(
                on, kind, side, bone, end, plateSide, deformity, implants, intent, expectation, asked, theatre, past);
    }

    public boolean isListed() {
        return askedOn != null;
    }

    /** The physis it is about; empty when the whole limb is meant. */
    public Optional<PhysisKey> physis() {
        return bone == null || end == null ? Optional.empty() : Optional.of(new PhysisKey(side, bone, end));
    }
}
