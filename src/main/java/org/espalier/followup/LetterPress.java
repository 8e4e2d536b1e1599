package org.espalier.followup;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
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
import org.apache.xmlgraphics.io.Resource;
import org.apache.xmlgraphics.io.ResourceResolver;
import org.apache.xmlgraphics.util.MimeConstants;
import org.springframework.stereotype.Component;

/** Prints letters as PDF, with typefaces of its own so that every language looks the same everywhere. */
@Component
class LetterPress {

    private static final URI FONTS = URI.create("letters:/fonts/");

    private static final String CONFIGURATION = """
            <fop version="1.0"><renderers><renderer mime="application/pdf"><fonts>
                <font kerning="yes" embed-url="NotoSans-Regular.ttf">
                    <font-triplet name="NotoSans" style="normal" weight="normal"/></font>
                <font kerning="yes" embed-url="NotoSans-Bold.ttf">
                    <font-triplet name="NotoSans" style="normal" weight="bold"/></font>
                <font kerning="yes" embed-url="NotoNaskhArabic-Regular.ttf">
                    <font-triplet name="NotoNaskhArabic" style="normal" weight="normal"/></font>
                <font kerning="yes" embed-url="NotoNaskhArabic-Bold.ttf">
                    <font-triplet name="NotoNaskhArabic" style="normal" weight="bold"/></font>
            </fonts></renderer></renderers></fop>
            """;

    private final FopFactory factory = factory();

    byte[] print(Letter letter) {
        var bytes = new ByteArrayOutputStream();
        try {
            var agent = factory.newFOUserAgent();
            agent.setTitle(new LetterText(letter.language()).text("title." + letter.kind().name()));
            agent.setCreator("Espalier");
            var fop = factory.newFop(MimeConstants.MIME_PDF, agent, bytes);
            TransformerFactory.newInstance()
                    .newTransformer()
                    .transform(new DOMSource(LetterDocument.of(letter)), new SAXResult(fop.getDefaultHandler()));
        } catch (FOPException | TransformerException e) {
            throw new IllegalStateException("the letter cannot be printed", e);
        }
        return bytes.toByteArray();
    }

    private static FopFactory factory() {
        try {
            var configuration = new DefaultConfigurationBuilder()
                    .build(new ByteArrayInputStream(CONFIGURATION.getBytes(StandardCharsets.UTF_8)));
            return new FopFactoryBuilder(FONTS, new BundledFonts())
                    .setConfiguration(configuration)
                    .build();
        } catch (ConfigurationException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Reads the typefaces out of the program, and nothing else from anywhere. */
    private static final class BundledFonts implements ResourceResolver {

        @Override
        public Resource getResource(URI uri) throws IOException {
            var name = uri.getPath().replaceFirst(".*/", "");
            InputStream font = LetterPress.class.getResourceAsStream("fonts/" + name);
            if (font == null) {
                throw new IOException("letters use bundled typefaces alone, not " + uri);
            }
            return new Resource(Objects.requireNonNull(font));
        }

        @Override
        public OutputStream getOutputStream(URI uri) throws IOException {
            throw new IOException("letters are written nowhere: " + uri);
        }
    }
}
