package org.espalier.film.tiles;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.zip.Deflater;
import org.espalier.film.tiles.Picture.Part;

/** Writes a file of tiles, one after the other through the same memory. */
final class PyramidWriter implements AutoCloseable {

    private final Layout layout;
    private final FileChannel channel;
    private final long[] offsets;
    private final byte[] plain;
    private final ByteBuffer packed;
    private final Deflater deflater = new Deflater(Deflater.BEST_SPEED, true);

    private PyramidWriter(Layout layout, FileChannel channel) {
        this.layout = layout;
        this.channel = channel;
        offsets = new long[layout.tiles() + 1];
        plain = new byte[Layout.TILE * Layout.TILE * layout.kind().bytes()];
        packed = ByteBuffer.allocate(plain.length + (plain.length >> 8) + 64);
    }

    /** Writes the file to the disk and returns where each tile starts, and where the last one ends. */
    static long[] write(Layout layout, Picture picture, Path file) throws IOException {
        try (var channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
                var writer = new PyramidWriter(layout, channel)) {
            writer.writeTiles(picture);
            writer.writeHead();
            channel.force(true);
            return writer.offsets;
        }
    }

    private void writeTiles(Picture full) throws IOException {
        offsets[0] = layout.dataStart();
        int number = 0;
        var picture = full;
        for (int level = 0; level <= layout.halvings(); level++) {
            picture = level == 0 ? full : picture.halved();
            for (int row = 0; row < layout.down(level); row++) {
                for (int column = 0; column < layout.across(level); column++) {
                    pack(picture, layout.part(level, column, row));
                    offsets[number + 1] = offsets[number] + packed.remaining();
                    writeFully(packed, offsets[number++]);
                }
            }
        }
    }

    private void writeHead() throws IOException {
        var head = ByteBuffer.allocate((int) layout.dataStart());
        layout.write(head);
        head.asLongBuffer().put(offsets);
        writeFully(head.rewind(), 0);
    }

    private void pack(Picture picture, Part part) {
        picture.pack(plain, part);
        deflater.reset();
        deflater.setInput(plain, 0, part.width() * part.height() * layout.kind().bytes());
        deflater.finish();
        deflater.deflate(packed.clear());
        packed.flip();
    }

    private void writeFully(ByteBuffer bytes, long position) throws IOException {
        while (bytes.hasRemaining()) {
            channel.write(bytes, position + bytes.position());
        }
    }

    @Override
    public void close() {
        deflater.end();
    }
}
