package org.espalier.film.internal.clip;

import java.util.List;
import java.util.Set;

/** How the samples of a picture are coded: the numbers stay, the name of the program that coded them goes. */
final class SampleEntry {

    private static final Set<String> CODES = Set.of("avc1", "avc3", "hvc1", "hev1", "vp08", "vp09", "av01");
    private static final Set<String> KEPT =
            Set.of("avcC", "hvcC", "vpcC", "av1C", "colr", "pasp", "clap", "btrt", "fiel");

    private static final int ENTRIES_AT = 8;
    private static final int NAME_AT = 42;
    private static final int NAME_BYTES = 32;
    private static final int CHILDREN_AT = 78;

    private SampleEntry() {}

    static void strip(ClipBytes bytes, Box descriptions) throws ClipNotUnderstood {
        for (var entry : entries(bytes, descriptions)) {
            if (!CODES.contains(entry.name())) {
                throw new ClipNotUnderstood("frames of a kind that is not known");
            }
            bytes.fill(entry.content() + NAME_AT, entry.content() + NAME_AT + NAME_BYTES, 0);
            for (var child : Box.of(bytes, entry.content() + CHILDREN_AT, entry.end())) {
                if (!KEPT.contains(child.name())) {
                    child.empty(bytes);
                }
            }
        }
    }

    static List<Box> entries(ClipBytes bytes, Box descriptions) throws ClipNotUnderstood {
        return Box.of(bytes, descriptions.content() + ENTRIES_AT, descriptions.end());
    }

    /** The boxes in an entry that tell how its samples are coded. */
    static List<Box> configuration(ClipBytes bytes, Box entry) throws ClipNotUnderstood {
        return Box.of(bytes, entry.content() + CHILDREN_AT, entry.end());
    }
}
