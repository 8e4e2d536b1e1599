package org.espalier.interchange;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;
import org.espalier.science.forecast.GoalTally;
import org.espalier.science.forecast.TetherForecast;
import org.espalier.science.forecast.TetheredPhysis;

/**
 * A folder of past courses with the truth beside it, forecast as {@code espalier forecast} does and judged by the
 * measures of the goals. Its films can be made noisier, those that are known and those that came.
 */
public final class PracticeCohort {

    /** The tibia's films are so much harder to read. */
    private static final double AT_THE_TIBIA = 1.3;

    private static final CSVFormat CSV =
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

    private final Path folder;
    private final Map<String, PastLimb> limbs;
    private final List<ForecastTask> tasks;
    private final CentreThen centre;

    private PracticeCohort(Path folder) throws IOException {
        this.folder = folder;
        var problems = new ArrayList<FileProblem>();
        limbs = PastCourses.read(folder, problems);
        tasks = ForecastTask.read(folder, limbs, problems);
        centre = new CentreThen(
                PastCourses.read(folder.resolve("earlier"), problems).values(), limbs.values());
        if (!problems.isEmpty()) {
            throw new IOException(problems.getFirst().asText());
        }
    }

    /** The cohort in a folder. */
    public static PracticeCohort in(Path folder) throws IOException {
        return new PracticeCohort(folder);
    }

    /**
     * The same limbs with worse films: a normal error added to every one, as large as said at the femur.
     *
     * @param degrees standard deviation at the femur
     * @param into an empty folder
     */
    public static PracticeCohort noisier(Path folder, double degrees, Path into) throws IOException {
        var chance = new SplittableRandom(8);
        for (String part : List.of("", "earlier/")) {
            Files.createDirectories(into.resolve(part));
            for (String name : List.of("children.csv", "limbs.csv", "events.csv")) {
                Files.copy(folder.resolve(part + name), into.resolve(part + name));
            }
            rewrite(
                    folder.resolve(part + "films.csv"),
                    into.resolve(part + "films.csv"),
                    "angle_deg",
                    row -> degrees
                            * (row.get("angle_name").equals("mLDFA") ? 1 : AT_THE_TIBIA)
                            * chance.nextGaussian());
        }
        Files.copy(folder.resolve("tasks.csv"), into.resolve("tasks.csv"));
        Files.createDirectories(into.resolve("truth"));
        Files.copy(folder.resolve("truth/limbs.csv"), into.resolve("truth/limbs.csv"));
        Map<String, String> sites = rows(folder.resolve("limbs.csv")).stream()
                .collect(Collectors.toMap(row -> row.get("limb_id"), row -> row.get("site")));
        rewrite(
                folder.resolve("truth/targets.csv"),
                into.resolve("truth/targets.csv"),
                "dev_film",
                row -> degrees
                        * ("distal femur".equals(sites.get(row.get("limb_id"))) ? 1 : AT_THE_TIBIA)
                        * chance.nextGaussian());
        return new PracticeCohort(into);
    }

    /** What is added to one row's number. */
    private interface Addition {
        double to(CSVRecord row);
    }

    private static void rewrite(Path from, Path to, String column, Addition addition) throws IOException {
        List<CSVRecord> rows = rows(from);
        try (var writer = Files.newBufferedWriter(to);
                var printer = new CSVPrinter(writer, CSVFormat.RFC4180)) {
            List<String> names = rows.getFirst().getParser().getHeaderNames();
            printer.printRecord(names);
            for (CSVRecord row : rows) {
                double number = Double.parseDouble(row.get(column)) + addition.to(row);
                printer.printRecord(names.stream()
                        .map(name -> name.equals(column) ? Double.toString(number) : row.get(name))
                        .toList());
            }
        }
    }

    private static List<CSVRecord> rows(Path file) throws IOException {
        try (var reader = Files.newBufferedReader(file);
                var parser = CSV.parse(reader)) {
            return parser.getRecords();
        }
    }

    /** How the forecasts did, by how many films they were made after. */
    public Map<Integer, GoalTally> goals() throws IOException {
        Map<String, CSVRecord> fates = rows(folder.resolve("truth/limbs.csv")).stream()
                .collect(Collectors.toMap(row -> row.get("limb_id"), row -> row, (first, _) -> first));
        Map<String, CSVRecord> targets = rows(folder.resolve("truth/targets.csv")).stream()
                .collect(Collectors.toMap(
                        row -> row.get("limb_id") + " " + row.get("n_films") + " " + row.get("target_date"),
                        row -> row));
        Map<String, List<ForecastTask>> sameKnown =
                tasks.stream().collect(Collectors.groupingBy(task -> task.limbId() + " " + task.films()));
        var tallies = new TreeMap<Integer, GoalTally>();
        sameKnown.forEach((name, same) -> {
            GoalTally tally = tallies.computeIfAbsent(same.getFirst().films(), _ -> new GoalTally());
            count(
                    same,
                    same.stream()
                            .map(task -> requireNonNull(targets.get(name + " " + task.target())))
                            .toList(),
                    requireNonNull(fates.get(same.getFirst().limbId())),
                    tally);
        });
        return tallies;
    }

    /** Counts the forecasts of one limb after the same films. */
    private void count(List<ForecastTask> same, List<CSVRecord> came, CSVRecord fate, GoalTally tally) {
        ForecastTask any = same.getFirst();
        TetheredPhysis known = any.limb().afterFilms(any.films());
        TetherForecast forecast = TetherForecast.of(known, centre.ratesFor(any.limb(), any.origin()));
        for (int i = 0; i < same.size(); i++) {
            double months = any.limb().months(same.get(i).target());
            double read = Double.parseDouble(came.get(i).get("dev_film"));
            tally.film(known, forecast.film(months), months, read);
        }
        tally.limb(forecast, crossed(came.getFirst(), known), failing(fate, any.origin()));
    }

    private static OptionalDouble crossed(CSVRecord target, TetheredPhysis known) {
        String months = target.get("months_to_cross");
        return months.equals("inf")
                ? OptionalDouble.empty()
                : OptionalDouble.of(known.lastFilm() + Double.parseDouble(months));
    }

    private static boolean failing(CSVRecord fate, LocalDate day) {
        String broken = fate.get("break_date");
        return fate.get("responder").equals("0")
                || (!broken.isEmpty() && LocalDate.parse(broken).isBefore(day));
    }
}
