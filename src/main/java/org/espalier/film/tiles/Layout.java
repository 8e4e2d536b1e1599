package org.espalier.film.tiles;

import java.nio.ByteBuffer;
import org.espalier.film.tiles.Picture.Part;

/**
 * What stands at the head of a pyramid file, and where its tiles are: level by level from the full size down, row by
 * row.
 *
 * @param kind what a pixel is
 * @param width pixels of the full size
 * @param height pixels of the full size
 * @param least the smallest value in the picture
 * @param greatest the greatest value in the picture
 */
record Layout(Kind kind, int width, int height, int least, int greatest) {

    static final int TILE = 512;
    static final int HEAD_BYTES = 32;

    private static final long MAGIC = 0x4553504C54494C31L;

    enum Kind {
        GREY_UNSIGNED(2),
        GREY_SIGNED(2),
        COLOUR(3);

        private final int bytes;

        Kind(int bytes) {
            this.bytes = bytes;
        }

        int bytes() {
            return bytes;
        }
    }

    /** How often the size is halved until the whole picture is one tile. */
    int halvings() {
        int halvings = 0;
        while (Math.max(width(halvings), height(halvings)) > TILE) {
            halvings++;
        }
        return halvings;
    }

    int width(int level) {
        return width + (1 << level) - 1 >> level;
    }

    int height(int level) {
        return height + (1 << level) - 1 >> level;
    }

    int across(int level) {
        return (width(level) + TILE - 1) / TILE;
    }

    int down(int level) {
        return (height(level) + TILE - 1) / TILE;
    }

    int tiles() {
        return first(halvings() + 1);
    }

    /** The number of the first tile of a level. */
    int first(int level) {
        int tiles = 0;
        for (int above = 0; above < level; above++) {
            tiles += across(above) * down(above);
        }
        return tiles;
    }

    /** The pixels that a tile covers on its level. */
    Part part(int level, int column, int row) {
        int x = column * TILE;
        int y = row * TILE;
        return new Part(x, y, Math.min(TILE, width(level) - x), Math.min(TILE, height(level) - y));
    }

    Picture blank(int width, int height) {
        return kind == Kind.COLOUR
                ? new ColourPicture(width, height)
                : new GreyPicture(width, height, kind == Kind.GREY_SIGNED);
    }

    /** Where the first tile starts: after the head and the index, which has one entry more than there are tiles. */
    long dataStart() {
        return HEAD_BYTES + (long) Long.BYTES * (tiles() + 1);
    }

    void write(ByteBuffer head) {
        head.putLong(MAGIC).putInt(kind.ordinal()).putInt(width).putInt(height);
        head.putInt(least).putInt(greatest).putInt(TILE);
    }

    static Layout read(ByteBuffer head) throws BrokenPyramidException {
        long magic = head.getLong();
        int kind = head.getInt();
        var layout = new Layout(
                Kind.values()[Math.floorMod(kind, Kind.values().length)],
                head.getInt(),
                head.getInt(),
                head.getInt(),
                head.getInt());
        if (magic != MAGIC || kind != layout.kind.ordinal() || head.getInt() != TILE || layout.width < 1) {
            throw new BrokenPyramidException("not a pyramid of this version");
        }
        return layout;
    }

    static Layout of(Picture picture) {
        return switch (picture) {
            case ColourPicture(int width, int height, byte[] samples) -> new Layout(Kind.COLOUR, width, height, 0, 255);
            case GreyPicture grey -> {
                int least = Integer.MAX_VALUE;
                int greatest = Integer.MIN_VALUE;
                for (int i = 0; i < grey.samples().length; i++) {
                    int value = grey.value(i);
                    least = Math.min(least, value);
                    greatest = Math.max(greatest, value);
                }
                yield new Layout(
                        grey.signed() ? Kind.GREY_SIGNED : Kind.GREY_UNSIGNED,
                        grey.width(),
                        grey.height(),
                        least,
                        greatest);
            }
        };
    }
}
