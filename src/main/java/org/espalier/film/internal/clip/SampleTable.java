package org.espalier.film.internal.clip;

import java.util.ArrayList;
import java.util.List;

/**
 * Where the samples of a track lie in the file.
 *
 * @param units how samples are cut into units that may be words beside the picture
 */
record SampleTable(List<Sample> samples, Units units) {

    private static final int TABLE_AT = 8;
    private static final int CHUNK_RUN = 12;
    private static final int MOST_SAMPLES = 100_000;

    /** A sample: where it begins, and how many bytes it has. */
    record Sample(long from, long size) {}

    /** Read before anything is emptied. */
    static SampleTable of(ClipBytes bytes, Box table) throws ClipNotUnderstood {
        var units = Units.of(bytes, table.demand(bytes, "stsd"));
        var chunks = chunks(bytes, table);
        var sizes = table.demand(bytes, "stsz");
        long fixed = bytes.word(sizes.content() + Integer.BYTES);
        long count = bytes.word(sizes.content() + TABLE_AT);
        if (count > MOST_SAMPLES) {
            throw new ClipNotUnderstood("so many frames are no short clip: " + count);
        }
        var runs = table.demand(bytes, "stsc");
        var samples = new ArrayList<Sample>();
        int run = -1;
        for (int chunk = 0; chunk < chunks.size(); chunk++) {
            while (run + 1 < bytes.word(runs.content() + Integer.BYTES)
                    && bytes.word(run(runs, run + 1)) == chunk + 1L) {
                run++;
            }
            if (run < 0) {
                throw new ClipNotUnderstood("a chunk without a run");
            }
            long at = chunks.get(chunk);
            for (long i = bytes.word(run(runs, run) + Integer.BYTES); i > 0 && samples.size() < count; i--) {
                int entry = sizes.content() + TABLE_AT + Integer.BYTES + samples.size() * Integer.BYTES;
                long size = fixed > 0 ? fixed : bytes.word(entry);
                bytes.demand(at, size);
                samples.add(new Sample(at, size));
                at += size;
            }
        }
        return new SampleTable(samples, units);
    }

    private static int run(Box runs, int number) {
        return runs.content() + TABLE_AT + number * CHUNK_RUN;
    }

    private static List<Long> chunks(ClipBytes bytes, Box table) throws ClipNotUnderstood {
        var wide = table.child(bytes, "co64");
        var box = wide.isPresent() ? wide.get() : table.demand(bytes, "stco");
        int each = wide.isPresent() ? Long.BYTES : Integer.BYTES;
        long count = bytes.word(box.content() + Integer.BYTES);
        bytes.demand(box.content() + TABLE_AT, count * each);
        var chunks = new ArrayList<Long>();
        for (int i = 0; i < count; i++) {
            int at = box.content() + TABLE_AT + i * each;
            chunks.add(wide.isPresent() ? Long.valueOf(bytes.longWord(at)) : Long.valueOf(bytes.word(at)));
        }
        return chunks;
    }
}
