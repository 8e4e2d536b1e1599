package org.espalier.science.alignment;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.espalier.science.quantity.PixelPoint;

/**
 * The landmarks set on one limb of one film, in pixels of that film. Unchangeable.
 *
 * @param points each landmark that was set, in the order of the guide
 */
public record LimbLandmarks(Map<Landmark, PixelPoint> points) {

    /** Keeps its own copy of the points. */
    public LimbLandmarks {
        Map<Landmark, PixelPoint> copy = new EnumMap<>(Landmark.class);
        copy.putAll(points);
        points = Collections.unmodifiableMap(copy);
    }

    /** A limb without landmarks. */
    public static LimbLandmarks none() {
        return new LimbLandmarks(Map.of());
    }

    /** These landmarks with one set or moved. */
    public LimbLandmarks with(Landmark landmark, PixelPoint point) {
        Map<Landmark, PixelPoint> changed = new EnumMap<>(Landmark.class);
        changed.putAll(points);
        changed.put(landmark, point);
        return new LimbLandmarks(changed);
    }

    /** These landmarks with one taken away. */
    public LimbLandmarks without(Landmark landmark) {
        Map<Landmark, PixelPoint> changed = new EnumMap<>(Landmark.class);
        changed.putAll(points);
        changed.remove(landmark);
        return new LimbLandmarks(changed);
    }

    /** Where the landmark was set; empty if it was not. */
    public Optional<PixelPoint> point(Landmark landmark) {
        return Optional.ofNullable(points.get(landmark));
    }
}
