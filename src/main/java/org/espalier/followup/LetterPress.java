package org.espalier.followup;

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

/** Prints letters as PDF, with typefaces of its own so that every language looks the same everywhere. */
@Component
class LetterPress {

    private static final URI NOWHERE = URI.create("file:///");

    private static final String CONFIGURATION = """
            <fop version="1.0"><renderers><renderer mime="application/pdf">
            <fonts>%s</fonts>
            </renderer></renderers></fop>
            """;
    private static final String FONT = """
            <font kerning="yes" embed-url="%s"><font-triplet name="%s" style="normal" weight="%s"/></font>
            """;

    private final FopFactory factory = factory();

    byte[] print(Letter letter) {
        return print(
                new LetterText(letter.language()).text("title." + letter.kind().name()), LetterDocument.of(letter));
    }

    byte[] print(PlateCard card) {
        return print(new LetterText(card.language()).text("card"), PlateCardDocument.of(card));
    }

    private byte[] print(String title, Document pages) {
        var bytes = new ByteArrayOutputStream();
        try {
            var agent = factory.newFOUserAgent();
            agent.setTitle(title);
            agent.setCreator("Espalier");
            var fop = factory.newFop(MimeConstants.MIME_PDF, agent, bytes);
            TransformerFactory.newInstance()
                    .newTransformer()
                    .transform(new DOMSource(pages), new SAXResult(fop.getDefaultHandler()));
        } catch (FOPException | TransformerException e) {
            throw new IllegalStateException("the letter cannot be printed", e);
        }
        return bytes.toByteArray();
    }

    private static FopFactory factory() {
        var fonts = font("NotoSans", "Regular", "normal")
                + font("NotoSans", "Bold", "bold")
                + font("NotoNaskhArabic", "Regular", "normal")
                + font("NotoNaskhArabic", "Bold", "bold");
        var configuration = CONFIGURATION.formatted(fonts).getBytes(StandardCharsets.UTF_8);
        try {
            return new FopFactoryBuilder(NOWHERE)
                    .setConfiguration(new DefaultConfigurationBuilder().build(new ByteArrayInputStream(configuration)))
                    .build();
        } catch (ConfigurationException e) {
            throw new IllegalStateException(e);
        }
    }

    /** A typeface out of the program itself. */
    private static String font(String name, String cut, String weight) {
        var file = Objects.requireNonNull(LetterPress.class.getResource("fonts/" + name + "-" + cut + ".ttf"));
        return FONT.formatted(file.toExternalForm(), name, weight);
    }
}
