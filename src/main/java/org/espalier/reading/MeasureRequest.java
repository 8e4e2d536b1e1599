package org.espalier.reading;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the film room asks while a hand moves.
 *
 * @param seq counts the changes in the room; the answer bears it
 * @param revision the draft's revision the change was made on
 * @param commit whether to keep this as the draft's next revision
 */
public record MeasureRequest(
        long seq,
        long revision,
        List<PlacedPoint> points,
        List<EdgePoints> edges,
        @Nullable Boolean commit) {

    public Marks marks() {
        return new Marks(points, edges);
    }

    public boolean isCommit() {
        return Boolean.TRUE.equals(commit);
    }
}
