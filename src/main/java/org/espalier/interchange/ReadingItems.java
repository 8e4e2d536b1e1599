package org.espalier.interchange;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.espalier.reading.EdgePoints;
import org.espalier.reading.FilmTaken;
import org.espalier.reading.Marks;
import org.espalier.reading.ReadingSettings;
import org.espalier.reading.ScrewSeen;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What a reader chose and set, item by item: choices and how the film was taken, screws, landmarks, edges. */
final class ReadingItems {

    static final String CALIBRATION = "calibration";
    static final String LIMBS = "limbs";
    static final String FURTHER = "further";
    static final String TAKEN = "taken ";
    static final String SCREW = "screw ";
    static final String EDGE = "edge ";
    static final String BETWEEN = "; ";

    private static final String NOT_RECORDED = "NOT_RECORDED";

    /** One item: a choice with its value, or a point. */
    record Item(String name, Optional<Side> side, String x, String y, String value) {

        List<String> cells() {
            return List.of(name, side.map(Side::letter).orElse(""), x, y, value);
        }
    }

    private ReadingItems() {}

    static List<Item> of(ReadingSettings settings, Marks marks, JsonMapper json) {
        List<Item> items = new ArrayList<>();
        items.add(said(CALIBRATION, Words.of(settings.calibration())));
        items.add(said(LIMBS, settings.limbs().stream().map(Side::letter).collect(Collectors.joining(BETWEEN))));
        if (!settings.further().isEmpty()) {
            items.add(said(
                    FURTHER, settings.further().stream().sorted().map(Words::of).collect(Collectors.joining(BETWEEN))));
        }
        items.addAll(taken(settings.taken(), json));
        settings.screws().forEach(screw -> items.add(screw(screw)));
        marks.points().forEach(point -> items.add(point(point.landmark(), point.side(), point.x(), point.y())));
        marks.edges().forEach(edge -> items.addAll(edge(edge)));
        return items;
    }

    private static Item said(String name, String value) {
        return new Item(name, Optional.empty(), "", "", value);
    }

    private static List<Item> taken(FilmTaken taken, JsonMapper json) {
        return json.valueToTree(taken).properties().stream()
                .filter(field -> !field.getValue().isNull())
                .filter(field -> !field.getValue().asString().equals(NOT_RECORDED))
                .map(field -> said(TAKEN + snake(field.getKey()), words(field.getValue())))
                .toList();
    }

    private static String words(JsonNode value) {
        return value.isNumber() ? plain(value.asDouble()) : Words.of(value.asString());
    }

    private static Item screw(ScrewSeen screw) {
        return new Item(
                SCREW + Words.of(screw.plate()) + ", " + Words.of(screw.screw()),
                Optional.of(screw.side()),
                "",
                "",
                Map.of(
                                "exposed", screw.exposed(),
                                "bent", screw.bent(),
                                "broken", screw.broken(),
                                "loose", screw.loose())
                        .entrySet()
                        .stream()
                        .sorted(Map.Entry.comparingByKey())
                        .map(answer -> answer.getKey() + " " + Words.of(answer.getValue()))
                        .collect(Collectors.joining(BETWEEN)));
    }

    private static List<Item> edge(EdgePoints edge) {
        return edge.points().stream()
                .map(point -> point(EDGE + edge.landmark(), edge.side(), point.x(), point.y()))
                .toList();
    }

    private static Item point(String name, @Nullable Side side, double x, double y) {
        return new Item(name, Optional.ofNullable(side), plain(x), plain(y), "");
    }

    static String plain(double number) {
        var plain = new BigDecimal(Double.toString(number)).stripTrailingZeros().toPlainString();
        return plain.equals("-0") ? "0" : plain;
    }

    /** {@code flexionRight} as {@code flexion_right}. */
    static String snake(String name) {
        return name.replaceAll("([A-Z])", "_$1").toLowerCase(Locale.ROOT);
    }

    static String camel(String name) {
        var camel = new StringBuilder();
        for (var part : name.split("_")) {
            camel.append(camel.isEmpty() ? part : part.substring(0, 1).toUpperCase(Locale.ROOT) + part.substring(1));
        }
        return camel.toString();
    }
}
