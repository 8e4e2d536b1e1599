package org.espalier.film;

import static org.espalier.film.TestPictures.bytes;
import static org.espalier.film.TestPictures.joined;
import static org.espalier.film.TestPictures.text;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * Clips put together by the book, with a word planted everywhere a camera or a program may write one: ISO/IEC 14496-12
 * and -15 for MP4, RFC 8794 and RFC 9559 for WebM. Their frames are no pictures.
 */
public final class TestClips {

    /** A frame of the picture in either clip. */
    public static final byte[] FRAME = {0, 0, 0, 6, 0x65, 11, 22, 33, 44, 55};

    private static final int UNTOLD = 0xFF;

    private TestClips() {}

    /** Two frames, a sound between them, and words everywhere. */
    public static byte[] mp4(String word) {
        var sei = units(joined(bytes(0x06, 0x05), bytes(word.length()), text(word), bytes(0x80)));
        var first = joined(sei, FRAME);
        var sound = text("sound " + word);
        var type = box("ftyp", text("isom"), number(0x200), text("isom"));
        var strange = box("uuid", new byte[16], text(word));
        int before = type.length + strange.length;
        int media = before + moov(word, 0, first.length, sound.length).length + 8;
        var moov = moov(word, media, first.length, sound.length);
        return joined(type, strange, moov, box("mdat", first, sound, FRAME), box("free", text(word)));
    }

    private static byte[] moov(String word, int media, int first, int sound) {
        var frames = joined(number(0), number(0), number(2), number(first), number(FRAME.length));
        var places = joined(number(0), number(2), number(media), number(media + first + sound));
        return box(
                "moov",
                box(
                        "mvhd",
                        number(0),
                        number(0xDEAD_BEEF),
                        number(0xDEAD_BEEF),
                        number(1000),
                        number(4000),
                        new byte[80]),
                track(word, "vide", box("vmhd", new byte[12]), picture(word), frames, places),
                track(
                        word,
                        "soun",
                        box("smhd", new byte[8]),
                        box("stsd", number(0), number(1), box("mp4a", new byte[28])),
                        joined(number(0), number(sound), number(1)),
                        joined(number(0), number(1), number(media + first))),
                box("udta", box("\u00a9xyz", text(word)), number(0)));
    }

    private static byte[] picture(String word) {
        var name = Arrays.copyOf(joined(bytes(word.length()), text(word)), 32);
        var configuration = box("avcC", bytes(1, 0x42, 0, 0x1E, UNTOLD, 0xE0, 0));
        var entry = box(
                "avc1",
                new byte[6],
                bytes(0, 1),
                new byte[34],
                name,
                bytes(0, 0x18, UNTOLD, UNTOLD),
                configuration,
                box("note", text(word)));
        return box("stsd", number(0), number(1), entry);
    }

    private static byte[] track(
            String word, String kind, byte[] head, byte[] description, byte[] sizes, byte[] places) {
        var table = box(
                "stbl",
                description,
                box("stts", number(0), number(1), number(2), number(2000)),
                box("stsc", number(0), number(1), number(1), number(1), number(1)),
                box("stsz", sizes),
                box("stco", places));
        var data = box("dinf", box("dref", number(0), number(1), box("url ", number(1))));
        return box(
                "trak",
                box("tkhd", number(7), number(0xDEAD_BEEF), number(0xDEAD_BEEF), new byte[72]),
                box("meta", text(word)),
                box(
                        "mdia",
                        box(
                                "mdhd",
                                number(0),
                                number(0xDEAD_BEEF),
                                number(0xDEAD_BEEF),
                                number(1000),
                                number(4000),
                                number(0)),
                        box("hdlr", number(0), number(0), text(kind), new byte[12], text(word + "\0")),
                        box("minf", head, data, table)));
    }

    /** A unit with its length before it. */
    private static byte[] units(byte[] unit) {
        return joined(number(unit.length), unit);
    }

    private static byte[] box(String name, byte[]... parts) {
        var content = joined(parts);
        return joined(number(content.length + 8), name.getBytes(StandardCharsets.ISO_8859_1), content);
    }

    private static byte[] number(int value) {
        return ByteBuffer.allocate(Integer.BYTES).putInt(value).array();
    }

    /** A frame and a sound, and words everywhere. */
    public static byte[] webm(String word) {
        var info = element(
                0x1549A966,
                element(0x2AD7B1, bytes(0x0F, 0x42, 0x40)),
                element(0x4489, number(Float.floatToIntBits(2000))),
                element(0x4D80, text(word)),
                element(0x5741, text(word)),
                element(0x7BA9, text(word.repeat(20))),
                element(0x4461, new byte[8]));
        var picture = element(
                0xAE,
                element(0xD7, bytes(1)),
                element(0x73C5, bytes(0xDE, 0xAD, 0xBE, 0xEF)),
                element(0x83, bytes(1)),
                element(0x86, text("V_VP8")),
                element(0x536E, text(word)),
                element(0xE0, element(0xB0, bytes(40)), element(0xBA, bytes(30))));
        var sound = element(
                0xAE,
                element(0xD7, bytes(2)),
                element(0x83, bytes(2)),
                element(0x86, text("A_OPUS")),
                element(0x536E, text(word)));
        return joined(
                TestPictures.webmHead(),
                bytes(0x18, 0x53, 0x80, 0x67),
                bytes(TestPictures.UNKNOWN),
                info,
                element(0x1654AE6B, picture, sound),
                element(0x1254C367, text(word)),
                bytes(0x1F, 0x43, 0xB6, 0x75),
                bytes(TestPictures.UNKNOWN),
                element(0xE7, bytes(0)),
                element(0xA3, bytes(0x81, 0, 0, 0x80), FRAME),
                element(0xA3, bytes(0x82, 0, 0, 0x80), text(word)),
                element(0xA0, element(0xA1, bytes(0x82, 0, 9, 0), text(word))));
    }

    private static byte[] element(int id, byte[]... parts) {
        var content = joined(parts);
        var name = number(id);
        int skip = Integer.numberOfLeadingZeros(id) / Byte.SIZE;
        return joined(
                Arrays.copyOfRange(name, skip, name.length),
                bytes(0x40 | content.length >> 8, content.length & 0xFF),
                content);
    }
}
