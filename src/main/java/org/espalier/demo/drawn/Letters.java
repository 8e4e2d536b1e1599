package org.espalier.demo.drawn;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.Map;

/** Capital letters as pen strokes, so that a film looks the same on every machine, with or without fonts. */
final class Letters {

    /** Strokes on a grid 4 wide and 6 high, y down: points as digit pairs, strokes parted by a space. */
    private static final Map<Character, String> STROKES = Map.ofEntries(
            Map.entry('A', "062046 1434"),
            Map.entry('D', "00062645412000"),
            Map.entry('E', "40000646 0333"),
            Map.entry('F', "400006 0333"),
            Map.entry('I', "2026"),
            Map.entry('L', "000646"),
            Map.entry('N', "06004640"),
            Map.entry('O', "103041453616050110"),
            Map.entry('P', "06003041423303"),
            Map.entry('R', "06003041423303 2346"),
            Map.entry('T', "0040 2026"),
            Map.entry('W', "0016223640"),
            Map.entry('-', "0333"),
            Map.entry(' ', ""));

    private Letters() {}

    /** Outline of a line of text whose upper left corner is the origin. */
    static Shape text(String text, double height, double pen) {
        Path2D path = new Path2D.Double();
        double unit = height / 6;
        for (int i = 0; i < text.length(); i++) {
            AffineTransform place = AffineTransform.getTranslateInstance(i * 5.6 * unit, 0);
            place.scale(unit, unit);
            for (String stroke : strokes(text.charAt(i))) {
                path.append(place.createTransformedShape(line(stroke)), false);
            }
        }
        return new BasicStroke((float) pen, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND).createStrokedShape(path);
    }

    private static String[] strokes(char letter) {
        String strokes = STROKES.get(letter);
        if (strokes == null) {
            throw new IllegalArgumentException("no strokes for the letter " + letter);
        }
        return strokes.split(" ", -1);
    }

    static double width(String text, double height) {
        return (text.length() * 5.6 - 1.6) * height / 6;
    }

    private static Path2D line(String digits) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i + 1 < digits.length(); i += 2) {
            double x = Character.digit(digits.charAt(i), 10);
            double y = Character.digit(digits.charAt(i + 1), 10);
            if (i == 0) {
                path.moveTo(x, y);
            } else {
                path.lineTo(x, y);
            }
        }
        return path;
    }
}
