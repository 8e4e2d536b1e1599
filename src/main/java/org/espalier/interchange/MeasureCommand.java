package org.espalier.interchange;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.espalier.science.alignment.AlignmentMeasurement;
import org.espalier.science.alignment.LimbLandmarks;
import org.espalier.science.alignment.LimbNumbers;
import org.espalier.science.alignment.Measured;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Calibration;
import org.espalier.science.quantity.Side;

/** The command that turns a file of landmarks into numbers, without database and without server. */
public final class MeasureCommand {

    private static final int DONE = 0;
    private static final int REFUSED = 2;
    private static final int DECIMALS = 4;

    private static final String USAGE = """
            Usage: measure [--partial] LANDMARKS.csv > ANGLES.csv

            Reads film,side,mm_per_px_x,mm_per_px_y,landmark,x_px,y_px, one row a landmark,
            and writes film,side,quantity,value,unit. With - the rows are read from standard input.
            Nothing is written unless every row is good;
            --partial  measures the good rows and lists the others.
            """;

    private static final CSVFormat OUTPUT = CSVFormat.RFC4180
            .builder()
            .setRecordSeparator('\n')
            .setHeader("film", "side", "quantity", "value", "unit")
            .get();

    private record Limb(String film, Side side) {}

    private MeasureCommand() {}

    /**
     * Runs the command.
     *
     * @param args what follows the command's name
     * @param in read when the file is named -
     * @param out where the numbers go, as UTF-8
     * @param err where everything said to a person goes
     * @return the exit status: 0 when all was measured, 2 when anything was refused
     */
    public static int run(List<String> args, InputStream in, PrintStream out, PrintStream err) {
        List<String> names = new ArrayList<>(args);
        boolean partial = names.remove("--partial");
        if (names.size() != 1
                || (names.getFirst().startsWith("-") && !names.getFirst().equals("-"))) {
            err.print(USAGE);
            return names.equals(List.of("--help")) ? DONE : REFUSED;
        }
        String name = names.getFirst();
        try {
            byte[] bytes = name.equals("-") ? in.readAllBytes() : Files.readAllBytes(Path.of(name));
            return measure(LandmarkFile.read(name, bytes), partial, out, err);
        } catch (IOException e) {
            err.println(name + " could not be read: " + e.getMessage() + ". Check the name and try again.");
            return REFUSED;
        }
    }

    private static int measure(LandmarkFile file, boolean partial, PrintStream out, PrintStream err)
            throws IOException {
        file.problems().forEach(problem -> err.println(problem.asText()));
        boolean refused = !file.problems().isEmpty();
        if (refused && !partial) {
            err.println("Nothing was measured: mend the rows above, or measure the others with --partial.");
            return REFUSED;
        }
        out.write(numbers(file.rows(), err).getBytes(StandardCharsets.UTF_8));
        out.flush();
        return refused ? REFUSED : DONE;
    }

    private static String numbers(List<LandmarkRow> rows, PrintStream err) throws IOException {
        Map<Limb, List<LandmarkRow>> limbs = new LinkedHashMap<>();
        for (LandmarkRow row : rows) {
            limbs.computeIfAbsent(new Limb(row.film(), row.side()), _ -> new ArrayList<>())
                    .add(row);
        }
        var text = new StringBuilder();
        try (var printer = new CSVPrinter(text, OUTPUT)) {
            for (var limb : limbs.entrySet()) {
                print(limb.getKey(), measure(limb.getKey().side(), limb.getValue()), printer, err);
            }
        }
        return text.toString();
    }

    private static LimbNumbers measure(Side side, List<LandmarkRow> rows) {
        LimbLandmarks landmarks = LimbLandmarks.none();
        for (LandmarkRow row : rows) {
            landmarks = landmarks.with(row.landmark(), row.point());
        }
        Calibration calibration =
                rows.getFirst().scale().map(Calibration::ofStated).orElseGet(Calibration::none);
        return AlignmentMeasurement.measure(side, landmarks, calibration);
    }

    private static void print(Limb limb, LimbNumbers numbers, CSVPrinter printer, PrintStream err) throws IOException {
        for (Quantity quantity : Quantity.frontal()) {
            switch (numbers.outcome(quantity)) {
                case Measured.Value(double value) ->
                    printer.printRecord(
                            limb.film(),
                            limb.side().letter(),
                            quantity.code(),
                            decimal(value),
                            quantity.unit().code());
                case Measured.Absent absent -> explain(limb, quantity, absent.reason(), err);
            }
        }
    }

    /** Says why a number is not there, unless it was plainly not asked for. */
    private static void explain(Limb limb, Quantity quantity, Measured.Reason reason, PrintStream err) {
        String why =
                switch (reason) {
                    case LANDMARKS_MISSING, UNCALIBRATED -> "";
                    case POINTS_COINCIDE -> "two of its points lie on each other";
                    case LINES_PARALLEL -> "its lines are parallel";
                    case LATERAL_UNCLEAR -> "the landmarks do not tell which way is lateral";
                    case ENDS_EXCHANGED -> "its medial and lateral ends look exchanged";
                };
        if (!why.isEmpty()) {
            err.println("Film " + limb.film() + " " + limb.side().letter() + ": no " + quantity.code() + ", because "
                    + why + ".");
        }
    }

    private static String decimal(double value) {
        return new BigDecimal(value).setScale(DECIMALS, RoundingMode.HALF_UP).toPlainString();
    }
}
