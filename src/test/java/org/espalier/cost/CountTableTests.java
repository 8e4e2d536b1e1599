package org.espalier.cost;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.SingularValueDecomposition;
import org.junit.jupiter.api.Test;

/**
 * What a reader with pencil and paper could find out of a told table: every equation between counts and totals is set
 * up, and the hidden counts that they fix are looked for by linear algebra, which knows nothing of how the table was
 * told.
 */
class CountTableTests {

    private static String told(int[][] counts) {
        var text = new StringBuilder();
        for (var row : CountTable.tell(counts)) {
            row.forEach(cell -> text.append(cell instanceof Cell.Told(int count) ? count : "·")
                    .append(' '));
            text.append('/');
        }
        return text.toString();
    }

    @Test
    void tellsEverythingWhereNothingIsSmall() {
        assertThat(told(new int[][] {{5, 7}, {0, 12}})).isEqualTo("5 7 12 /0 12 12 /5 19 24 /");
    }

    @Test
    void hidesThreeMoreSoThatOneIsNotTheDifferenceOfItsTotals() {
        assertThat(told(new int[][] {{3, 20}, {30, 40}})).isEqualTo("· · 23 /· · 70 /33 60 93 /");
    }

    @Test
    void hidesATotalThatIsSmallItself() {
        assertThat(told(new int[][] {{1, 2}, {30, 40}})).startsWith("· · · /");
    }

    @Test
    void twoThatAreSmallTogetherAreNotToldByTheirTotal() {
        var cells = CountTable.tell(new int[][] {{1, 2, 60}, {30, 40, 50}, {20, 20, 20}});
        long hidden =
                cells.getFirst().stream().filter(Cell.Hidden.class::isInstance).count();
        assertThat(hidden).isGreaterThanOrEqualTo(3);
    }

    @Test
    void ofALineAloneHidesTheNextSmallestBesideOneThatIsSmall() {
        assertThat(line(20, 6, 0, 2)).isEqualTo("20 · 0 · 28 ");
        assertThat(line(20, 6, 0, 5)).isEqualTo("20 6 0 5 31 ");
        assertThat(line(20, 3, 4, 30)).isEqualTo("20 · · 30 57 ");
        assertThat(line(20, 1, 2, 30)).isEqualTo("· · · 30 53 ");
        assertThat(line(0, 2)).isEqualTo("0 · · ");
        assertThat(line(0, 0)).isEqualTo("0 0 0 ");
    }

    private static String line(int... counts) {
        var text = new StringBuilder();
        CountTable.tellLine(counts).forEach(cell -> text.append(cell instanceof Cell.Told(int count) ? count : "·")
                .append(' '));
        return text.toString();
    }

    @Test
    void noHiddenCountOfAnyTableCanBeReckoned() {
        var random = new Random(20260301);
        for (int tries = 0; tries < 300; tries++) {
            var counts = new int[1 + random.nextInt(6)][1 + random.nextInt(5)];
            for (var row : counts) {
                for (int column = 0; column < row.length; column++) {
                    row[column] = random.nextInt(3) == 0 ? random.nextInt(6) : random.nextInt(40);
                }
            }
            assertThat(reckoned(CountTable.tell(counts)))
                    .as(java.util.Arrays.deepToString(counts))
                    .isEmpty();
        }
    }

    @Test
    void theReaderFindsWhatIsHiddenAlone() {
        List<List<Cell>> careless = List.of(
                List.of(new Cell.Hidden(), new Cell.Told(20), new Cell.Told(23)),
                List.of(new Cell.Told(30), new Cell.Told(40), new Cell.Told(70)),
                List.of(new Cell.Told(33), new Cell.Told(60), new Cell.Told(93)));
        assertThat(reckoned(careless)).containsExactly(0);
    }

    /** Unknowns that the equations fix: those whose coordinate is nought in every direction of the null space. */
    private static List<Integer> reckoned(List<List<Cell>> cells) {
        int rows = cells.size();
        int columns = cells.getFirst().size();
        var unknown = new ArrayList<Integer>();
        for (int at = 0; at < rows * columns; at++) {
            if (cells.get(at / columns).get(at % columns) instanceof Cell.Hidden) {
                unknown.add(at);
            }
        }
        if (unknown.isEmpty()) {
            return List.of();
        }
        var equations = MatrixUtils.createRealMatrix(rows + columns, unknown.size());
        for (int place = 0; place < unknown.size(); place++) {
            int row = unknown.get(place) / columns;
            int column = unknown.get(place) % columns;
            equations.setEntry(row, place, column == columns - 1 ? -1 : 1);
            equations.setEntry(rows + column, place, row == rows - 1 ? -1 : 1);
        }
        var parts = new SingularValueDecomposition(equations.transpose().multiply(equations));
        var found = new ArrayList<Integer>();
        for (int place = 0; place < unknown.size(); place++) {
            double free = 0;
            for (int direction = 0; direction < unknown.size(); direction++) {
                if (parts.getSingularValues()[direction] < 1e-9) {
                    free += Math.abs(parts.getV().getEntry(place, direction));
                }
            }
            if (free < 1e-6) {
                found.add(unknown.get(place));
            }
        }
        return found;
    }
}
