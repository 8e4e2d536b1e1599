package org.espalier.film;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.zip.Deflater;

/** Writes small DICOM files (PS3.10) for tests, each with UIDs of its own below the root for derived UIDs. */
public final class TestFilm {

    private static final AtomicLong COUNT = new AtomicLong(System.nanoTime());
    private static final String EXPLICIT = "1.2.840.10008.1.2.1";
    private static final String DEFLATED = "1.2.840.10008.1.2.1.99";

    private record Value(String vr, byte[] bytes) {}

    private final Map<Integer, Value> values = new TreeMap<>();
    private final int columns;
    private final int rows;
    private short[] pixels;
    private String transferSyntax = EXPLICIT;

    private TestFilm(int columns, int rows) {
        this.columns = columns;
        this.rows = rows;
        pixels = new short[columns * rows];
        text(0x00080016, "UI", "1.2.840.10008.5.1.4.1.1.1.1");
        text(0x00080018, "UI", uid());
        text(0x00080020, "DA", "20240314");
        text(0x00080060, "CS", "DX");
        text(0x00100010, "PN", "Invented^Child");
        text(0x0020000D, "UI", uid());
        text(0x0020000E, "UI", uid());
        text(0x00200013, "IS", "1");
        number(0x00280002, 1);
        text(0x00280004, "CS", "MONOCHROME2");
        number(0x00280010, rows);
        number(0x00280011, columns);
        number(0x00280100, 16);
        number(0x00280101, 12);
        number(0x00280102, 11);
        number(0x00280103, 0);
    }

    /** A 12-bit film with a slope of grey, unlike every other one. */
    public static TestFilm of(int columns, int rows) {
        var film = new TestFilm(columns, rows);
        for (int i = 0; i < film.pixels.length; i++) {
            film.pixels[i] = (short) ((i % columns) * 4095L / columns);
        }
        return film;
    }

    private static String uid() {
        return "2.25." + COUNT.incrementAndGet();
    }

    public TestFilm text(int tag, String vr, String text) {
        values.put(tag, new Value(vr, text.getBytes(StandardCharsets.US_ASCII)));
        return this;
    }

    public TestFilm number(int tag, int value) {
        values.put(tag, new Value("US", new byte[] {(byte) value, (byte) (value >> 8)}));
        return this;
    }

    public TestFilm without(int tag) {
        values.remove(tag);
        return this;
    }

    public TestFilm of(String localNumber, String birthDate) {
        return text(0x00100020, "LO", localNumber).text(0x00100030, "DA", birthDate);
    }

    public TestFilm pixels(short[] samples) {
        pixels = samples;
        return this;
    }

    public TestFilm deflated() {
        transferSyntax = DEFLATED;
        return this;
    }

    public String uid(int tag) {
        return new String(value(tag), StandardCharsets.US_ASCII);
    }

    private byte[] value(int tag) {
        var value = values.get(tag);
        return value == null ? new byte[0] : value.bytes();
    }

    public InputStream stream() {
        return new ByteArrayInputStream(bytes());
    }

    public byte[] bytes() {
        var content = ByteBuffer.allocate(20_000 + values.size() * 80 + pixels.length * 2)
                .order(ByteOrder.LITTLE_ENDIAN);
        values.forEach((tag, value) -> write(content, tag, value.vr(), value.bytes()));
        writePixels(content);
        var body = Arrays.copyOf(content.array(), content.position());
        return file(transferSyntax.equals(DEFLATED) ? deflate(body) : body);
    }

    private void writePixels(ByteBuffer content) {
        tag(content, 0x7FE00010);
        content.put("OW".getBytes(StandardCharsets.US_ASCII))
                .putShort((short) 0)
                .putInt(pixels.length * 2);
        content.asShortBuffer().put(pixels);
        content.position(content.position() + pixels.length * 2);
    }

    private byte[] file(byte[] body) {
        var meta = ByteBuffer.allocate(200).order(ByteOrder.LITTLE_ENDIAN);
        write(meta, 0x00020002, "UI", value(0x00080016));
        write(meta, 0x00020003, "UI", value(0x00080018));
        write(meta, 0x00020010, "UI", transferSyntax.getBytes(StandardCharsets.US_ASCII));
        var file = ByteBuffer.allocate(128 + 4 + 12 + meta.position() + body.length)
                .order(ByteOrder.LITTLE_ENDIAN);
        file.position(128);
        file.put("DICM".getBytes(StandardCharsets.US_ASCII));
        tag(file, 0x00020000);
        file.put("UL".getBytes(StandardCharsets.US_ASCII)).putShort((short) 4).putInt(meta.position());
        file.put(meta.array(), 0, meta.position()).put(body);
        return file.array();
    }

    private static void write(ByteBuffer target, int tag, String vr, byte[] bytes) {
        int padded = bytes.length + (bytes.length & 1);
        tag(target, tag);
        target.put(vr.getBytes(StandardCharsets.US_ASCII))
                .putShort((short) padded)
                .put(bytes);
        if (padded > bytes.length) {
            target.put((byte) (vr.equals("UI") ? 0 : ' '));
        }
    }

    private static void tag(ByteBuffer target, int tag) {
        target.putShort((short) (tag >> 16)).putShort((short) tag);
    }

    static byte[] deflate(byte[] plain) {
        var deflater = new Deflater(Deflater.BEST_SPEED, true);
        deflater.setInput(plain);
        deflater.finish();
        var packed = new byte[plain.length + 1000];
        int length = deflater.deflate(packed);
        deflater.end();
        return Arrays.copyOf(packed, length);
    }
}
