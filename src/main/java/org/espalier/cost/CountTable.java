package org.espalier.cost;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Counts by rows and columns with their totals, told so that no count below five can be read or reckoned.
 *
 * <p>First every small count is hidden, totals too. A hidden count can be reckoned from the told ones exactly when its
 * edge is a bridge in the graph whose nodes are the rows and columns, totals among them, and whose edges are the hidden
 * counts; then the smallest told count of its row or column is hidden too, until none is. And where a total is told,
 * what is hidden of its line is not small together. Source: Gusfield, SIAM J Comput 1988;17:552 (the theorem, from
 * memory).
 */
public final class CountTable {

    private final int[][] counts;
    private final boolean[][] hidden;

    /** @param inner counts of persons, each in one cell, without totals; at least one row and column */
    private CountTable(int[][] inner) {
        int rows = inner.length;
        int columns = inner[0].length;
        counts = new int[rows + 1][columns + 1];
        hidden = new boolean[rows + 1][columns + 1];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                counts[row][column] = inner[row][column];
                counts[row][columns] += inner[row][column];
                counts[rows][column] += inner[row][column];
                counts[rows][columns] += inner[row][column];
            }
        }
    }

    private record Place(int row, int column) {}

    /** The rows with their totals at the end, and the totals of the columns below. */
    public static List<List<Cell>> tell(int[][] inner) {
        var table = new CountTable(inner);
        table.hideSmall();
        var leaks = table.leaks();
        while (!leaks.isEmpty()) {
            table.hideBeside(leaks);
            leaks = table.leaks();
        }
        return table.cells();
    }

    /**
     * One line with its total at the end, of which nothing is told by columns: what is hidden of it is never one count
     * alone, and not small together.
     */
    public static List<Cell> tellLine(int... counts) {
        int total = IntStream.of(counts).sum();
        var hidden = new TreeSet<Integer>(IntStream.range(0, counts.length)
                .filter(at -> Cell.isSmall(counts[at]))
                .boxed()
                .toList());
        var others = IntStream.range(0, counts.length)
                .filter(at -> counts[at] >= Cell.LEAST)
                .boxed()
                .sorted(Comparator.comparingInt(at -> counts[at]))
                .iterator();
        while (others.hasNext() && isLeaking(counts, hidden)) {
            hidden.add(others.next());
        }
        boolean isTotalHidden = Cell.isSmall(total) || isLeaking(counts, hidden);
        return Stream.concat(
                        IntStream.range(0, counts.length)
                                .<Cell>mapToObj(
                                        at -> hidden.contains(at) ? new Cell.Hidden() : new Cell.Told(counts[at])),
                        Stream.of(isTotalHidden ? new Cell.Hidden() : new Cell.Told(total)))
                .toList();
    }

    private static boolean isLeaking(int[] counts, Set<Integer> hidden) {
        return hidden.size() == 1
                || Cell.isSmall(hidden.stream().mapToInt(at -> counts[at]).sum());
    }

    private void hideSmall() {
        places().filter(place -> Cell.isSmall(count(place))).forEach(place -> hide(place));
    }

    /** Hidden counts that can be reckoned, alone or together with others of their line. */
    private List<Place> leaks() {
        return places().filter(this::isHidden)
                .filter(place -> isBridge(place) || isSmallTogether(place))
                .toList();
    }

    /** Hides the smallest count that is told in a row or a column of theirs, totals last of all. */
    private void hideBeside(List<Place> leaks) {
        places().filter(place -> !isHidden(place) && count(place) > 0)
                .filter(place ->
                        leaks.stream().anyMatch(leak -> place.row() == leak.row() || place.column() == leak.column()))
                .min(Comparator.<Place, Boolean>comparing(this::isTotal).thenComparing(this::count))
                .or(() -> places().filter(place -> !isHidden(place)).findFirst())
                .ifPresent(this::hide);
    }

    /** Whether row and column of a hidden count hang together by it alone. */
    private boolean isBridge(Place edge) {
        var seen = new HashSet<Integer>(List.of(edge.row()));
        var waiting = new ArrayDeque<>(seen);
        while (!waiting.isEmpty()) {
            int node = waiting.remove();
            for (int other : neighbours(node, edge)) {
                if (seen.add(other)) {
                    waiting.add(other);
                }
            }
        }
        return !seen.contains(columnNode(edge.column()));
    }

    private List<Integer> neighbours(int node, Place without) {
        var found = new ArrayList<Integer>();
        places().filter(place -> isHidden(place) && !place.equals(without)).forEach(place -> {
            if (place.row() == node) {
                found.add(columnNode(place.column()));
            }
            if (columnNode(place.column()) == node) {
                found.add(place.row());
            }
        });
        return found;
    }

    private int columnNode(int column) {
        return counts.length + column;
    }

    /** Whether the total of the place's line is told, and what is hidden of the line comes to fewer than five. */
    private boolean isSmallTogether(Place place) {
        int lastRow = counts.length - 1;
        int lastColumn = counts[0].length - 1;
        boolean inRow = place.column() != lastColumn
                && !hidden[place.row()][lastColumn]
                && Cell.isSmall(IntStream.range(0, lastColumn)
                        .filter(column -> hidden[place.row()][column])
                        .map(column -> counts[place.row()][column])
                        .sum());
        boolean inColumn = place.row() != lastRow
                && !hidden[lastRow][place.column()]
                && Cell.isSmall(IntStream.range(0, lastRow)
                        .filter(row -> hidden[row][place.column()])
                        .map(row -> counts[row][place.column()])
                        .sum());
        return inRow || inColumn;
    }

    private Stream<Place> places() {
        return IntStream.range(0, counts.length).boxed().flatMap(row -> IntStream.range(0, counts[0].length)
                .mapToObj(column -> new Place(row, column)));
    }

    private boolean isTotal(Place place) {
        return place.row() == counts.length - 1 || place.column() == counts[0].length - 1;
    }

    private int count(Place place) {
        return counts[place.row()][place.column()];
    }

    private boolean isHidden(Place place) {
        return hidden[place.row()][place.column()];
    }

    private void hide(Place place) {
        hidden[place.row()][place.column()] = true;
    }

    private List<List<Cell>> cells() {
        return IntStream.range(0, counts.length)
                .mapToObj(row -> IntStream.range(0, counts[0].length)
                        .<Cell>mapToObj(
                                column -> hidden[row][column] ? new Cell.Hidden() : new Cell.Told(counts[row][column]))
                        .toList())
                .toList();
    }
}
