package org.espalier.kit.paper;

import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** An element of a page or of a drawing in the making; every text and attribute is escaped by the document. */
public record Markup(Element element) {

    private static final String FO = "http://www.w3.org/1999/XSL/Format";
    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final String XLINK = "http://www.w3.org/1999/xlink";

    /** The root of a paginated document. */
    public static Markup document() {
        try {
            var factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            Document document = factory.newDocumentBuilder().newDocument();
            var root = document.createElementNS(FO, "fo:root");
            document.appendChild(root);
            return new Markup(root);
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("The XML library of this Java cannot make a document", e);
        }
    }

    public Document whole() {
        return element.getOwnerDocument();
    }

    /** Adds an element of the page. */
    public Markup fo(String name) {
        return add(FO, "fo:" + name);
    }

    /** Adds a paragraph. */
    public Markup block(String text) {
        return fo("block").text(text);
    }

    /** Adds an element of a drawing. */
    public Markup svg(String name) {
        return add(SVG, "svg:" + name);
    }

    public Markup with(String attribute, String value) {
        element.setAttribute(attribute, value);
        return this;
    }

    public Markup with(String attribute, double value) {
        return with(attribute, String.format(Locale.ROOT, "%.2f", value));
    }

    /** Names the picture that an element of a drawing shows. */
    public Markup picture(String address) {
        element.setAttributeNS(XLINK, "xlink:href", address);
        return this;
    }

    public Markup text(String text) {
        element.appendChild(whole().createTextNode(text));
        return this;
    }

    private Markup add(String space, String name) {
        var child = whole().createElementNS(space, name);
        element.appendChild(child);
        return new Markup(child);
    }
}
