package org.espalier.interchange;

import java.util.regex.Pattern;

/**
 * Keeps a cell of text from being taken for a formula by a spreadsheet program: one that begins like a formula gets an
 * apostrophe in front, and so does one that begins with an apostrophe, so that reading gives back what was written.
 * Numbers stay numbers.
 */
final class FormulaGuard {

    private static final String MARK = "'";
    private static final String FORMULA = "=+-@\t\r'";
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

    private FormulaGuard() {}

    static String guarded(String cell) {
        boolean harmless = cell.isEmpty()
                || FORMULA.indexOf(cell.charAt(0)) < 0
                || NUMBER.matcher(cell).matches();
        return harmless ? cell : MARK + cell;
    }

    static String unguarded(String cell) {
        return cell.startsWith(MARK) ? cell.substring(1) : cell;
    }
}
