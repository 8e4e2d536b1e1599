package org.espalier.demo.drawn;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;

/** The unexposed border of the finished film, with text written into its foot. */
final class Caption {

    private static final int INK = 3300;

    private final short[] stored;
    private final int width;
    private final int height;
    private final double letter;

    Caption(short[] stored, int width, int height, double mmPerPixel) {
        this.stored = stored;
        this.width = width;
        this.height = height;
        this.letter = letterMm(width * mmPerPixel) / mmPerPixel;
    }

    private static double letterMm(double filmMm) {
        return Math.min(7, 0.9 * filmMm / Letters.width(DrawnFilm.MARK, 1));
    }

    /** Height of the strip that the text needs, mm. */
    static double stripMm(double filmMm) {
        return 2 * letterMm(filmMm);
    }

    void write(String text) {
        int strip = (int) Math.ceil(letter * 2);
        shutter((int) Math.ceil(letter * 0.3), strip);
        byte[] ink = ink(text, strip);
        int from = (height - strip) * width;
        for (int i = 0; i < ink.length; i++) {
            stored[from + i] += (short) ((INK - stored[from + i]) * (ink[i] & 0xff) / 255);
        }
    }

    private void shutter(int edge, int foot) {
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                if (x < edge || x >= width - edge || y < edge || y >= height - foot) {
                    stored[y * width + x] = 0;
                }
            }
        }
    }

    private byte[] ink(String text, int strip) {
        Shape shape = Letters.text(text, letter, letter * 0.13);
        BufferedImage image = new BufferedImage(width, strip, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.translate(letter * 0.7, letter * 0.5);
        g.setColor(Color.WHITE);
        g.fill(shape);
        g.dispose();
        return ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
    }
}
