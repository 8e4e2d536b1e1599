package org.espalier.interchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** All courses here are invented. */
class ForecastCommandTests {

    private static final String CHILDREN = """
            child_id,sex,birth_date,diagnosis
            A,F,2008-03-01,idiopathic valgus
            B,M,2006-05-20,late-onset tibia vara
            """;
    private static final String LIMBS = """
            limb_id,child_id,side,plate_date,site,direction,bone_age_at_plate
            A-R,A,R,2019-03-01,distal femur,valgus,10.5
            B-L,B,L,2019-02-01,proximal tibia,varus,
            """;
    private static final String FILMS = """
            limb_id,date,angle_name,angle_deg,phase
            A-R,2019-02-20,mLDFA,79.0,before
            A-R,2019-06-10,mLDFA,81.2,plate
            A-R,2019-09-15,mLDFA,83.9,plate
            A-R,2020-09-15,mLDFA,87.5,after removal
            B-L,2019-01-20,mMPTA,76.0,before
            B-L,2019-05-10,mMPTA,76.4,plate
            B-L,2019-10-10,mMPTA,76.1,plate
            """;
    private static final String EVENTS = """
            limb_id,date,event
            A-R,2020-02-10,plate removed
            B-L,2019-10-10,broken screw seen
            """;
    private static final String TASKS = """
            limb_id,n_films,origin_date,horizon_months,target_date
            A-R,2,2019-06-10,3.0,2019-09-09
            A-R,2,2019-06-10,12.0,2020-06-09
            A-R,3,2019-09-15,3.0,2019-12-15
            B-L,2,2019-05-10,6.0,2019-11-09
            B-L,3,2019-10-10,6.0,2020-04-10
            """;

    @TempDir
    Path folder;

    private final Map<String, String> files = new TreeMap<>();

    private record Outcome(int status, String out, String err) {

        List<String[]> rows(String kind) {
            return out.lines()
                    .map(line -> line.split(",", -1))
                    .filter(cells -> cells[2].equals(kind))
                    .toList();
        }
    }

    @BeforeEach
    void files() {
        files.put("children.csv", CHILDREN);
        files.put("limbs.csv", LIMBS);
        files.put("films.csv", FILMS);
        files.put("events.csv", EVENTS);
        files.put("tasks.csv", TASKS);
    }

    @Test
    void writesAnglesDatesAndChancesForEachTask() throws IOException {
        Outcome outcome = forecast();
        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.status()).isZero();
        assertThat(outcome.out().lines().findFirst())
                .hasValue(
                        "limb_id,n_films,kind,horizon_months,unit,q05,q10,q15,q20,q25,q30,q35,q40,q45,q50,q55,q60,q65,"
                                + "q70,q75,q80,q85,q90,q95,p");
        assertThat(outcome.rows("angle")).hasSize(5);
        assertThat(outcome.rows("cross")).hasSize(4);
        assertThat(outcome.rows("fail")).hasSize(4);
        for (String[] row : outcome.rows("angle")) {
            double[] quantiles = quantiles(row);
            assertThat(quantiles).isSorted();
            assertThat(quantiles[18] - quantiles[0]).isBetween(2.0, 30.0);
        }
    }

    @Test
    void reckonsDegreesLeftTowardsTheTarget() throws IOException {
        double[] soon = quantiles(forecast().rows("angle").getFirst());
        assertThat(soon[9]).as("8 degrees of valgus, 2.2 gone after 3 months").isBetween(1.0, 6.0);
    }

    @Test
    void saysThatATargetMayNeverBeReached() throws IOException {
        String[] broken = forecast().rows("cross").getLast();
        assertThat(broken[23]).isEqualTo("inf");
        assertThat(Double.parseDouble(broken[24])).isLessThan(0.3);
    }

    @Test
    void countsASeenBreakOnlyFromTheDayItWasSeen() throws IOException {
        List<String[]> failing = forecast().rows("fail");
        assertThat(Double.parseDouble(failing.get(2)[24])).isBetween(0.1, 0.9);
        assertThat(Double.parseDouble(failing.get(3)[24])).isGreaterThan(0.999);
    }

    @Test
    void knowsNothingOfWhatCameLater() throws IOException {
        List<String> with = onlyTwoFilms(forecast());
        files.put("films.csv", FILMS.replace("83.9", "70.0").replace("87.5", "99.0"));
        files.put("events.csv", EVENTS.replace("2020-02-10", "2019-12-10"));
        assertThat(onlyTwoFilms(forecast())).isEqualTo(with);
    }

    private static List<String> onlyTwoFilms(Outcome outcome) {
        return outcome.out().lines().filter(line -> line.startsWith("A-R,2,")).toList();
    }

    @Test
    void learnsFromEarlierLimbs() throws IOException {
        Outcome published = forecast();
        Path earlier = Files.createDirectory(folder.resolve("earlier"));
        var children = new StringBuilder("child_id,sex,birth_date,diagnosis\n");
        var limbs = new StringBuilder("limb_id,child_id,side,plate_date,site,direction,bone_age_at_plate\n");
        var films = new StringBuilder("limb_id,date,angle_name,angle_deg,phase\n");
        for (int i = 0; i < 40; i++) {
            children.append("E").append(i).append(",F,2004-01-01,idiopathic valgus\n");
            limbs.append("E").append(i).append("R,E").append(i).append(",R,2015-01-01,distal femur,valgus,\n");
            for (int month = 1; month < 9; month += 2) {
                films.append("E").append(i).append("R,2015-0").append(month).append("-01,mLDFA,");
                films.append(78 + 0.3 * month).append(month == 1 ? ",before\n" : ",plate\n");
            }
        }
        Files.writeString(earlier.resolve("children.csv"), children);
        Files.writeString(earlier.resolve("limbs.csv"), limbs);
        Files.writeString(earlier.resolve("films.csv"), films);
        Files.writeString(earlier.resolve("events.csv"), "limb_id,date,event\n");
        double slow = quantiles(forecast().rows("angle").get(1))[9];
        assertThat(slow).isGreaterThan(quantiles(published.rows("angle").get(1))[9] + 1);
    }

    @ParameterizedTest(name = "{0}, line {3}, column {4}")
    @CsvSource(
            delimiter = '|',
            value = {
                "children.csv|A,F,|A,X,|2|sex|not known here. Write F | M.",
                "children.csv|B,M,2006-05-20|B,M,20.5.2006|3|birth_date|is not a date",
                "children.csv|late-onset tibia vara|bow legs|3|diagnosis|not known here",
                "children.csv|B,M,2006|A,M,2006|3|child_id|stands in an earlier row",
                "limbs.csv|B-L,B|B-L,C|3|child_id|is not in the good rows of children.csv",
                "limbs.csv|proximal tibia|distal tibia|3|site|not known here",
                "limbs.csv|valgus,10.5|valgus,99|2|bone_age_at_plate|does not lie between 0 and 25",
                "limbs.csv|2019-02-01|2005-02-01|3|plate_date|within 25 years of birth",
                "films.csv|mMPTA,76.0|mLDFA,76.0|6|angle_name|not that of the bone with the plate",
                "films.csv|79.0|wide|2|angle_deg|is not a number",
                "films.csv|76.0,before|76.0,later|6|phase|not known here",
                "events.csv|plate removed|plate lost|2|event|not known here",
                "tasks.csv|A-R,3|A-R,4|4|n_films|has only 3 films",
                "tasks.csv|2,2019-05-10|2,2019-05-11|5|origin_date|film 2 of this limb is of 2019-05-10",
                "tasks.csv|2019-09-09|2019-05-09|2|target_date|lies before that of the last film"
            })
    void takesNothingWithABadRowAndNamesTheSpot(
            String file, String good, String bad, int line, String column, String reason) throws IOException {
        assertThat(files.get(file)).contains(good);
        files.computeIfPresent(file, (_, text) -> text.replaceFirst(good, bad));
        Outcome outcome = forecast();
        assertThat(outcome.status()).isEqualTo(2);
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err())
                .contains(folder.resolve(file) + ", line " + line + ", column " + column + ": ")
                .contains(reason)
                .contains("Nothing was forecast");
    }

    @Test
    void forecastsTheGoodRowsWhenAskedToAndListsTheRest() throws IOException {
        files.put("tasks.csv", TASKS.replace("B-L,2,2019-05-10", "B-L,2,never"));
        Outcome outcome = forecast("--partial");
        assertThat(outcome.status()).isEqualTo(2);
        assertThat(outcome.rows("angle")).hasSize(4);
        assertThat(outcome.err()).contains("\"never\" is not a date");
    }

    @Test
    void saysWhatIsMissing() throws IOException {
        files.remove("tasks.csv");
        Outcome outcome = forecast();
        assertThat(outcome.status()).isEqualTo(2);
        assertThat(outcome.err()).contains("tasks.csv is not there");
    }

    @Test
    void explainsItsUse() {
        assertThat(run(List.of("--help")).status()).isZero();
        assertThat(run(List.of("--help")).err()).startsWith("Usage: forecast");
        assertThat(run(List.of()).status()).isEqualTo(2);
        assertThat(run(List.of("one", "two")).status()).isEqualTo(2);
    }

    private static double[] quantiles(String[] row) {
        return Arrays.stream(row, 5, 24).mapToDouble(Double::parseDouble).toArray();
    }

    private Outcome forecast(String... options) throws IOException {
        for (var file : files.entrySet()) {
            Files.writeString(folder.resolve(file.getKey()), file.getValue());
        }
        var args = new ArrayList<>(List.of(options));
        args.add(folder.toString());
        return run(args);
    }

    private static Outcome run(List<String> args) {
        var out = new ByteArrayOutputStream();
        var err = new ByteArrayOutputStream();
        int status = ForecastCommand.run(
                args,
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
        return new Outcome(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
