package org.espalier.interchange;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One forecast that is asked for.
 *
 * @param limbId the limb's name
 * @param limb the limb
 * @param films after how many of its films
 * @param origin the day of the last of them
 * @param horizon months ahead, as it was written
 * @param target the day asked for
 */
record ForecastTask(String limbId, PastLimb limb, int films, LocalDate origin, String horizon, LocalDate target) {

    private static final String LIMB_ID = "limb_id";
    private static final String FILMS = "n_films";
    private static final String ORIGIN = "origin_date";
    private static final String HORIZON = "horizon_months";
    private static final String TARGET = "target_date";

    static List<ForecastTask> read(Path folder, Map<String, PastLimb> limbs, List<FileProblem> problems)
            throws IOException {
        var tasks = new ArrayList<ForecastTask>();
        PastCourses.each(
                folder.resolve("tasks.csv"), List.of(LIMB_ID, FILMS, ORIGIN, HORIZON, TARGET), problems, cells -> read(
                                cells, limbs)
                        .ifPresent(tasks::add));
        return tasks;
    }

    private static Optional<ForecastTask> read(Cells cells, Map<String, PastLimb> limbs) {
        Optional<String> id = cells.name(LIMB_ID);
        Optional<PastLimb> limb = cells.named(LIMB_ID, limbs, "limbs.csv");
        Optional<Double> films = cells.number(FILMS, 1, 1000);
        Optional<LocalDate> origin = cells.date(ORIGIN);
        Optional<Double> months = cells.number(HORIZON, 0, 300);
        Optional<LocalDate> target = cells.date(TARGET);
        if (id.isEmpty()
                || limb.isEmpty()
                || films.isEmpty()
                || origin.isEmpty()
                || months.isEmpty()
                || target.isEmpty()) {
            return Optional.empty();
        }
        int number = (int) Math.round(films.orElseThrow());
        int known = limb.orElseThrow().films().size();
        if (known < number) {
            cells.refuse(FILMS, FileReason.FEW_FILMS, known);
            return Optional.empty();
        }
        LocalDate last = limb.orElseThrow().films().get(number - 1).day();
        if (!last.equals(origin.orElseThrow())) {
            cells.refuse(ORIGIN, FileReason.FILM_OF_ANOTHER_DAY, number, last);
            return Optional.empty();
        }
        if (target.orElseThrow().isBefore(last)) {
            cells.refuse(TARGET, FileReason.BEFORE_LAST_FILM);
            return Optional.empty();
        }
        return Optional.of(new ForecastTask(
                id.orElseThrow(), limb.orElseThrow(), number, last, cells.text(HORIZON), target.orElseThrow()));
    }
}
