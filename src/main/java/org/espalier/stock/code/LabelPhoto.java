package org.espalier.stock.code;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.LuminanceSource;
import com.google.zxing.MultiFormatReader;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.Result;
import com.google.zxing.ResultMetadataType;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.multi.GenericMultipleBarcodeReader;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.MemoryCacheImageInputStream;

/** The codes in a photo of a label, as a general barcode library (ZXing) finds them. */
public final class LabelPhoto {

    /** The largest file that is looked at. */
    public static final int MAXIMUM_BYTES = 20_000_000;

    private static final long MAXIMUM_PIXELS = 80_000_000;
    private static final int PARTS = 5;
    private static final int LAST = PARTS - 1;
    private static final int[] SIDES = {1_600, 3_200};
    private static final Set<String> KINDS = Set.of("jpeg", "png");
    private static final double[] TURNS = {0, 20, 45, 70};
    private static final Map<DecodeHintType, Object> ANY = Map.of(
            DecodeHintType.TRY_HARDER,
            true,
            DecodeHintType.ASSUME_GS1,
            true,
            DecodeHintType.POSSIBLE_FORMATS,
            List.of(
                    BarcodeFormat.DATA_MATRIX,
                    BarcodeFormat.QR_CODE,
                    BarcodeFormat.CODE_128,
                    BarcodeFormat.CODE_39,
                    BarcodeFormat.EAN_13,
                    BarcodeFormat.UPC_A,
                    BarcodeFormat.RSS_14,
                    BarcodeFormat.RSS_EXPANDED));
    private static final Map<DecodeHintType, Object> MATRIX = Map.of(
            DecodeHintType.ALSO_INVERTED,
            true,
            DecodeHintType.POSSIBLE_FORMATS,
            List.of(BarcodeFormat.DATA_MATRIX, BarcodeFormat.QR_CODE));

    private LabelPhoto() {}

    /**
     * What the codes in a photo say, each once, as {@link ScannedCode#parse} takes it.
     *
     * @param file a JPEG or PNG file
     * @return empty when the file is no such picture or larger than is looked at; no text when no code was found
     */
    public static Optional<List<String>> codes(byte[] file) {
        return file.length > MAXIMUM_BYTES ? Optional.empty() : opened(file);
    }

    private static Optional<List<String>> opened(byte[] file) {
        try (var input = new MemoryCacheImageInputStream(new ByteArrayInputStream(file))) {
            var readers = ImageIO.getImageReaders(input);
            if (!readers.hasNext()) {
                return Optional.empty();
            }
            var reader = readers.next();
            try {
                reader.setInput(input);
                return codes(reader);
            } finally {
                reader.dispose();
            }
        } catch (IOException | IllegalArgumentException | IndexOutOfBoundsException broken) {
            return Optional.empty();
        }
    }

    /** Looks at the photo small, which is quick, then large, which finds fine bars. */
    private static Optional<List<String>> codes(ImageReader reader) throws IOException {
        int longer = Math.max(reader.getWidth(0), reader.getHeight(0));
        boolean isPicture = KINDS.contains(reader.getFormatName().toLowerCase(Locale.ROOT));
        if (!isPicture || (long) reader.getWidth(0) * reader.getHeight(0) > MAXIMUM_PIXELS) {
            return Optional.empty();
        }
        List<String> found = List.of();
        for (int side : SIDES) {
            if (found.isEmpty()) {
                int step = Math.max(1, Math.ceilDiv(longer, side));
                var parameters = reader.getDefaultReadParam();
                parameters.setSourceSubsampling(step, step, 0, 0);
                found = codes(reader.read(0, parameters));
            }
        }
        return Optional.of(found);
    }

    private static List<String> codes(BufferedImage picture) {
        var found = all(light(picture));
        for (int turn = 0; turn < TURNS.length && found.isEmpty(); turn++) {
            found = matrixOffCentre(light(turned(picture, TURNS[turn])));
        }
        return found;
    }

    private static List<String> all(LuminanceSource light) {
        try {
            var seen = new GenericMultipleBarcodeReader(new MultiFormatReader()).decodeMultiple(bitmap(light), ANY);
            return Arrays.stream(seen).flatMap(LabelPhoto::text).distinct().toList();
        } catch (NotFoundException nothing) {
            return List.of();
        }
    }

    /** A matrix is looked for from the middle of a picture outwards; so each part has its turn. */
    private static List<String> matrixOffCentre(LuminanceSource light) {
        int width = light.getWidth() / 2;
        int height = light.getHeight() / 2;
        List<String> found = List.of();
        for (int part = 0; part < PARTS * PARTS && found.isEmpty() && width > 0 && height > 0; part++) {
            found = matrix(light.crop(part % PARTS * width / LAST, part / PARTS * height / LAST, width, height));
        }
        return found;
    }

    private static List<String> matrix(LuminanceSource light) {
        try {
            return text(new MultiFormatReader().decode(bitmap(light), MATRIX)).toList();
        } catch (NotFoundException nothing) {
            return List.of();
        }
    }

    private static BinaryBitmap bitmap(LuminanceSource light) {
        return new BinaryBitmap(new HybridBinarizer(light));
    }

    private static LuminanceSource light(BufferedImage picture) {
        int width = picture.getWidth();
        int height = picture.getHeight();
        return new RGBLuminanceSource(width, height, picture.getRGB(0, 0, width, height, null, 0, width));
    }

    private static BufferedImage turned(BufferedImage picture, double degrees) {
        if (degrees == 0) {
            return picture;
        }
        var turned = new BufferedImage(picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_INT_RGB);
        var pen = turned.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        pen.rotate(Math.toRadians(degrees), picture.getWidth() / 2.0, picture.getHeight() / 2.0);
        pen.drawImage(picture, 0, 0, null);
        pen.dispose();
        return turned;
    }

    /** Bars without a check of their own count only where the text has one. */
    private static Stream<String> text(Result seen) {
        var text = seen.getText();
        if (seen.getBarcodeFormat() == BarcodeFormat.CODE_39 && !text.startsWith("+")) {
            return Stream.empty();
        }
        var symbology = seen.getResultMetadata() == null
                ? null
                : seen.getResultMetadata().get(ResultMetadataType.SYMBOLOGY_IDENTIFIER);
        boolean said = text.startsWith("]") || text.startsWith("(");
        boolean ofGs1 = symbology instanceof String sign && ScannedCode.OF_GS1.contains(sign);
        return Stream.of(ofGs1 && !said ? symbology + text : text);
    }
}
