package org.espalier.stock.code;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.MultiFormatWriter;
import com.google.zxing.client.j2se.MatrixToImageWriter;
import java.awt.Color;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/**
 * Labels as a phone sees them: turned, far off, in grey light, with noise. Drawn by ZXing 3.5.3, laid askew by hand.
 */
class LabelPhotoTests {

    private static final LocalDate TODAY = LocalDate.of(2026, 1, 15);
    private static final String GS1 = "0109506000134352" + "17290228" + "10AB-12" + "\u001D" + "217";

    @Test
    void readsAMatrixThatLiesAskewInGreyLight() throws Exception {
        for (int degrees : new int[] {0, 17, 45, 80}) {
            var photo = new Photo(1600, 1200).with(matrix(), 800, 300, degrees).grained();
            assertUnderstood(photo.jpeg(), degrees);
        }
        assertUnderstood(new Photo(2400, 1800).with(matrix(), 1000, 700, 17).png(), 17);
    }

    @Test
    void readsBarsOfALargePhoto() throws Exception {
        var bars = drawn("\u00f1" + GS1.replace('\u001D', '\u00f1'), BarcodeFormat.CODE_128, Map.of(), 1500, 260);
        assertUnderstood(
                new Photo(4000, 3000).with(bars, 1200, 1300, 4).grained().jpeg(), 4);
    }

    @Test
    void readsBothBarsOfOneLabel() throws Exception {
        var product = drawn("+A123BJC5D6E71G", BarcodeFormat.CODE_128, Map.of(), 900, 160);
        var lot = drawn("+$$52001510X3GD", BarcodeFormat.CODE_39, Map.of(), 1300, 160);
        var codes = LabelPhoto.codes(new Photo(2000, 1500)
                .with(product, 200, 200, 0)
                .with(lot, 200, 800, 0)
                .jpeg());
        assertThat(codes.orElseThrow()).containsExactlyInAnyOrder("+A123BJC5D6E71G", "+$$52001510X3GD");
    }

    @Test
    void saysWhenThereIsNoCodeAndWhenItIsNoPicture() throws Exception {
        assertThat(LabelPhoto.codes(new Photo(1200, 900).grained().jpeg())).contains(List.of());
        assertThat(LabelPhoto.codes("no picture".getBytes(java.nio.charset.StandardCharsets.UTF_8)))
                .isEmpty();
        assertThat(LabelPhoto.codes(new byte[0])).isEmpty();
        var broken = new Photo(1200, 900).with(matrix(), 300, 300, 0).png();
        assertThat(LabelPhoto.codes(java.util.Arrays.copyOf(broken, broken.length / 3)))
                .isEmpty();
        assertThat(LabelPhoto.codes(new byte[LabelPhoto.MAXIMUM_BYTES + 1])).isEmpty();
    }

    @Test
    void takesNoPictureLargerThanIsLookedAt() throws Exception {
        var flat = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(10_000, 8_001, BufferedImage.TYPE_BYTE_BINARY), "png", flat);
        assertThat(flat.size()).isLessThan(LabelPhoto.MAXIMUM_BYTES);
        assertThat(LabelPhoto.codes(flat.toByteArray())).isEmpty();
    }

    private static void assertUnderstood(byte[] photo, int degrees) {
        assertThat(LabelPhoto.codes(photo).orElseThrow())
                .as("askew by %s degrees", degrees)
                .singleElement()
                .satisfies(text -> assertThat(ScannedCode.parse(text, TODAY))
                        .isInstanceOfSatisfying(ReadCode.class, code -> {
                            assertThat(code.product()).contains("09506000134352");
                            assertThat(code.expiry()).contains(LocalDate.of(2029, 2, 28));
                            assertThat(code.lot()).contains("AB-12");
                            assertThat(code.serial()).contains("7");
                        }));
    }

    private static BufferedImage matrix() throws Exception {
        return drawn(
                GS1,
                BarcodeFormat.DATA_MATRIX,
                Map.of(EncodeHintType.GS1_FORMAT, true, EncodeHintType.DATA_MATRIX_COMPACT, true),
                400,
                400);
    }

    private static BufferedImage drawn(
            String content, BarcodeFormat format, Map<EncodeHintType, Object> hints, int width, int height)
            throws Exception {
        return MatrixToImageWriter.toBufferedImage(
                new MultiFormatWriter().encode(content, format, width, height, hints));
    }

    /** A sheet of paper under a lamp. */
    private static final class Photo {

        private final BufferedImage picture;

        Photo(int width, int height) {
            picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
            var pen = picture.createGraphics();
            pen.setColor(new Color(225, 222, 214));
            pen.fillRect(0, 0, width, height);
            pen.dispose();
        }

        Photo with(BufferedImage code, int x, int y, double degrees) {
            var pen = picture.createGraphics();
            pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            pen.rotate(Math.toRadians(degrees), x + code.getWidth() / 2.0, y + code.getHeight() / 2.0);
            pen.drawImage(code, x, y, null);
            pen.dispose();
            return this;
        }

        /** Grain of at most 12 of 255, as a small sensor in a store room shows. */
        Photo grained() {
            var random = new Random(7);
            for (int y = 0; y < picture.getHeight(); y++) {
                for (int x = 0; x < picture.getWidth(); x++) {
                    int grain = random.nextInt(25) - 12;
                    var was = new Color(picture.getRGB(x, y));
                    picture.setRGB(
                            x,
                            y,
                            new Color(
                                            level(was.getRed() * 0.8 + 20 + grain),
                                            level(was.getGreen() * 0.8 + 20 + grain),
                                            level(was.getBlue() * 0.8 + 20 + grain))
                                    .getRGB());
                }
            }
            return this;
        }

        private static int level(double value) {
            return (int) Math.clamp(value, 0, 255);
        }

        byte[] jpeg() throws Exception {
            return written("jpeg");
        }

        byte[] png() throws Exception {
            return written("png");
        }

        private byte[] written(String format) throws Exception {
            var bytes = new ByteArrayOutputStream();
            ImageIO.write(picture, format, bytes);
            return bytes.toByteArray();
        }
    }
}
