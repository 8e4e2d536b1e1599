package org.espalier.kit.paper;

import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.function.Consumer;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** The same drawings that go on paper, as pictures of a screen. */
public final class Drawings {

    /** A picture sees none of the page's own typefaces, and a name with a digit has to be quoted. */
    private static final String FACES = "'" + PaperPrinter.FACE + "', system-ui, sans-serif";

    private Drawings() {}

    /** What draws into a page, as the address of a picture. */
    public static String address(Consumer<Markup> drawing) {
        var page = Markup.document();
        drawing.accept(page);
        var picture = (Element) page.element().getFirstChild();
        picture.setAttribute("font-family", FACES);
        var bytes = text(picture).getBytes(StandardCharsets.UTF_8);
        return "data:image/svg+xml;base64," + Base64.getEncoder().encodeToString(bytes);
    }

    private static String text(Node drawing) {
        try {
            var out = new StringWriter();
            var writer = TransformerFactory.newInstance().newTransformer();
            writer.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
            writer.transform(new DOMSource(drawing), new StreamResult(out));
            return out.toString();
        } catch (TransformerException e) {
            throw new IllegalStateException("A drawing cannot be written", e);
        }
    }
}
