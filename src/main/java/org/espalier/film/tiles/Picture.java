package org.espalier.film.tiles;

/** Pixels in memory, row by row from the upper left. */
public sealed interface Picture permits GreyPicture, ColourPicture {

    int width();

    int height();

    /** Half as wide and high, rounded up; each pixel the mean of those it stands for. */
    Picture halved();

    /** Writes the pixels of a part that lies inside the picture. */
    void pack(byte[] target, Part part);

    /** Takes all its pixels from what {@link #pack} wrote. */
    void unpack(byte[] source);

    /** Copies a part of another picture of the same kind to where its upper left corner is to lie here. */
    void lay(Picture other, Part part, int x, int y);

    /**
     * A rectangle of whole pixels.
     *
     * @param x left edge
     * @param y upper edge
     * @param width pixels, at least 1
     * @param height pixels, at least 1
     */
    record Part(int x, int y, int width, int height) {

        public Part {
            if (x < 0 || y < 0 || width < 1 || height < 1) {
                throw new IllegalArgumentException("no part of a picture: " + x + "," + y + "," + width + "," + height);
            }
        }

        /** What both cover; they must overlap. */
        Part within(Part other) {
            int left = Math.max(x, other.x);
            int top = Math.max(y, other.y);
            int right = Math.min(x + width, other.x + other.width);
            int bottom = Math.min(y + height, other.y + other.height);
            return new Part(left, top, right - left, bottom - top);
        }
    }
}
