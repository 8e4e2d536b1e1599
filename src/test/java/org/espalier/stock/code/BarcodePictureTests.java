package org.espalier.stock.code;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.EncodeHintType;
import com.google.zxing.MultiFormatReader;
import com.google.zxing.MultiFormatWriter;
import com.google.zxing.Result;
import com.google.zxing.ResultMetadataType;
import com.google.zxing.client.j2se.BufferedImageLuminanceSource;
import com.google.zxing.client.j2se.MatrixToImageWriter;
import com.google.zxing.common.HybridBinarizer;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Codes drawn and read back by a general barcode library (ZXing 3.5.3), then understood. */
class BarcodePictureTests {

    private static final LocalDate TODAY = LocalDate.of(2026, 1, 15);
    private static final char GROUP_SEPARATOR = '\u001D';
    private static final char FNC1 = '\u00f1';
    private static final String BEFORE_SEPARATOR = "0109506000134352" + "17290228" + "10AB-12";

    @Test
    void readsADataMatrixOfGs1() throws Exception {
        var hints = new EnumMap<EncodeHintType, Object>(EncodeHintType.class);
        hints.put(EncodeHintType.GS1_FORMAT, true);
        hints.put(EncodeHintType.DATA_MATRIX_COMPACT, true);
        var seen = seen(BEFORE_SEPARATOR + GROUP_SEPARATOR + "217", BarcodeFormat.DATA_MATRIX, hints, 120, 120);
        assertThat(seen.getResultMetadata().get(ResultMetadataType.SYMBOLOGY_IDENTIFIER))
                .isEqualTo("]d2");
        assertUnderstood("]d2" + seen.getText());
        assertUnderstood(seen.getText());
    }

    @Test
    void readsACode128OfGs1() throws Exception {
        var seen = seen("" + FNC1 + BEFORE_SEPARATOR + FNC1 + "217", BarcodeFormat.CODE_128, Map.of(), 900, 120);
        assertUnderstood(seen.getText());
        assertThat(seen.getText()).startsWith("]C1");
    }

    @Test
    void readsHibcInEachSymbology() throws Exception {
        for (var format : List.of(BarcodeFormat.CODE_39, BarcodeFormat.CODE_128, BarcodeFormat.DATA_MATRIX)) {
            var seen = seen("+A99912345/$$52025010X3/16D20111212/S77DEFG458", format, Map.of(), 1400, 200);
            assertThat(ScannedCode.parse(seen.getText(), TODAY)).isInstanceOfSatisfying(ReadCode.class, code -> {
                assertThat(code.product()).contains("A99912345");
                assertThat(code.serial()).contains("77DEFG45");
            });
        }
    }

    @Test
    void readsTheArticleNumberOfARetailCode() throws Exception {
        var seen = seen("9506000134352", BarcodeFormat.EAN_13, Map.of(), 300, 100);
        assertThat(ScannedCode.parse(seen.getText(), TODAY))
                .isInstanceOfSatisfying(
                        ReadCode.class, code -> assertThat(code.product()).contains("09506000134352"));
    }

    private static void assertUnderstood(String text) {
        assertThat(ScannedCode.parse(text, TODAY)).isInstanceOfSatisfying(ReadCode.class, code -> {
            assertThat(code.product()).contains("09506000134352");
            assertThat(code.expiry()).contains(LocalDate.of(2029, 2, 28));
            assertThat(code.lot()).contains("AB-12");
            assertThat(code.serial()).contains("7");
        });
    }

    private static Result seen(
            String content, BarcodeFormat format, Map<EncodeHintType, Object> hints, int width, int height)
            throws Exception {
        var matrix = new MultiFormatWriter().encode(content, format, width, height, hints);
        var picture = MatrixToImageWriter.toBufferedImage(matrix);
        var bitmap = new BinaryBitmap(new HybridBinarizer(new BufferedImageLuminanceSource(picture)));
        var wanted = new EnumMap<DecodeHintType, Object>(DecodeHintType.class);
        wanted.put(DecodeHintType.POSSIBLE_FORMATS, List.of(format));
        wanted.put(DecodeHintType.ASSUME_GS1, true);
        wanted.put(DecodeHintType.PURE_BARCODE, format == BarcodeFormat.DATA_MATRIX);
        return new MultiFormatReader().decode(bitmap, wanted);
    }
}
