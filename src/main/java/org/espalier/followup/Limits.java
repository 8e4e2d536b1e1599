package org.espalier.followup;

/**
 * The intervals and limits of a site. The defaults are judged, not published; a site changes them, signed and dated.
 *
 * @param firstLookDays from registering to the first look
 * @param watchedYoungMonths a watched bow under three years
 * @param watchedOlderMonths a watched limb from three years on
 * @param plannedMonths planned or listed
 * @param bracedMonths in a brace
 * @param woundDays the wound after a plate
 * @param motionDays motion of the knee after a plate
 * @param firstFilmMonths the first film after a plate
 * @param tetheredMonths the longest between looks with a plate in
 * @param tetheredYoungMonths the same under six years or with bone disease
 * @param pastTargetDegrees how far past its target an angle may go
 * @param pastTargetPercent the chance of more that is borne, in percent
 * @param waitMonths from look to theatre until the site's records tell
 * @param releasedMonths after release, for two years
 * @param releasedLaterMonths after release, later
 * @param healingDays after an osteotomy, while a cast can be wedged
 * @param welfareAfter how often not brought before the question of welfare is raised
 */
public record Limits(
        int firstLookDays,
        int watchedYoungMonths,
        int watchedOlderMonths,
        int plannedMonths,
        int bracedMonths,
        int woundDays,
        int motionDays,
        int firstFilmMonths,
        int tetheredMonths,
        int tetheredYoungMonths,
        double pastTargetDegrees,
        double pastTargetPercent,
        double waitMonths,
        int releasedMonths,
        int releasedLaterMonths,
        int healingDays,
        int welfareAfter) {

    /** What holds at a site that has signed nothing else. */
    public static final Limits DEFAULTS = new Limits(28, 6, 12, 3, 3, 14, 42, 3, 6, 4, 2, 2, 1, 6, 12, 14, 2);

    public Limits {
        demand(firstLookDays, 1, 180, "days to the first look");
        demand(watchedYoungMonths, 1, 12, "months for a watched bow");
        demand(watchedOlderMonths, 1, 24, "months for a watched limb");
        demand(plannedMonths, 1, 12, "months when planned");
        demand(bracedMonths, 1, 12, "months in a brace");
        demand(woundDays, 1, 42, "days to the wound visit");
        demand(motionDays, 7, 120, "days to the motion visit");
        demand(firstFilmMonths, 1, 6, "months to the first film");
        demand(tetheredMonths, 1, 6, "months with a plate in");
        demand(tetheredYoungMonths, 1, 6, "months with a plate in when young");
        demand(pastTargetDegrees, 0, 10, "degrees past target");
        demand(pastTargetPercent, 0.1, 25, "percent past target");
        demand(waitMonths, 0, 24, "months to theatre");
        demand(releasedMonths, 1, 12, "months after release");
        demand(releasedLaterMonths, 1, 12, "months later after release");
        demand(healingDays, 1, 60, "days after an osteotomy");
        demand(welfareAfter, 1, 10, "times not brought");
    }

    /** The chance of going past target that is borne, 0 to 1. */
    double pastTargetChance() {
        return pastTargetPercent / 100;
    }

    private static void demand(double value, double least, double most, String what) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(what + ": " + value + " is not between " + least + " and " + most);
        }
    }
}
