package org.espalier.treatment;

import java.util.List;
import java.util.stream.Stream;

/** What can be done to a physis or a limb. */
public enum ProcedureKind {
    PLATE_PLACED(Effect.PUTS_IN, Site.PLATE),
    METAPHYSEAL_SCREW_OUT(Effect.SCREW_OUT, Site.PLATE),
    METAPHYSEAL_SCREW_IN(Effect.SCREW_IN, Site.PLATE),
    METAPHYSEAL_SCREW_EXCHANGED(Effect.SCREW_IN_PLACE, Site.PLATE),
    EPIPHYSEAL_SCREW_OUT(Effect.SCREW_OUT, Site.PLATE),
    EPIPHYSEAL_SCREW_IN(Effect.SCREW_IN, Site.PLATE),
    EPIPHYSEAL_SCREW_EXCHANGED(Effect.SCREW_IN_PLACE, Site.PLATE),
    PLATE_MOVED(Effect.MOVES, Site.PLATE),
    PLATE_OUT(Effect.TAKES_OUT, Site.PLATE),
    STAPLE_PLACED(Effect.PUTS_IN, Site.PLATE),
    STAPLE_OUT(Effect.TAKES_OUT, Site.PLATE),
    TRANSPHYSEAL_SCREW_PLACED(Effect.PUTS_IN, Site.PLATE),
    TRANSPHYSEAL_SCREW_OUT(Effect.TAKES_OUT, Site.PLATE),
    BROKEN_SCREW_RETRIEVED(Effect.NONE, Site.PHYSIS),
    PERMANENT_HEMIEPIPHYSIODESIS(Effect.ARRESTS, Site.PLATE),
    PERMANENT_EPIPHYSIODESIS(Effect.ARRESTS, Site.PHYSIS),
    BAR_RESECTED(Effect.NONE, Site.PHYSIS),
    PLATEAU_ELEVATED(Effect.NONE, Site.PHYSIS),
    OSTEOTOMY(Effect.NONE, Site.LIMB),
    DEROTATION(Effect.NONE, Site.LIMB),
    FRAME_ON(Effect.FRAME_ON, Site.LIMB),
    FRAME_ADJUSTED(Effect.NONE, Site.LIMB),
    FRAME_OFF(Effect.FRAME_OFF, Site.LIMB),
    FIXATION_OUT(Effect.FIXATION_OUT, Site.LIMB),
    CAST_ON(Effect.CAST_ON, Site.LIMB),
    CAST_WEDGED(Effect.NONE, Site.LIMB),
    CAST_OFF(Effect.CAST_OFF, Site.LIMB),
    BRACE_ON(Effect.BRACE_ON, Site.LIMB),
    BRACE_OFF(Effect.BRACE_OFF, Site.LIMB),
    WASHOUT(Effect.NONE, Site.LIMB),
    MANIPULATION(Effect.NONE, Site.LIMB),
    ARTHROGRAM(Effect.NONE, Site.LIMB),
    OTHER(Effect.NONE, Site.LIMB);

    /** What it does to what is in place. */
    enum Effect {
        PUTS_IN,
        TAKES_OUT,
        SCREW_OUT,
        SCREW_IN,
        SCREW_IN_PLACE,
        MOVES,
        ARRESTS,
        CAST_ON,
        CAST_OFF,
        FRAME_ON,
        FRAME_OFF,
        FIXATION_OUT,
        BRACE_ON,
        BRACE_OFF,
        NONE
    }

    private enum Site {
        /** On one side of one physis. */
        PLATE,
        PHYSIS,
        /** On the limb; a physis may be named and need not be. */
        LIMB
    }

    private static final List<ProcedureKind> OUTSIDE_THEATRE =
            List.of(FRAME_ADJUSTED, CAST_ON, CAST_WEDGED, CAST_OFF, BRACE_ON, BRACE_OFF);

    private final Effect effect;
    private final Site site;

    ProcedureKind(Effect effect, Site site) {
        this.effect = effect;
        this.site = site;
    }

    Effect effect() {
        return effect;
    }

    public boolean needsPhysis() {
        return site != Site.LIMB;
    }

    public boolean needsPlateSide() {
        return site == Site.PLATE;
    }

    /** Whether something comes to hold one side of a physis, so that the bone turns. */
    public boolean turnsBone() {
        return site == Site.PLATE && (effect == Effect.PUTS_IN || effect == Effect.ARRESTS);
    }

    /** Whether something comes to hold a physis. */
    public boolean tethers() {
        return effect == Effect.PUTS_IN || effect == Effect.ARRESTS;
    }

    /** Whether something is put in that can come out again. */
    public boolean putsIn() {
        return effect == Effect.PUTS_IN;
    }

    /** Whether the whole of what is in comes out. */
    public boolean takesOut() {
        return effect == Effect.TAKES_OUT;
    }

    /** Whether it is done to something that is in place already. */
    public boolean isOnImplant() {
        return switch (effect) {
            case TAKES_OUT, SCREW_OUT, SCREW_IN, SCREW_IN_PLACE, MOVES -> true;
            default -> false;
        };
    }

    /** Whether something can go in with it. */
    public boolean takesPieces() {
        return !isOutsideTheatre() && !takesFixationOut() && effect != Effect.TAKES_OUT && effect != Effect.SCREW_OUT;
    }

    /** Whether something that was in comes out with it, and goes somewhere. */
    public boolean bringsPiecesOut() {
        return takesFixationOut()
                || effect == Effect.TAKES_OUT
                || effect == Effect.SCREW_OUT
                || effect == Effect.SCREW_IN_PLACE;
    }

    /**
     * Whether what holds a cut bone comes out with it: a frame with its pins and wires, or plate, screws and wires
     * inside.
     */
    public boolean takesFixationOut() {
        return effect == Effect.FRAME_OFF || effect == Effect.FIXATION_OUT;
    }

    /** What takes out the pieces that this puts in when they belong to no implant of a physis. */
    public ProcedureKind fixationOut() {
        return this == FRAME_ON || this == FRAME_ADJUSTED ? FRAME_OFF : FIXATION_OUT;
    }

    /** The screw it is about, if it is about one of a plate. */
    Screw screw() {
        return name().startsWith("METAPHYSEAL") ? Screw.METAPHYSEAL : Screw.EPIPHYSEAL;
    }

    /** Whether a nurse may record it: it needs no theatre. */
    public boolean isOutsideTheatre() {
        return OUTSIDE_THEATRE.contains(this);
    }

    /** Whether a bone is cut, which then heals. */
    public boolean cutsBone() {
        return this == OSTEOTOMY || this == DEROTATION || this == PLATEAU_ELEVATED;
    }

    /** Whether the screw is another afterwards, or holds elsewhere. */
    boolean renews(Screw screw) {
        return switch (effect) {
            case MOVES -> true;
            case SCREW_IN, SCREW_IN_PLACE -> screw() == screw;
            default -> false;
        };
    }

    /** What puts in the kind of implant that this takes out or changes. */
    ProcedureKind placing() {
        return switch (this) {
            case STAPLE_OUT -> STAPLE_PLACED;
            case TRANSPHYSEAL_SCREW_OUT -> TRANSPHYSEAL_SCREW_PLACED;
            default -> PLATE_PLACED;
        };
    }

    /** What can be done to something that this put in. */
    public List<ProcedureKind> onIt() {
        return Stream.of(values())
                .filter(kind -> kind.isOnImplant() && kind.placing() == this)
                .toList();
    }

    /** The questions that belong to it beside the six facts. */
    public List<Question> questions() {
        return switch (this) {
            case PLATE_PLACED -> Question.of(Question.Group.PLATE);
            case OSTEOTOMY, DEROTATION, PLATEAU_ELEVATED ->
                Question.of(Question.Group.OSTEOTOMY_WORDS, Question.Group.OSTEOTOMY);
            default -> List.of();
        };
    }
}
