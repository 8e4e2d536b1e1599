package org.espalier.demo.drawn;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.util.function.Consumer;

/** The film as mm of cortical bone each ray meets; parts are added one over the other. */
final class BoneCanvas {

    private final int width;
    private final int height;
    private final AffineTransform toPixels;
    private final double mmPerPixel;
    private final int seed;
    private final float[] bone;

    BoneCanvas(int width, int height, AffineTransform toPixels, double mmPerPixel, int seed) {
        this.width = width;
        this.height = height;
        this.toPixels = toPixels;
        this.mmPerPixel = mmPerPixel;
        this.seed = seed;
        this.bone = new float[width * height];
    }

    float[] bone() {
        return bone;
    }

    void paint(BonePart part) {
        AffineTransform frame = new AffineTransform(toPixels);
        frame.concatenate(part.toBody());
        Shape field = frame.createTransformedShape(part.field());
        Rectangle box = field.getBounds();
        box.grow(3, 3);
        box = box.intersection(new Rectangle(width, height));
        if (box.isEmpty()) {
            return;
        }
        byte[] coverage = mask(box, g -> g.fill(field));
        float[] inward = DistanceField.inward(coverage, box.width, box.height);
        Shape keep = part.keep();
        byte[] kept = keep == null ? coverage : mask(box, g -> g.fill(frame.createTransformedShape(keep)));
        add(part.profile(), box, inverse(frame), inward, kept);
        for (BonePart.Seam seam : part.seams()) {
            addSeam(seam, frame, box, inward, kept);
        }
    }

    private void add(Profile profile, Rectangle box, AffineTransform toPart, float[] inward, byte[] kept) {
        for (int row = 0; row < box.height; row++) {
            int source = row * box.width;
            int target = (box.y + row) * width + box.x;
            for (int column = 0; column < box.width; column++) {
                int share = kept[source + column] & 0xff;
                if (inward[source + column] > 0 && share > 0) {
                    double px = box.x + column + 0.5;
                    double py = box.y + row + 0.5;
                    double x = toPart.getScaleX() * px + toPart.getShearX() * py + toPart.getTranslateX();
                    double y = toPart.getShearY() * px + toPart.getScaleY() * py + toPart.getTranslateY();
                    double path = profile.path(y, inward[source + column] * mmPerPixel, spongy(x, y));
                    bone[target + column] += (float) (path * share / 255);
                }
            }
        }
    }

    /** Struts run along the bone: fine across, long along it. */
    private double spongy(double x, double y) {
        double fine = Grain.hills(x / 0.75, y / 2.6, seed);
        double coarse = Grain.hills(x / 2.4, y / 6.5, seed + 1);
        double cloud = Grain.hills(x / 9, y / 11, seed + 2);
        return 1 + 0.2 * fine + 0.16 * coarse + 0.1 * cloud;
    }

    private void addSeam(BonePart.Seam seam, AffineTransform frame, Rectangle box, float[] inward, byte[] kept) {
        Shape line = frame.createTransformedShape(seam.line());
        float stroke = (float) (seam.widthMm() / mmPerPixel);
        byte[] drawn = mask(box, g -> {
            g.setStroke(new BasicStroke(stroke, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.draw(line);
        });
        for (int row = 0; row < box.height; row++) {
            for (int column = 0; column < box.width; column++) {
                int i = row * box.width + column;
                if (drawn[i] != 0 && inward[i] > 0) {
                    int target = (box.y + row) * width + box.x + column;
                    double weight = (drawn[i] & 0xff) * (kept[i] & 0xff) / 65025.0;
                    double near = Math.min(1, inward[i] * mmPerPixel / Math.max(0.5, seam.widthMm()));
                    double left = bone[target] * (1 - weight * (1 - seam.share()));
                    bone[target] = (float) (left + seam.pathMm() * weight * near);
                }
            }
        }
    }

    private static byte[] mask(Rectangle box, Consumer<Graphics2D> drawing) {
        BufferedImage image = new BufferedImage(box.width, box.height, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.translate(-box.x, -box.y);
        g.setColor(Color.WHITE);
        drawing.accept(g);
        g.dispose();
        return ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
    }

    private static AffineTransform inverse(AffineTransform frame) {
        try {
            return frame.createInverse();
        } catch (NoninvertibleTransformException e) {
            throw new IllegalStateException(e);
        }
    }
}
