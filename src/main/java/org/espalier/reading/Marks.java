package org.espalier.reading;

import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;
import org.espalier.science.alignment.Landmark;

/** Everything a reader has set on a film: the truth from which each number is computed again. */
public record Marks(List<PlacedPoint> points, List<EdgePoints> edges) {

    private static final int MOST_POINTS = 200;
    private static final double FARTHEST = 100_000;

    public static final Marks NONE = new Marks(List.of(), List.of());

    /**
     * @throws IllegalArgumentException for an unknown landmark, one set twice, or a point that lies on no film
     */
    public Marks {
        points = List.copyOf(points);
        edges = List.copyOf(edges);
        points.forEach(point -> {
            Marks.requireLandmark(point.landmark());
            Marks.requireOnFilm(point.x(), point.y());
        });
        edges.forEach(Marks::requireEdge);
        requireOnce(points.stream().map(p -> p.side() + " " + p.landmark()).toList());
        requireOnce(edges.stream().map(e -> e.side() + " " + e.landmark()).toList());
        if (points.size() + edges.stream().mapToInt(e -> e.points().size()).sum() > MOST_POINTS) {
            throw new IllegalArgumentException("A film carries at most " + MOST_POINTS + " points");
        }
    }

    @JsonIgnore
    public boolean isEmpty() {
        return points.isEmpty() && edges.isEmpty();
    }

    private static void requireEdge(EdgePoints edge) {
        if (edge.side() == null && !edge.landmark().equals(EdgePoints.BALL)) {
            throw new IllegalArgumentException("Only the ball belongs to no limb, not " + edge.landmark());
        }
        if (edge.side() != null && !edge.landmark().equals(Landmark.HIP_CENTRE.code())) {
            throw new IllegalArgumentException("Only the femoral head is round, not " + edge.landmark());
        }
        edge.points().forEach(point -> requireOnFilm(point.x(), point.y()));
    }

    private static void requireLandmark(String code) {
        if (Landmark.ofCode(code).isEmpty()) {
            throw new IllegalArgumentException("There is no landmark " + code);
        }
    }

    private static void requireOnFilm(double x, double y) {
        if (!(Math.abs(x) <= FARTHEST && Math.abs(y) <= FARTHEST)) {
            throw new IllegalArgumentException("No film reaches to " + x + ", " + y);
        }
    }

    private static void requireOnce(List<String> keys) {
        if (keys.stream().distinct().count() != keys.size()) {
            throw new IllegalArgumentException("A landmark is set twice among " + keys);
        }
    }
}
