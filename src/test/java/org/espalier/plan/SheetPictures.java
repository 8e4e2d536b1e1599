package org.espalier.plan;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.contentstream.operator.OperatorName;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;

/** Keeps printed sheets as pictures for a person to look at, and reads what stands on them. */
final class SheetPictures {

    private static final Path PICTURES = Path.of("target", "pictures");
    private static final float DPI = 80;

    private SheetPictures() {}

    /** How often it shows a photograph. */
    static long pictures(byte[] bytes) {
        try (var pdf = Loader.loadPDF(bytes)) {
            long shown = 0;
            for (var page : pdf.getPages()) {
                for (var token : new PDFStreamParser(page).parse()) {
                    if (token instanceof Operator operator && operator.getName().equals(OperatorName.DRAW_OBJECT)) {
                        shown++;
                    }
                }
            }
            return shown;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** All its words. */
    static String keep(String name, byte[] bytes) {
        try (var pdf = Loader.loadPDF(bytes)) {
            Files.createDirectories(PICTURES);
            var renderer = new PDFRenderer(pdf);
            for (int page = 0; page < pdf.getNumberOfPages(); page++) {
                var file = PICTURES.resolve("plan-%s-%d.png".formatted(name, page + 1));
                ImageIO.write(renderer.renderImageWithDPI(page, DPI), "png", file.toFile());
            }
            return new PDFTextStripper().getText(pdf);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
