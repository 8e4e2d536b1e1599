package org.espalier.benchmark;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.Supplier;
import org.espalier.film.FilmId;
import org.espalier.film.TestDoor;
import org.espalier.reading.DraftService;
import org.espalier.reading.MeasureRequest;
import org.espalier.reading.ReadingId;
import org.espalier.reading.TestReader;

/**
 * One answer while a hand moves, both limbs on the film: permission, draft and film looked up anew each time, circles
 * fitted, everything measured and put into words. Beside it one statement to the database, the least any answer could
 * cost.
 */
final class MeasureBenchmark {

    private static final int TIMES = 400;
    private static final double ANSWERED_MILLISECONDS = 8;

    private final DraftService drafts;
    private final TestDoor.Sender surgeon;
    private final ReadingId draft;
    private final MeasureRequest request;

    private MeasureBenchmark(TestReader reader, DraftService drafts) {
        this.drafts = drafts;
        surgeon = reader.surgeon();
        var child = reader.child(surgeon, LocalDate.of(2016, 5, 20));
        var film = reader.film(surgeon, child, LocalDate.of(2025, 5, 20));
        var begun = surgeon.does(() -> drafts.begin(film));
        draft = begun.id();
        request = reader.movingHand(begun);
    }

    public static void main(String[] arguments) throws Exception {
        boolean met;
        try (var context = BenchmarkHouse.open()) {
            met = new MeasureBenchmark(context.getBean(TestReader.class), context.getBean(DraftService.class)).run();
        }
        System.exit(met ? 0 : 1);
    }

    private boolean run() {
        var answers = times(() -> drafts.measure(draft, request));
        var least = times(() -> drafts.find(new FilmId(draft.value())));
        say(
                "answer while a hand moves, median of " + TIMES,
                answers[TIMES / 2],
                "ms, goal under " + ANSWERED_MILLISECONDS);
        say("answer while a hand moves, p95", answers[(int) (TIMES * 0.95)], "ms");
        say("looking for a draft and nothing else, median", least[TIMES / 2], "ms");
        return answers[TIMES / 2] < ANSWERED_MILLISECONDS;
    }

    private double[] times(Supplier<?> work) {
        var times = new double[TIMES];
        for (int i = -TIMES; i < TIMES; i++) {
            long start = System.nanoTime();
            var _ = surgeon.does(work);
            times[Math.max(0, i)] = (System.nanoTime() - start) / 1e6;
        }
        Arrays.sort(times);
        return times;
    }

    private static void say(String what, double figure, String unit) {
        System.out.printf(Locale.ROOT, "%-55s %9.2f %s%n", what, figure, unit);
    }
}
