package org.espalier.shell;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Base64;
import javax.imageio.ImageIO;

/** A text as a picture that a telephone reads, within the page itself: it lies at no address. */
final class QrPicture {

    private static final int SIDE_PIXELS = 240;
    private static final int WHITE = 0xFFFFFF;

    private QrPicture() {}

    static String of(String text) {
        try {
            var dots = new QRCodeWriter().encode(text, BarcodeFormat.QR_CODE, SIDE_PIXELS, SIDE_PIXELS);
            var png = new ByteArrayOutputStream();
            ImageIO.write(picture(dots), "png", png);
            return "data:image/png;base64," + Base64.getEncoder().encodeToString(png.toByteArray());
        } catch (WriterException e) {
            throw new IllegalArgumentException("too long for a picture: " + text.length() + " signs", e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static BufferedImage picture(BitMatrix dots) {
        var picture = new BufferedImage(dots.getWidth(), dots.getHeight(), BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < dots.getHeight(); y++) {
            for (int x = 0; x < dots.getWidth(); x++) {
                picture.setRGB(x, y, dots.get(x, y) ? 0 : WHITE);
            }
        }
        return picture;
    }
}
