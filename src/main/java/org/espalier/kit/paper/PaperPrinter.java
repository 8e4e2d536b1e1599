package org.espalier.kit.paper;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.sax.SAXResult;
import org.apache.fop.apps.FOPException;
import org.apache.fop.apps.FopFactory;
import org.apache.fop.apps.FopFactoryBuilder;
import org.apache.fop.configuration.ConfigurationException;
import org.apache.fop.configuration.DefaultConfigurationBuilder;
import org.apache.xmlgraphics.util.MimeConstants;
import org.springframework.stereotype.Component;
import org.w3c.dom.Document;

/** Prints pages as PDF, in the typeface of the screens, which the program brings along. */
@Component
public class PaperPrinter {

    private static final URI NOWHERE = URI.create("file:///");

    private static final String SETTINGS = """
            <fop version="1.0"><renderers><renderer mime="application/pdf">
            <fonts>%s%s</fonts>
            </renderer></renderers></fop>
            """;

    private static final String FONT = """
            <font embed-url="%s" embedding-mode="subset"><font-triplet name="%s" style="normal" weight="%s"/></font>""";

    /** The typeface, by the name pages use. */
    public static final String FACE = "Source Sans 3";

    private final FopFactory factory = factory();

    PaperPrinter() {}

    /** The document as PDF. */
    public byte[] print(Document pages) {
        var out = new ByteArrayOutputStream();
        try {
            var fop = factory.newFop(MimeConstants.MIME_PDF, out);
            TransformerFactory.newInstance()
                    .newTransformer()
                    .transform(new DOMSource(pages), new SAXResult(fop.getDefaultHandler()));
            return out.toByteArray();
        } catch (FOPException | TransformerException e) {
            throw new IllegalStateException("The pages cannot be printed", e);
        }
    }

    private static FopFactory factory() {
        var settings = SETTINGS.formatted(font("Regular", "400"), font("Semibold", "600"));
        try {
            var read = new DefaultConfigurationBuilder()
                    .build(new ByteArrayInputStream(settings.getBytes(StandardCharsets.UTF_8)));
            return new FopFactoryBuilder(NOWHERE)
                    .setConfiguration(read)
                    .setComplexScriptFeatures(false)
                    .build();
        } catch (ConfigurationException e) {
            throw new IllegalStateException("The settings of the print are broken", e);
        }
    }

    private static String font(String cut, String weight) {
        var file = Objects.requireNonNull(
                PaperPrinter.class.getResource("/org/espalier/kit/paper/SourceSans3-" + cut + ".ttf"));
        return FONT.formatted(file.toExternalForm(), FACE, weight);
    }
}
