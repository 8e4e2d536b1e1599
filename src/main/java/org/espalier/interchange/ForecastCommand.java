package org.espalier.interchange;

import java.io.IOException;
import java.io.PrintStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.espalier.science.forecast.ReachingTime;
import org.espalier.science.forecast.TetherForecast;

/**
 * The command that forecasts past courses as they could have been forecast then, without database and without server:
 * so that a clinic sees how honest the forecasts would have been.
 */
public final class ForecastCommand {

    private static final int DONE = 0;
    private static final int REFUSED = 2;
    private static final int DECIMALS = 4;
    private static final double WITHIN_MONTHS = 36;
    private static final double[] LEVELS =
            IntStream.rangeClosed(1, 19).mapToDouble(i -> i / 20.0).toArray();

    private static final String USAGE = """
            Usage: forecast [--partial] FOLDER > FORECASTS.csv

            FOLDER holds children.csv, limbs.csv, films.csv, events.csv and tasks.csv, and may hold earlier/ with the
            first four for limbs to learn the centre's rates from. Of each task only what was known on its day is used.
            Nothing is written unless every row is good;
            --partial  forecasts from the good rows and lists the others.
            """;

    private static final CSVFormat OUTPUT = CSVFormat.RFC4180
            .builder()
            .setRecordSeparator('\n')
            .setHeader(header())
            .get();

    private record Known(String limbId, int films) {}

    private ForecastCommand() {}

    /**
     * Runs the command.
     *
     * @param args what follows the command's name
     * @param out where the forecasts go, as UTF-8
     * @param err where everything said to a person goes
     * @return the exit status: 0 when all was forecast, 2 when anything was refused
     */
    public static int run(List<String> args, PrintStream out, PrintStream err) {
        List<String> names = new ArrayList<>(args);
        boolean partial = names.remove("--partial");
        if (names.size() != 1 || names.getFirst().startsWith("-")) {
            err.print(USAGE);
            return names.equals(List.of("--help")) ? DONE : REFUSED;
        }
        try {
            return forecast(Path.of(names.getFirst()), partial, out, err);
        } catch (NoSuchFileException e) {
            err.println(e.getFile() + " is not there. Check the folder and try again.");
            return REFUSED;
        } catch (IOException e) {
            err.println(names.getFirst() + " could not be read: " + e.getMessage() + ". Check the name and try again.");
            return REFUSED;
        }
    }

    private static int forecast(Path folder, boolean partial, PrintStream out, PrintStream err) throws IOException {
        var problems = new ArrayList<FileProblem>();
        Map<String, PastLimb> limbs = PastCourses.read(folder, problems);
        List<ForecastTask> tasks = ForecastTask.read(folder, limbs, problems);
        Path earlier = folder.resolve("earlier");
        Map<String, PastLimb> before = Files.isDirectory(earlier) ? PastCourses.read(earlier, problems) : Map.of();
        problems.forEach(problem -> err.println(problem.asText()));
        if (!problems.isEmpty() && !partial) {
            err.println("Nothing was forecast: mend the rows above, or forecast the others with --partial.");
            return REFUSED;
        }
        out.write(forecasts(tasks, new CentreThen(before.values(), limbs.values()))
                .getBytes(StandardCharsets.UTF_8));
        out.flush();
        return problems.isEmpty() ? DONE : REFUSED;
    }

    private static String forecasts(List<ForecastTask> tasks, CentreThen centre) throws IOException {
        Map<Known, List<ForecastTask>> byKnown = new LinkedHashMap<>();
        for (ForecastTask task : tasks) {
            byKnown.computeIfAbsent(new Known(task.limbId(), task.films()), _ -> new ArrayList<>())
                    .add(task);
        }
        var text = new StringBuilder();
        try (var printer = new CSVPrinter(text, OUTPUT)) {
            for (List<ForecastTask> same : byKnown.values()) {
                print(same, centre, printer);
            }
        }
        return text.toString();
    }

    private static void print(List<ForecastTask> tasks, CentreThen centre, CSVPrinter printer) throws IOException {
        ForecastTask any = tasks.getFirst();
        TetherForecast forecast =
                TetherForecast.of(any.limb().afterFilms(any.films()), centre.ratesFor(any.limb(), any.origin()));
        for (ForecastTask task : tasks) {
            double[] angles = forecast.film(task.limb().months(task.target())).quantiles(LEVELS);
            print(printer, task, "angle", task.horizon(), "dev", texts(Arrays.stream(angles)), "");
        }
        ReachingTime reaching = forecast.reachingTarget();
        double origin = any.limb().months(any.origin());
        Stream<String> months = Arrays.stream(LEVELS)
                .mapToObj(level -> reaching.quantile(level))
                .map(since -> since.isPresent() ? decimal(Math.max(0, since.getAsDouble() - origin)) : "inf");
        print(printer, any, "cross", "", "months", months, decimal(reaching.by(origin + WITHIN_MONTHS)));
        print(
                printer,
                any,
                "fail",
                "",
                "",
                Stream.generate(() -> "").limit(LEVELS.length),
                decimal(forecast.failing()));
    }

    private static void print(
            CSVPrinter printer,
            ForecastTask task,
            String kind,
            String horizon,
            String unit,
            Stream<String> quantiles,
            String probability)
            throws IOException {
        printer.printRecord(Stream.of(
                        Stream.of(task.limbId(), Integer.toString(task.films()), kind, horizon, unit),
                        quantiles,
                        Stream.of(probability))
                .flatMap(cells -> cells)
                .toList());
    }

    private static Stream<String> texts(DoubleStream values) {
        return values.mapToObj(ForecastCommand::decimal);
    }

    private static String decimal(double value) {
        return new BigDecimal(value).setScale(DECIMALS, RoundingMode.HALF_UP).toPlainString();
    }

    private static String[] header() {
        return Stream.of(
                        Stream.of("limb_id", "n_films", "kind", "horizon_months", "unit"),
                        IntStream.rangeClosed(1, 19).mapToObj(i -> String.format(Locale.ROOT, "q%02d", 5 * i)),
                        Stream.of("p"))
                .flatMap(cells -> cells)
                .toArray(String[]::new);
    }
}
