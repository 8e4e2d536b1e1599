package org.espalier.film.tiles;

/**
 * A part of a picture and the size at which it is wanted (PS3.18 section 8.3.5.1.3: viewport).
 *
 * @param viewWidth at most so many pixels wide
 * @param viewHeight at most so many pixels high
 * @param x left edge in pixels of the full size
 * @param y upper edge in pixels of the full size
 * @param width in pixels of the full size
 * @param height in pixels of the full size
 */
public record Region(int viewWidth, int viewHeight, double x, double y, double width, double height) {

    /** The largest view, either way, that is drawn. */
    public static final int LARGEST_VIEW = 4096;

    private static final double ROUNDING = 1e-6;

    public Region {
        if (viewWidth < 1 || viewHeight < 1 || viewWidth > LARGEST_VIEW || viewHeight > LARGEST_VIEW) {
            throw new IllegalArgumentException("a view of " + viewWidth + " x " + viewHeight + " pixels; 1 to "
                    + LARGEST_VIEW + " each way are drawn");
        }
        if (!(x >= 0 && y >= 0 && width > 0 && height > 0 && Double.isFinite(x + y + width + height))) {
            throw new IllegalArgumentException("no region of a picture: " + x + "," + y + "," + width + "," + height);
        }
    }

    /** The whole picture in a view of this size. */
    public static Region whole(Pyramid pyramid, int viewWidth, int viewHeight) {
        return new Region(viewWidth, viewHeight, 0, 0, pyramid.width(), pyramid.height());
    }

    /** The part that lies inside a picture of this size. */
    Region within(int pictureWidth, int pictureHeight) {
        if (x >= pictureWidth || y >= pictureHeight) {
            throw new IllegalArgumentException("the region starts at " + x + "," + y + ", outside the picture of "
                    + pictureWidth + " x " + pictureHeight + " pixels");
        }
        return new Region(
                viewWidth, viewHeight, x, y, Math.min(width, pictureWidth - x), Math.min(height, pictureHeight - y));
    }

    /**
     * View pixels a picture pixel. The proportions of the picture are kept; a view that is a halving of the region,
     * rounded up to whole pixels, is exactly that halving.
     */
    double scale() {
        double fitting = Math.min(viewWidth / width, viewHeight / height);
        double halving = Math.scalb(1, Math.getExponent(fitting));
        return isRoundedUp(halving) ? halving : fitting;
    }

    private boolean isRoundedUp(double scale) {
        return Math.ceil(width * scale) == viewWidth && Math.ceil(height * scale) == viewHeight;
    }

    /** Pixels really drawn across. */
    int drawnWidth() {
        return drawn(width, viewWidth);
    }

    /** Pixels really drawn down. */
    int drawnHeight() {
        return drawn(height, viewHeight);
    }

    private int drawn(double length, int limit) {
        return Math.clamp((int) Math.ceil(length * scale() - ROUNDING), 1, limit);
    }

    /** How often the picture may be halved and still have at least one pixel for each that is drawn. */
    int level(int halvings) {
        double reduction = 1 / scale() * (1 + ROUNDING);
        return reduction < 2 ? 0 : Math.min(halvings, Math.getExponent(reduction));
    }
}
