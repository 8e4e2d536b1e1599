package org.espalier.followup;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Asks every rule about every growth plate: one visit covers them all, at the earliest day. */
final class DueBy {

    /** mLDFA: a smaller change cannot be told from reader error and positioning. */
    private static final double SHOWN_BY_A_FILM_DEG = 2.1;

    /** Where nothing is expected, a film older than this is worth taking anew at a look. */
    private static final int OLD_FILM_MONTHS = 5;

    /** Something is decided by what is seen, so that a film is taken whatever is expected. */
    private static final Set<DueRule> DECISIONS = EnumSet.of(
            DueRule.PLATE_FROM,
            DueRule.FOURTH_BIRTHDAY,
            DueRule.WINDOW,
            DueRule.PLANNED,
            DueRule.FIRST_FILM,
            DueRule.PAST_TARGET,
            DueRule.HEALING,
            DueRule.FIRST_LOOK);

    /** A look at skin and knee alone, or at what is closed. */
    private static final Set<DueRule> WITHOUT_FILM = EnumSet.of(DueRule.WOUND, DueRule.MOTION, DueRule.CLOSED);

    private record Proposal(LocalDate day, DueRule rule, PlateFacts plate) {}

    private DueBy() {}

    /**
     * By when to look at the child.
     *
     * @throws IllegalArgumentException when no growth plate is followed
     */
    static Due of(CareFacts care, Limits limits) {
        var first = proposals(care, limits)
                .min(Comparator.comparing(Proposal::day).thenComparing(Proposal::rule))
                .orElseThrow(() -> new IllegalArgumentException("no rule says when to look again"));
        return new Due(
                first.day(),
                listBy(care),
                decideBy(care, limits),
                isFilm(care, first),
                first.rule(),
                isAboutChild(first.rule())
                        ? Optional.empty()
                        : Optional.of(first.plate().plate()),
                risk(care, limits, first),
                HarmOfWaiting.of(care, limits));
    }

    private static Stream<Proposal> proposals(CareFacts care, Limits limits) {
        return care.plates().stream().flatMap(plate -> Arrays.stream(DueRule.values())
                .flatMap(rule -> rule.lookBy(care, plate, limits).stream().map(day -> new Proposal(day, rule, plate))));
    }

    private static boolean isAboutChild(DueRule rule) {
        return rule == DueRule.FIRST_LOOK || rule == DueRule.ASKED || rule == DueRule.FOURTH_BIRTHDAY;
    }

    /** Listed so that theatre comes as likely before as after the target. */
    private static Optional<LocalDate> listBy(CareFacts care) {
        return care.plates().stream()
                .filter(plate -> plate.following().hasPlate())
                .flatMap(plate -> plate.outlook().flatMap(Outlook::arrival).stream())
                .map(care::beforeWait)
                .min(Comparator.naturalOrder());
    }

    private static Optional<LocalDate> decideBy(CareFacts care, Limits limits) {
        return Stream.of(DueRule.FOURTH_BIRTHDAY, DueRule.WINDOW)
                .flatMap(rule -> care.plates().stream().flatMap(plate -> rule.lookBy(care, plate, limits).stream()))
                .min(Comparator.naturalOrder());
    }

    private static boolean isFilm(CareFacts care, Proposal first) {
        if (care.plates().stream().anyMatch(PlateFacts::screwBroken)) {
            return true;
        }
        return !WITHOUT_FILM.contains(first.rule())
                && (DECISIONS.contains(first.rule())
                        || care.plates().stream().anyMatch(plate -> isWorthAFilm(plate, first.day())));
    }

    private static boolean isWorthAFilm(PlateFacts plate, LocalDate day) {
        return plate.lastFilm()
                .map(film -> plate.outlook()
                        .map(outlook -> outlook.change(film, day) >= SHOWN_BY_A_FILM_DEG)
                        .orElseGet(() -> !film.plusMonths(OLD_FILM_MONTHS).isAfter(day)))
                .orElse(true);
    }

    private static Risk risk(CareFacts care, Limits limits, Proposal first) {
        if (first.rule() == DueRule.WINDOW || first.rule() == DueRule.FOURTH_BIRTHDAY) {
            return new Risk.WindowCloses();
        }
        return worstOutlook(care, limits, first.day())
                .<Risk>map(outlook -> new Risk.PastTarget(
                        chance(care, outlook, first.day(), limits),
                        chance(care, outlook, first.day().plusMonths(1), limits)))
                .orElseGet(Risk.NotKnown::new);
    }

    private static Optional<Outlook> worstOutlook(CareFacts care, Limits limits, LocalDate day) {
        List<Outlook> outlooks = care.plates().stream()
                .filter(plate -> plate.following().hasPlate())
                .flatMap(plate -> plate.outlook().stream())
                .toList();
        return outlooks.stream().max(Comparator.comparingDouble(one -> chance(care, one, day, limits)));
    }

    private static double chance(CareFacts care, Outlook outlook, LocalDate day, Limits limits) {
        return outlook.chancePast(care.afterWait(day), limits.pastTargetDegrees());
    }
}
