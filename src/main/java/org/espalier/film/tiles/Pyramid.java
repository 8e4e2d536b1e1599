package org.espalier.film.tiles;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import org.espalier.film.tiles.Picture.Part;

/**
 * A file of tiles. Holds no open file and only the index in memory, so that many may be kept at hand.
 *
 * <p>Layout of the file, big endian: head of 32 bytes, one 64-bit offset a tile and one for the end, then each tile
 * deflated.
 */
public final class Pyramid {

    private final Path file;
    private final Layout layout;
    private final long[] offsets;

    private Pyramid(Path file, Layout layout, long[] offsets) {
        this.file = file;
        this.layout = layout;
        this.offsets = offsets;
    }

    public int width() {
        return layout.width();
    }

    public int height() {
        return layout.height();
    }

    /** Pixels along a tile. */
    public int tileSize() {
        return Layout.TILE;
    }

    /** How many halvings of the full size there are besides it. */
    public int halvings() {
        return layout.halvings();
    }

    /** The smallest stored value. */
    public int least() {
        return layout.least();
    }

    /** The greatest stored value. */
    public int greatest() {
        return layout.greatest();
    }

    public boolean isColour() {
        return layout.kind() == Layout.Kind.COLOUR;
    }

    int width(int level) {
        return layout.width(level);
    }

    int height(int level) {
        return layout.height(level);
    }

    /** The pixels of a part of a level. */
    Picture read(int level, Part part) throws IOException {
        var picture = layout.blank(part.width(), part.height());
        try (var channel = FileChannel.open(file, StandardOpenOption.READ)) {
            for (int row = part.y() / Layout.TILE; row * Layout.TILE < part.y() + part.height(); row++) {
                for (int column = part.x() / Layout.TILE; column * Layout.TILE < part.x() + part.width(); column++) {
                    int number = layout.first(level) + row * layout.across(level) + column;
                    var covered = layout.part(level, column, row);
                    lay(tile(channel, number, covered), covered, part, picture);
                }
            }
        }
        return picture;
    }

    private static void lay(Picture tile, Part covered, Part wanted, Picture target) {
        var common = wanted.within(covered);
        var inTile = new Part(common.x() - covered.x(), common.y() - covered.y(), common.width(), common.height());
        target.lay(tile, inTile, common.x() - wanted.x(), common.y() - wanted.y());
    }

    private Picture tile(FileChannel channel, int number, Part covered) throws IOException {
        var deflated = ByteBuffer.allocate((int) (offsets[number + 1] - offsets[number]));
        readFully(channel, deflated, offsets[number]);
        var bytes = new byte[covered.width() * covered.height() * layout.kind().bytes()];
        var inflater = new Inflater(true);
        try {
            inflater.setInput(deflated);
            if (inflater.inflate(bytes) != bytes.length) {
                throw new BrokenPyramidException("tile " + number + " is short");
            }
            var tile = layout.blank(covered.width(), covered.height());
            tile.unpack(bytes);
            return tile;
        } catch (DataFormatException e) {
            throw new BrokenPyramidException("tile " + number + " is broken");
        } finally {
            inflater.end();
        }
    }

    private static void readFully(FileChannel channel, ByteBuffer buffer, long position) throws IOException {
        while (buffer.hasRemaining()) {
            if (channel.read(buffer, position + buffer.position()) < 0) {
                throw new BrokenPyramidException("the file ends early");
            }
        }
        buffer.flip();
    }

    /** Opens a file of tiles. */
    public static Pyramid open(Path file) throws IOException {
        try (var channel = FileChannel.open(file, StandardOpenOption.READ)) {
            var head = ByteBuffer.allocate(Layout.HEAD_BYTES);
            readFully(channel, head, 0);
            var layout = Layout.read(head);
            var index = ByteBuffer.allocate(Long.BYTES * (layout.tiles() + 1));
            readFully(channel, index, Layout.HEAD_BYTES);
            var offsets = new long[layout.tiles() + 1];
            index.asLongBuffer().get(offsets);
            return new Pyramid(file, layout, offsets);
        }
    }

    /** Builds the file of tiles of a picture; it stands there whole or not at all. */
    public static Pyramid build(Picture picture, Path file) throws IOException {
        Files.createDirectories(file.getParent());
        removeCutOffAttempts(file);
        var growing = file.resolveSibling(file.getFileName() + "." + UUID.randomUUID());
        try {
            var layout = Layout.of(picture);
            var offsets = PyramidWriter.write(layout, picture, growing);
            Files.move(growing, file, StandardCopyOption.ATOMIC_MOVE);
            return new Pyramid(file, layout, offsets);
        } finally {
            Files.deleteIfExists(growing);
        }
    }

    /** A process that died while it wrote left its unfinished file; one job at a time builds a picture. */
    private static void removeCutOffAttempts(Path file) throws IOException {
        try (var left = Files.newDirectoryStream(file.getParent(), file.getFileName() + ".*")) {
            for (var unfinished : left) {
                Files.deleteIfExists(unfinished);
            }
        }
    }
}
