package org.espalier.interchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.espalier.science.alignment.Landmark;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.PixelScale;
import org.espalier.science.quantity.Side;

/**
 * A file of landmarks, one row a landmark.
 *
 * @param rows the good rows, in order
 * @param problems what is wrong with the others, in order of their lines
 */
record LandmarkFile(List<LandmarkRow> rows, List<FileProblem> problems) {

    private static final String FILM = "film";
    private static final String SIDE = "side";
    private static final String SCALE_X = "mm_per_px_x";
    private static final String SCALE_Y = "mm_per_px_y";
    private static final String LANDMARK = "landmark";
    private static final String X = "x_px";
    private static final String Y = "y_px";
    private static final List<String> COLUMNS = List.of(FILM, SIDE, SCALE_X, SCALE_Y, LANDMARK, X, Y);

    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,3})?");

    static LandmarkFile read(String file, byte[] bytes) {
        CsvTable table = CsvTable.read(file, bytes, COLUMNS);
        var reading = new Reading(file, new ArrayList<>(table.problems()));
        table.rows().forEach(reading::take);
        reading.problems.sort(Comparator.comparingLong(FileProblem::line));
        return new LandmarkFile(List.copyOf(reading.rows), List.copyOf(reading.problems));
    }

    private record LandmarkKey(String film, Side side, Landmark landmark) {}

    private static final class Reading {

        private final String file;
        private final List<FileProblem> problems;
        private final List<LandmarkRow> rows = new ArrayList<>();
        private final Map<String, LandmarkRow> firstOfFilm = new HashMap<>();
        private final Map<LandmarkKey, LandmarkRow> taken = new HashMap<>();

        Reading(String file, List<FileProblem> problems) {
            this.file = file;
            this.problems = problems;
        }

        void take(CsvTable.Row row) {
            int before = problems.size();
            String film = film(row);
            Optional<Side> side = side(row);
            Optional<PixelScale> scale = scale(row);
            Optional<Landmark> landmark = landmark(row);
            Optional<Double> x = number(row, X);
            Optional<Double> y = number(row, Y);
            if (problems.size() == before) {
                keep(new LandmarkRow(
                        row.line(),
                        film,
                        side.orElseThrow(),
                        scale,
                        landmark.orElseThrow(),
                        new PixelPoint(x.orElseThrow(), y.orElseThrow())));
            }
        }

        private void keep(LandmarkRow row) {
            LandmarkRow first = firstOfFilm.computeIfAbsent(row.film(), _ -> row);
            LandmarkRow same = taken.computeIfAbsent(new LandmarkKey(row.film(), row.side(), row.landmark()), _ -> row);
            if (!first.scale().equals(row.scale())) {
                refuse(row.line(), SCALE_X, FileReason.OTHER_SCALE, row.film(), first.line());
            } else if (same.line() != row.line()) {
                refuse(
                        row.line(),
                        LANDMARK,
                        FileReason.LANDMARK_TWICE,
                        row.landmark().code(),
                        same.line());
            } else {
                rows.add(row);
            }
        }

        private String film(CsvTable.Row row) {
            String film = row.cell(FILM);
            if (film.isEmpty()) {
                refuse(row.line(), FILM, FileReason.FILM_WITHOUT_NAME);
            }
            return film;
        }

        private Optional<Side> side(CsvTable.Row row) {
            Optional<Side> side = Side.ofLetter(row.cell(SIDE));
            if (side.isEmpty()) {
                refuse(row.line(), SIDE, FileReason.NO_SIDE, row.cell(SIDE));
            }
            return side;
        }

        private Optional<Landmark> landmark(CsvTable.Row row) {
            Optional<Landmark> landmark = Landmark.ofCode(row.cell(LANDMARK));
            if (landmark.isEmpty()) {
                refuse(row.line(), LANDMARK, FileReason.NOT_A_LANDMARK, row.cell(LANDMARK));
            }
            return landmark;
        }

        private Optional<PixelScale> scale(CsvTable.Row row) {
            boolean noX = row.cell(SCALE_X).isEmpty();
            boolean noY = row.cell(SCALE_Y).isEmpty();
            if (noX && noY) {
                return Optional.empty();
            }
            if (noX || noY) {
                refuse(row.line(), noX ? SCALE_X : SCALE_Y, FileReason.ONE_SCALE);
                return Optional.empty();
            }
            Optional<Double> x = positive(row, SCALE_X);
            Optional<Double> y = positive(row, SCALE_Y);
            return x.flatMap(across -> y.map(down -> PixelScale.of(across, down)));
        }

        private Optional<Double> positive(CsvTable.Row row, String column) {
            Optional<Double> number = number(row, column);
            if (number.isPresent() && number.orElseThrow() <= 0) {
                refuse(row.line(), column, FileReason.NOT_ABOVE_ZERO, row.cell(column));
                return Optional.empty();
            }
            return number;
        }

        private Optional<Double> number(CsvTable.Row row, String column) {
            String text = row.cell(column);
            if (NUMBER.matcher(text).matches() && Double.isFinite(Double.parseDouble(text))) {
                return Optional.of(Double.valueOf(text));
            }
            refuse(row.line(), column, text.isEmpty() ? FileReason.EMPTY : FileReason.NOT_A_NUMBER, text);
            return Optional.empty();
        }

        private void refuse(long line, String column, FileReason reason, Object... details) {
            problems.add(FileProblem.of(file, line, column, reason, details));
        }
    }
}
