package org.espalier.stock;

/** A name of a product that a scanner reads from its label. No two products share one. */
public record ProductCode(Scheme scheme, String code) {

    /** Whose rules the code follows. */
    public enum Scheme {
        /** Fourteen digits. */
        GTIN,
        /** Labeller and product or catalogue number, with the unit of measure. */
        HIBC
    }

    private static final int GTIN_LENGTH = 14;

    public ProductCode {
        code = code.strip();
        if (scheme == Scheme.GTIN) {
            if (!code.matches("\\d{8}|\\d{12,14}")) {
                throw new IllegalArgumentException("a GTIN has 8, 12, 13 or 14 digits: " + code);
            }
            code = "0".repeat(GTIN_LENGTH - code.length()) + code;
        }
    }
}
