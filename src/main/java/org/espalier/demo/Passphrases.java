package org.espalier.demo;

import java.security.SecureRandom;
import java.util.stream.Collectors;

/** Passphrases that can be read from one screen and typed into another. */
final class Passphrases {

    private static final SecureRandom RANDOM = new SecureRandom();
    private static final int WORDS = 4;
    private static final String[] GARDEN = """
            alder apple aspen basil beech berry birch bloom briar brook cedar cherry clover
            copper cowslip daisy damson dew elder fennel fern fig flax foxglove frost garden
            gravel hawthorn hazel heather hedge holly honey hops ivy juniper ladder larch
            lavender leaf lichen lilac linden lupin maple marsh meadow medlar mint moss
            mulberry nettle oak olive orchard osier pear pebble pine plum poplar poppy
            primrose quince rake reed robin rose rowan sage sedge sloe sorrel spade spruce
            stone sundial swallow sycamore thistle thyme timber trellis tulip twig vine
            violet wall walnut wicker willow wren yarrow yew
            """.strip().split("\\s+");

    private Passphrases() {}

    static String fresh() {
        return RANDOM.ints(0, GARDEN.length)
                .distinct()
                .limit(WORDS)
                .mapToObj(word -> GARDEN[word])
                .collect(Collectors.joining("-"));
    }
}
