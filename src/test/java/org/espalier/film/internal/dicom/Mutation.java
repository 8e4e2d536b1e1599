package org.espalier.film.internal.dicom;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.Random;

/** Ways in which bytes are spoiled on their way. */
enum Mutation {
    /** A few bits flip anywhere. */
    FLIPPED_BITS {
        @Override
        byte[] apply(byte[] good, Random random) {
            byte[] bad = good.clone();
            for (int i = 1 + random.nextInt(8); i > 0; i--) {
                bad[random.nextInt(bad.length)] ^= (byte) (1 << random.nextInt(8));
            }
            return bad;
        }
    },
    /** A byte near the beginning, where tags and lengths are, becomes another. */
    CHANGED_HEADER {
        @Override
        byte[] apply(byte[] good, Random random) {
            byte[] bad = good.clone();
            bad[random.nextInt(Math.min(bad.length, 1500))] = (byte) random.nextInt(256);
            return bad;
        }
    },
    /** The end is missing. */
    TRUNCATED {
        @Override
        byte[] apply(byte[] good, Random random) {
            return Arrays.copyOf(good, random.nextInt(good.length));
        }
    },
    /** Four bytes, perhaps a length, become an extreme number. */
    EXTREME_LENGTH {
        @Override
        byte[] apply(byte[] good, Random random) {
            int[] extremes = {-1, -2, Integer.MAX_VALUE, Integer.MIN_VALUE, 0, 1, 0xFFFF, random.nextInt()};
            byte[] bad = good.clone();
            ByteBuffer.wrap(bad)
                    .order(random.nextBoolean() ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN)
                    .putInt(132 + random.nextInt(bad.length - 136), extremes[random.nextInt(extremes.length)]);
            return bad;
        }
    },
    /** A stretch stands twice. */
    REPEATED {
        @Override
        byte[] apply(byte[] good, Random random) {
            int start = random.nextInt(good.length);
            int length = random.nextInt(Math.min(200, good.length - start) + 1);
            ByteBuffer bad = ByteBuffer.allocate(good.length + length);
            bad.put(good, 0, start + length).put(good, start, good.length - start);
            return bad.array();
        }
    };

    abstract byte[] apply(byte[] good, Random random);
}
