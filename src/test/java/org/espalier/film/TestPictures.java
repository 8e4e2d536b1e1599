package org.espalier.film;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Map;
import javax.imageio.ImageIO;
import org.espalier.film.TestDoor.Sender;
import org.espalier.patient.ChildId;
import org.springframework.stereotype.Component;

/** Photos and clips: containers put together by the book around no picture at all, and real photos. */
@Component
public class TestPictures {

    /** The browser itself makes the clip: an encoder that is not ours. */
    public static final String RECORD = """
            async () => {
              const canvas = document.createElement('canvas');
              canvas.width = 160; canvas.height = 240;
              const pen = canvas.getContext('2d');
              const recorder = new MediaRecorder(canvas.captureStream(25), { mimeType: 'video/webm' });
              const parts = [];
              recorder.ondataavailable = event => parts.push(event.data);
              const stopped = new Promise(resolve => recorder.onstop = resolve);
              recorder.start();
              for (let step = 0; step < 40; step++) {
                pen.fillStyle = '#eee'; pen.fillRect(0, 0, 160, 240);
                pen.fillStyle = '#2f6b4f'; pen.fillRect(60 + 30 * Math.sin(step / 3), 40, 30, 160);
                await new Promise(resolve => setTimeout(resolve, 40));
              }
              recorder.stop();
              await stopped;
              const bytes = new Uint8Array(await new Blob(parts).arrayBuffer());
              return btoa(Array.from(bytes, one => String.fromCharCode(one)).join(''));
            }""";

    static final int[] UNKNOWN = {0x01, 0xFF, 0xFF, 0xFF, 0xFF, 0xFF, 0xFF, 0xFF};

    private final PictureService pictures;

    TestPictures(PictureService pictures) {
        this.pictures = pictures;
    }

    /** A kept clip of the child, and arguments for the methods about it. */
    public Arranged arrange(Sender sender, ChildId child, LocalDate day) {
        var consent = new Consent(Consent.By.PARENT, day);
        var id = kept(sender, child, day, TestClips.mp4("Wanda"));
        var photo = kept(sender, child, day, photo(40, 30, "jpeg"));
        return new Arranged(
                id,
                photo,
                Map.of(
                        "PictureService.receive",
                        new Object[] {child, new ByteArrayInputStream(mp4(1000, 8_000)), day, consent},
                        "PictureService.open",
                        new Object[] {id},
                        "PictureService.openLarge",
                        new Object[] {photo},
                        "PictureService.withdraw",
                        new Object[] {id, "consent taken back"}));
    }

    /** Keeps a photo or clip of the child, as a parent agreed. */
    public PictureId kept(Sender sender, ChildId child, LocalDate day, byte[] bytes) {
        var consent = new Consent(Consent.By.PARENT, day);
        var kept = sender.does(() -> pictures.receive(child, new ByteArrayInputStream(bytes), day, consent));
        return ((PictureReceived.Kept) kept).picture();
    }

    /** A clip and a photo that are kept. */
    public record Arranged(PictureId picture, PictureId photo, Map<String, Object[]> arguments) {}

    /** An MP4 (ISO/IEC 14496-12) of a file type and a movie header, version 0. */
    static byte[] mp4(int timeScale, int duration) {
        return written(out -> {
            out.writeInt(20);
            out.writeBytes("ftypisom");
            out.writeInt(0x200);
            out.writeBytes("isom");
            out.writeInt(8 + 108);
            out.writeBytes("moov");
            out.writeInt(108);
            out.writeBytes("mvhd");
            out.writeInt(0);
            out.writeInt(0);
            out.writeInt(0);
            out.writeInt(timeScale);
            out.writeInt(duration);
            out.writeInt(0x0001_0000);
            out.writeShort(0x0100);
            out.write(new byte[10]);
            out.writeInt(0x0001_0000);
            out.write(new byte[12]);
            out.writeInt(0x0001_0000);
            out.write(new byte[12]);
            out.writeInt(0x4000_0000);
            out.write(new byte[24]);
            out.writeInt(2);
        });
    }

    /** The head of a WebM (RFC 8794 and 9559), up to its open segment. */
    static byte[] webmHead() {
        return bytes(0x1A, 0x45, 0xDF, 0xA3, 0x87, 0x42, 0x82, 0x84, 'w', 'e', 'b', 'm');
    }

    static byte[] bytes(int... values) {
        return written(out -> {
            for (int value : values) {
                out.write(value);
            }
        });
    }

    static byte[] joined(byte[]... parts) {
        return written(out -> {
            for (var part : parts) {
                out.write(part);
            }
        });
    }

    static byte[] photo(int width, int height, String format) {
        var image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        image.setRGB(width / 2, height / 2, Color.ORANGE.getRGB());
        return written(out -> ImageIO.write(image, format, out));
    }

    static byte[] text(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private interface Writing {
        void to(DataOutputStream out) throws IOException;
    }

    private static byte[] written(Writing writing) {
        var bytes = new ByteArrayOutputStream();
        try (var out = new DataOutputStream(bytes)) {
            writing.to(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }
}
