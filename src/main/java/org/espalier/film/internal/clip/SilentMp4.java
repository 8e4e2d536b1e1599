package org.espalier.film.internal.clip;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * An MP4 (ISO/IEC 14496-12) with the samples of its picture and the tables needed to play them. Sound and other tracks,
 * places, times, names of programs and cameras become empty space of the same length; so does every byte of media that
 * no sample of a picture holds.
 */
public final class SilentMp4 {

    /** What stays in each box that is entered; whatever else there is becomes empty. */
    private static final Map<String, Set<String>> KEPT = Map.of(
            "", Set.of("ftyp", "moov", "moof", "mdat", "sidx"),
            "moov", Set.of("mvhd", "trak", "mvex"),
            "mvex", Set.of("mehd", "trex"),
            "trak", Set.of("tkhd", "edts", "mdia"),
            "mdia", Set.of("mdhd", "hdlr", "minf"),
            "minf", Set.of("vmhd", "dinf", "stbl"),
            "stbl",
                    Set.of(
                            "stsd", "stts", "stss", "ctts", "cslg", "stsc", "stsz", "stco", "co64", "sdtp", "sgpd",
                            "sbgp"),
            "moof", Set.of("mfhd", "traf"),
            "traf", Set.of("tfhd", "tfdt", "trun", "sdtp", "sgpd", "sbgp"));

    private static final Set<String> ENTERED = Set.of("moov", "mvex", "trak", "mdia", "minf", "stbl", "moof", "traf");
    private static final Set<String> TIMED = Set.of("mvhd", "tkhd", "mdhd");

    /** A reference to the file itself, and no other. */
    private static final int OWN_DATA = 36;

    private static final int UNDETERMINED_LANGUAGE = 0x55C4;
    private static final int HANDLER_AT = 8;
    private static final int HANDLER_NAME_AT = 24;

    private final ClipBytes bytes;
    private final List<SampleTable> pictures = new ArrayList<>();

    private SilentMp4(ClipBytes bytes) {
        this.bytes = bytes;
    }

    /**
     * Takes out in place what stands beside the picture.
     *
     * @throws ClipNotUnderstood when the file is not so built; its bytes are then of no use
     */
    public static void strip(byte[] file) throws ClipNotUnderstood {
        new SilentMp4(new ClipBytes(file)).strip();
    }

    private void strip() throws ClipNotUnderstood {
        var top = Box.of(bytes, 0, bytes.length());
        boolean inFragments = top.stream().anyMatch(box -> box.name().equals("moof"));
        strip("", top, inFragments);
        if (pictures.isEmpty()) {
            throw new ClipNotUnderstood("no picture");
        }
        if (inFragments && pictures.stream().anyMatch(picture -> picture.units().mayHoldWords())) {
            throw new ClipNotUnderstood("frames in fragments that may hold words");
        }
        if (!inFragments) {
            new PictureSamples(bytes, pictures, mediaOf(top)).keepAlone();
        }
    }

    private static List<Box> mediaOf(List<Box> top) {
        return top.stream().filter(box -> box.name().equals("mdat")).toList();
    }

    private void strip(String holder, List<Box> boxes, boolean inFragments) throws ClipNotUnderstood {
        for (var box : boxes) {
            if (!KEPT.getOrDefault(holder, Set.of()).contains(box.name())
                    || box.name().equals("trak") && !isPicture(box, inFragments)) {
                box.empty(bytes);
            } else {
                keep(box, inFragments);
            }
        }
    }

    private void keep(Box box, boolean inFragments) throws ClipNotUnderstood {
        if (TIMED.contains(box.name())) {
            forgetTimes(box);
        }
        switch (box.name()) {
            case "hdlr" -> bytes.fill(Math.min(box.content() + HANDLER_NAME_AT, box.end()), box.end(), 0);
            case "dinf" -> demandOwnData(box);
            case "stsd" -> SampleEntry.strip(bytes, box);
            case "stbl" -> pictures.add(SampleTable.of(bytes, box));
            default -> {}
        }
        if (ENTERED.contains(box.name())) {
            strip(box.name(), box.children(bytes), inFragments);
        }
    }

    private void demandOwnData(Box box) throws ClipNotUnderstood {
        if (box.end() - box.from() != OWN_DATA) {
            throw new ClipNotUnderstood("the picture lies in another file");
        }
    }

    /** Whether a track is a picture; in fragments no other may be beside it, as its samples would have to be found. */
    private boolean isPicture(Box track, boolean inFragments) throws ClipNotUnderstood {
        var handler = track.demand(bytes, "mdia").demand(bytes, "hdlr");
        boolean picture = bytes.name(handler.content() + HANDLER_AT).equals("vide");
        if (!picture && inFragments) {
            throw new ClipNotUnderstood("sound in fragments");
        }
        return picture;
    }

    /** When it was made and changed becomes the beginning of time; a language said is said no more. */
    private void forgetTimes(Box box) throws ClipNotUnderstood {
        int times = box.content() + Integer.BYTES;
        int each = bytes.at(box.content()) == 0 ? Integer.BYTES : Long.BYTES;
        bytes.fill(times, times + 2 * each, 0);
        if (box.name().equals("mdhd")) {
            int language = times + 2 * each + Integer.BYTES + each;
            bytes.write(language, UNDETERMINED_LANGUAGE >> 8);
            bytes.write(language + 1, UNDETERMINED_LANGUAGE & 0xFF);
        }
    }
}
