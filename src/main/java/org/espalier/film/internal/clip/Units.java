package org.espalier.film.internal.clip;

/**
 * How a sample is cut into units (ISO/IEC 14496-15): those of words beside the picture, in which cameras write who,
 * where and when, are filled with filler of the same length.
 *
 * @param lengthBytes of the length before each unit; 0 where samples are not cut so
 * @param head bytes before a unit's content
 */
record Units(int lengthBytes, int head) {

    private static final Units NONE = new Units(0, 0);
    private static final int ADVANCED_LENGTH_AT = 4;
    private static final int EFFICIENT_LENGTH_AT = 21;
    private static final int ADVANCED_WORDS = 6;
    private static final int EFFICIENT_WORDS = 39;
    private static final int EFFICIENT_WORDS_AFTER = 40;
    private static final int FILLER = 3;
    private static final int LONGEST = 254;
    private static final int LAST = 0x80;

    static Units of(ClipBytes bytes, Box descriptions) throws ClipNotUnderstood {
        for (var entry : SampleEntry.entries(bytes, descriptions)) {
            for (var box : SampleEntry.configuration(bytes, entry)) {
                if (box.name().equals("avcC")) {
                    return new Units((bytes.at(box.content() + ADVANCED_LENGTH_AT) & 3) + 1, 1);
                }
                if (box.name().equals("hvcC")) {
                    return new Units((bytes.at(box.content() + EFFICIENT_LENGTH_AT) & 3) + 1, 2);
                }
            }
        }
        return NONE;
    }

    boolean mayHoldWords() {
        return lengthBytes > 0;
    }

    void fillWords(ClipBytes bytes, SampleTable.Sample sample) throws ClipNotUnderstood {
        if (!mayHoldWords()) {
            return;
        }
        int end = Math.toIntExact(sample.from() + sample.size());
        for (int at = Math.toIntExact(sample.from()); at < end; ) {
            long length = bytes.number(at, lengthBytes);
            at += lengthBytes;
            if (length > end - at) {
                throw new ClipNotUnderstood("a unit longer than its sample");
            }
            if (length > head && holdsWords(bytes.at(at))) {
                fill(bytes, at + head, (int) length - head);
            }
            at += (int) length;
        }
    }

    private boolean holdsWords(int first) {
        if (head == 1) {
            return (first & 0x1F) == ADVANCED_WORDS;
        }
        int kind = first >> 1 & 0x3F;
        return kind == EFFICIENT_WORDS || kind == EFFICIENT_WORDS_AFTER;
    }

    /** Filler messages (kind, length, content), and the bit that ends a unit. */
    private static void fill(ClipBytes bytes, int from, int length) throws ClipNotUnderstood {
        bytes.fill(from, from + length, 0xFF);
        int at = from;
        int left = length - 1;
        while (left >= 2) {
            int content = Math.min(LONGEST, left - 2);
            if (left - 2 - content == 1) {
                content--;
            }
            bytes.write(at, FILLER);
            bytes.write(at + 1, content);
            at += content + 2;
            left -= content + 2;
        }
        bytes.write(from + length - 1, LAST);
    }
}
