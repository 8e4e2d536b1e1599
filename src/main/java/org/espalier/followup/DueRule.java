package org.espalier.followup;

import java.time.LocalDate;
import java.util.Optional;

/** A rule that says by when to look at a growth plate; the earliest day of all rules and plates is the visit's. */
public enum DueRule {

    /** A child who was registered and has not come yet. */
    FIRST_LOOK {
        @Override
        Optional<LocalDate> lookBy(CareFacts care, PlateFacts plate, Limits limits) {
            return care.lastSeen().isPresent()
                    ? Optional.empty()
                    : Optional.of(care.since().plusDays(limits.firstLookDays()));
        }
    },

    /** A bow or knock-knee under three years is seen again while it may still straighten by itself. */
    WATCHED_YOUNG {
        @Override
        Optional<LocalDate> lookBy(CareFacts care, PlateFacts plate, Limits limits) {
            return watched(care, plate, limits.watchedYoungMonths(), isUnder(care, WATCHED_YOUNG_YEARS));
        }
    },

    /** A watched limb from three years on. */
    WATCHED_OLDER {
        @Override
        Optional<LocalDate> lookBy(CareFacts care, PlateFacts plate, Limits limits) {
            return watched(care, plate, limits.watchedOlderMonths(), !isUnder(care, WATCHED_YOUNG_YEARS));
        }
    },

    /** From that day on a plate would not come too soon. */
    PLATE_FROM {
        @Override
        Optional<LocalDate> lookBy(CareFacts care, PlateFacts plate, Limits limits) {
            return plate.following() == Following.WATCHED
                    ? plate.notBefore().filter(day -> day.isAfter(care.lastLook()))
                    : Optional.empty();
        }
    },

    /**
     * Early tibia vara is decided before the fourth birthday, with a plate in too, should it not work: treated by then
     * it recurs less.
     */
    FOURTH_BIRTHDAY {
        @Override
        Optional<LocalDate> lookBy(CareFacts care, PlateFacts plate, Limits limits) {
            boolean open = plate.following().isUndecided() || plate.following().hasPlate();
            return care.tibiaVara() && open ? inTime(care, plate, care.birth().plusYears(4)) : Optional.empty();
        }
    },

    /** Before the window closes, the wait for theatre taken off; of a plate that is in, should it do too little. */
    WINDOW {
        @Override
        Optional<LocalDate> lookBy(CareFacts care, PlateFacts plate, Limits limits) {
            return plate.following() == Following.MATURE
                    ? Optional.empty()
                    : plate.window().flatMap(closes -> inTime(care, plate, closes));
        }
    },

    BRACED {
        @Override
        Optional<LocalDate> lookBy(CareFacts care, PlateFacts plate, Limits limits) {
            return every(care, plate, Following.BRACED, limits.bracedMonths());
        }
    },

    /** Planned, or listed for another operation while a plate is in. */
    PLANNED {
        @Override
        Optional<LocalDate> lookBy(CareFacts care, PlateFacts plate, Limits limits) {
            return plate.following() == Following.PLANNED || plate.listed()
                    ? every(care, plate, plate.following(), limits.plannedMonths())
                    : Optional.empty();
        }
    },

    /** The wound after a plate was placed. */
    WOUND {
        @Override
        Optional<LocalDate> lookBy(CareFacts care, PlateFacts plate, Limits limits) {
            boolean seen = care.lastLook().isAfter(plate.since());
            return plate.following() == Following.TETHERED && !seen
                    ? Optional.of(plate.since().plusDays(limits.woundDays()))
                    : Optional.empty();
        }
    },

    /** The knee's motion after a plate was placed. */
    MOTION {
        @Override
        Optional<LocalDate> lookBy(CareFacts care, PlateFacts plate, Limits limits) {
            boolean seen = care.lastLook().isAfter(plate.since().plusDays(limits.woundDays() * 2L));
            return plate.following() == Following.TETHERED && !seen
                    ? Optional.of(plate.since().plusDays(limits.motionDays()))
                    : Optional.empty();
        }
    },

    /** No film since the plate: nobody knows what it does. */
    FIRST_FILM {
        @Override
        Optional<LocalDate> lookBy(CareFacts care, PlateFacts plate, Limits limits) {
            return plate.isUnknownSincePlate()
                    ? Optional.of(plate.since().plusMonths(limits.firstFilmMonths()))
                    : Optional.empty();
        }
    },

    /** The latest day on which the chance of going past the target, the wait for theatre on top, is still borne. */
    PAST_TARGET {
        @Override
        Optional<LocalDate> lookBy(CareFacts care, PlateFacts plate, Limits limits) {
            return plate.following().hasPlate()
                    ? plate.outlook().flatMap(outlook -> outlook.lastBearable(care, limits))
                    : Optional.empty();
        }
    },

    /** With a plate in never longer than this, whatever the forecast says. */
    PLATE_LONGEST {
        @Override
        Optional<LocalDate> lookBy(CareFacts care, PlateFacts plate, Limits limits) {
            return plate.following().hasPlate()
                    ? Optional.of(lookedOrPlaced(care, plate).plusMonths(limits.tetheredMonths()))
                    : Optional.empty();
        }
    },

    /** The same, shorter, under six years and with bone disease. */
    PLATE_LONGEST_YOUNG {
        @Override
        Optional<LocalDate> lookBy(CareFacts care, PlateFacts plate, Limits limits) {
            boolean quick = care.boneDisease() || isUnder(care, QUICK_YEARS);
            return plate.following().hasPlate() && quick
                    ? Optional.of(lookedOrPlaced(care, plate).plusMonths(limits.tetheredYoungMonths()))
                    : Optional.empty();
        }
    },

    /** After release, while rebound is likeliest. */
    RELEASED {
        @Override
        Optional<LocalDate> lookBy(CareFacts care, PlateFacts plate, Limits limits) {
            return isEarly(care, plate)
                    ? every(care, plate, Following.RELEASED, limits.releasedMonths())
                    : Optional.empty();
        }
    },

    /** Later after release, until growth plates are seen closed. */
    RELEASED_LATER {
        @Override
        Optional<LocalDate> lookBy(CareFacts care, PlateFacts plate, Limits limits) {
            return isEarly(care, plate)
                    ? Optional.empty()
                    : every(care, plate, Following.RELEASED, limits.releasedLaterMonths());
        }
    },

    /** After an osteotomy: first while a cast can be wedged, then as it heals; in a frame every time as soon. */
    HEALING {
        @Override
        Optional<LocalDate> lookBy(CareFacts care, PlateFacts plate, Limits limits) {
            return plate.healing().map(healing -> {
                boolean seen = !care.lastLook().isBefore(healing.since().plusDays(limits.healingDays() / 2));
                var from = notBefore(healing.since(), care.lastLook());
                return seen
                        ? from.plusDays(healing.inFrame() ? limits.healingDays() : limits.motionDays())
                        : healing.since().plusDays(limits.healingDays());
            });
        }
    },

    /** Seen closed; looked at until care is ended. */
    CLOSED {
        @Override
        Optional<LocalDate> lookBy(CareFacts care, PlateFacts plate, Limits limits) {
            return plate.following() == Following.MATURE
                    ? Optional.of(care.lastLook().plusMonths(limits.releasedLaterMonths()))
                    : Optional.empty();
        }
    },

    /** Somebody asked for it. */
    ASKED {
        @Override
        Optional<LocalDate> lookBy(CareFacts care, PlateFacts plate, Limits limits) {
            return care.asked();
        }
    };

    private static final int WATCHED_YOUNG_YEARS = 3;
    private static final int QUICK_YEARS = 6;
    private static final int EARLY_AFTER_RELEASE_YEARS = 2;

    /** By when to look at the growth plate; empty when the rule is not about it. */
    abstract Optional<LocalDate> lookBy(CareFacts care, PlateFacts plate, Limits limits);

    /**
     * In time for theatre before a day. Once that is too late a physis without a plate is to be decided at once; with
     * one, another look gains nothing.
     */
    private static Optional<LocalDate> inTime(CareFacts care, PlateFacts plate, LocalDate before) {
        var day = care.beforeWait(before);
        boolean useful = plate.following().hasPlate() ? day.isAfter(care.lastLook()) : before.isAfter(care.lastLook());
        return useful ? Optional.of(notBefore(care.lastLook(), day)) : Optional.empty();
    }

    private static Optional<LocalDate> watched(CareFacts care, PlateFacts plate, int months, boolean applies) {
        return applies ? every(care, plate, Following.WATCHED, months) : Optional.empty();
    }

    private static Optional<LocalDate> every(CareFacts care, PlateFacts plate, Following following, int months) {
        return plate.following() == following && care.lastSeen().isPresent()
                ? Optional.of(lookedOrPlaced(care, plate).plusMonths(months))
                : Optional.empty();
    }

    private static LocalDate lookedOrPlaced(CareFacts care, PlateFacts plate) {
        return notBefore(plate.since(), care.lastLook());
    }

    private static boolean isUnder(CareFacts care, int years) {
        return care.lastLook().isBefore(care.birth().plusYears(years));
    }

    private static boolean isEarly(CareFacts care, PlateFacts plate) {
        return care.lastLook().isBefore(plate.since().plusYears(EARLY_AFTER_RELEASE_YEARS));
    }

    private static LocalDate notBefore(LocalDate first, LocalDate day) {
        return day.isBefore(first) ? first : day;
    }
}
