package org.espalier.interchange;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.espalier.reading.CalibrationChoice;
import org.espalier.reading.EdgePoints;
import org.espalier.reading.FilmTaken;
import org.espalier.reading.Marks;
import org.espalier.reading.PlacedPoint;
import org.espalier.reading.ReadingSettings;
import org.espalier.reading.ScrewSeen;
import org.espalier.reading.Seen;
import org.espalier.science.alignment.Landmark;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/** Reads the items of one reading back. */
final class ReadingRows {

    private static final double FARTHEST = 100_000;
    private static final Map<String, Side> SIDES =
            Arrays.stream(Side.values()).collect(Collectors.toMap(Side::letter, side -> side));
    private static final Map<String, Landmark.Family> FAMILIES = Words.all(Landmark.Family.class);
    private static final Map<String, Seen> SEEN = Words.all(Seen.class);

    private final List<PlacedPoint> points = new ArrayList<>();
    private final Map<String, List<EdgePoints.EdgePoint>> edges = new LinkedHashMap<>();
    private final Map<String, Object> taken = new LinkedHashMap<>();
    private final List<ScrewSeen> screws = new ArrayList<>();
    private final Set<Landmark.Family> further = new LinkedHashSet<>();
    private List<Side> limbs = List.of(Side.RIGHT, Side.LEFT);
    private CalibrationChoice calibration = CalibrationChoice.TAGS;

    ReadingRows(List<ClinicRow> rows) {
        rows.forEach(this::read);
    }

    private void read(ClinicRow row) {
        var item = row.text("item");
        if (item.equals(ReadingItems.CALIBRATION)) {
            row.cells().oneOf("value", Words.all(CalibrationChoice.class)).ifPresent(choice -> calibration = choice);
        } else if (item.equals(ReadingItems.LIMBS)) {
            limbs = parts(row, SIDES);
        } else if (item.equals(ReadingItems.FURTHER)) {
            further.addAll(parts(row, FAMILIES));
        } else if (item.startsWith(ReadingItems.TAKEN)) {
            taken.put(ReadingItems.camel(item.substring(ReadingItems.TAKEN.length())), value(row));
        } else if (item.startsWith(ReadingItems.SCREW)) {
            screw(row, item.substring(ReadingItems.SCREW.length()));
        } else if (item.startsWith(ReadingItems.EDGE)) {
            edge(row, item.substring(ReadingItems.EDGE.length()));
        } else {
            point(row, item);
        }
    }

    private static Object value(ClinicRow row) {
        var text = row.text("value");
        return text.matches("-?\\d+(\\.\\d+)?") ? Double.valueOf(text) : constant(text);
    }

    private static String constant(String words) {
        return words.toUpperCase(Locale.ROOT).replace(' ', '_');
    }

    private static <T> List<T> parts(ClinicRow row, Map<String, T> known) {
        List<T> found = new ArrayList<>();
        for (var part : row.text("value").split(ReadingItems.BETWEEN.strip())) {
            var one = known.get(part.strip());
            if (one == null) {
                row.cells()
                        .refuse(
                                "value",
                                FileReason.NOT_KNOWN_OF_SEVERAL,
                                part.strip(),
                                String.join(" | ", known.keySet()));
            } else {
                found.add(one);
            }
        }
        return found;
    }

    private void screw(ClinicRow row, String which) {
        var side = row.cells().oneOf("side", SIDES);
        var names = which.split(", ");
        var plate = Words.all(ScrewSeen.Plate.class).get(names[0]);
        var screw = names.length < 2 ? null : Words.all(ScrewSeen.Screw.class).get(names[1]);
        if (plate == null || screw == null) {
            row.cells().refuse("item", FileReason.NOT_A_SCREW, row.text("item"));
        } else {
            side.ifPresent(one -> screws.add(seen(row, ScrewSeen.asked(one, plate, screw))));
        }
    }

    private static ScrewSeen seen(ClinicRow row, ScrewSeen asked) {
        var seen = asked;
        for (var answer : row.text("value").split(ReadingItems.BETWEEN.strip())) {
            var words = answer.strip().split(" ", 2);
            var said = words.length < 2 ? null : SEEN.get(words[1]);
            if (said == null) {
                row.cells().refuse("value", FileReason.NOT_AN_ANSWER, answer.strip());
                return seen;
            }
            seen = switch (words[0]) {
                case "exposed" -> seen.withExposed(said);
                case "bent" -> seen.withBent(said);
                case "broken" -> seen.withBroken(said);
                case "loose" -> seen.withLoose(said);
                default -> {
                    row.cells().refuse("value", FileReason.NOT_ASKED_OF_A_SCREW, words[0]);
                    yield seen;
                }
            };
        }
        return seen;
    }

    private void edge(ClinicRow row, String landmark) {
        var x = coordinate(row, "x_px");
        var y = coordinate(row, "y_px");
        if (x.isPresent() && y.isPresent()) {
            edges.computeIfAbsent(row.text("side") + " " + landmark, none -> new ArrayList<>())
                    .add(new EdgePoints.EdgePoint(x.get(), y.get()));
        }
    }

    private void point(ClinicRow row, String landmark) {
        if (Landmark.ofCode(landmark).isEmpty()) {
            row.cells().refuse("item", FileReason.NOT_AN_ITEM, landmark);
            return;
        }
        var side = row.cells().oneOf("side", SIDES);
        var x = coordinate(row, "x_px");
        var y = coordinate(row, "y_px");
        if (side.isPresent() && x.isPresent() && y.isPresent()) {
            points.add(new PlacedPoint(side.get(), landmark, x.get(), y.get()));
        }
    }

    private static Optional<Double> coordinate(ClinicRow row, String column) {
        return row.cells().number(column, -FARTHEST, FARTHEST);
    }

    Marks marks() {
        return new Marks(
                points,
                edges.entrySet().stream()
                        .map(edge -> edge(edge.getKey(), edge.getValue()))
                        .toList());
    }

    private static EdgePoints edge(String key, List<EdgePoints.EdgePoint> points) {
        var names = key.split(" ", 2);
        @Nullable Side side = SIDES.get(names[0]);
        return new EdgePoints(side, names[1], points);
    }

    ReadingSettings settings(JsonMapper json) {
        try {
            return new ReadingSettings(limbs, calibration, json.convertValue(taken, FilmTaken.class), further, screws);
        } catch (JacksonException e) {
            throw new RowRefused("value", FileReason.TAKEN_UNREADABLE, e.getOriginalMessage());
        }
    }
}
