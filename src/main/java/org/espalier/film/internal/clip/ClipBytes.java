package org.espalier.film.internal.clip;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** The bytes of a clip, read and overwritten in place; nothing outside them is ever touched. */
record ClipBytes(byte[] file) {

    int length() {
        return file.length;
    }

    int at(int at) throws ClipNotUnderstood {
        demand(at, 1);
        return file[at] & 0xFF;
    }

    long word(int at) throws ClipNotUnderstood {
        demand(at, Integer.BYTES);
        return ByteBuffer.wrap(file).getInt(at) & 0xFFFF_FFFFL;
    }

    long longWord(int at) throws ClipNotUnderstood {
        demand(at, Long.BYTES);
        return ByteBuffer.wrap(file).getLong(at);
    }

    /** Big-endian, of one to eight bytes. */
    long number(int at, int bytes) throws ClipNotUnderstood {
        demand(at, bytes);
        long number = 0;
        for (int i = 0; i < bytes; i++) {
            number = number << 8 | file[at + i] & 0xFF;
        }
        return number;
    }

    String name(int at) throws ClipNotUnderstood {
        demand(at, Integer.BYTES);
        return new String(file, at, Integer.BYTES, StandardCharsets.ISO_8859_1);
    }

    void write(int at, int value) throws ClipNotUnderstood {
        demand(at, 1);
        file[at] = (byte) value;
    }

    void write(int at, String name) throws ClipNotUnderstood {
        demand(at, name.length());
        System.arraycopy(name.getBytes(StandardCharsets.ISO_8859_1), 0, file, at, name.length());
    }

    /** Fills from the first place up to the second, which stays. */
    void fill(int from, int to, int value) throws ClipNotUnderstood {
        demand(from, to - from);
        Arrays.fill(file, from, to, (byte) value);
    }

    void demand(long at, long bytes) throws ClipNotUnderstood {
        if (at < 0 || bytes < 0 || at + bytes > file.length) {
            throw new ClipNotUnderstood("the file ends before byte " + (at + bytes));
        }
    }
}
