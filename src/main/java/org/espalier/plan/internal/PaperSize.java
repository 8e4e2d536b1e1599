package org.espalier.plan.internal;

/** What a sheet is printed on. */
enum PaperSize {
    A4("210mm", "297mm"),
    LETTER("215.9mm", "279.4mm");

    private final String width;
    private final String height;

    PaperSize(String width, String height) {
        this.width = width;
        this.height = height;
    }

    String width() {
        return width;
    }

    String height() {
        return height;
    }
}
