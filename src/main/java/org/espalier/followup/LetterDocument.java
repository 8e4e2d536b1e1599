package org.espalier.followup;

import java.text.Bidi;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.espalier.kit.paper.Ink;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** A letter laid out: large type, few words, when and where in a box. Right to left where the language is. */
final class LetterDocument {

    private static final String FO = "http://www.w3.org/1999/XSL/Format";
    private static final String LEAF = "#2f6b4f";

    private final Letter letter;
    private final LetterText text;
    private final Document document;

    private LetterDocument(Letter letter, Document document) {
        this.letter = letter;
        this.document = document;
        text = new LetterText(letter.language());
    }

    /** The letter as formatting objects. */
    static Document of(Letter letter) {
        try {
            var factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            var made = new LetterDocument(letter, factory.newDocumentBuilder().newDocument());
            made.write();
            return made.document;
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException(e);
        }
    }

    private void write() {
        var root = element("root");
        document.appendChild(root);
        root.setAttribute("font-family", "NotoSans, NotoNaskhArabic");
        root.setAttribute("font-size", "12.5pt");
        root.setAttribute("line-height", "1.5");
        root.setAttribute("color", Ink.INK);
        root.setAttribute("xml:lang", letter.language().locale().getLanguage());
        if (letter.language().isRightToLeft()) {
            root.setAttribute("font-family", "NotoNaskhArabic, NotoSans");
            root.setAttribute("writing-mode", "rl-tb");
        }
        root.appendChild(page());
        var sequence = add(root, "page-sequence");
        sequence.setAttribute("master-reference", "letter");
        var flow = add(sequence, "flow");
        flow.setAttribute("flow-name", "xsl-region-body");
        body(flow);
    }

    private Element page() {
        var set = element("layout-master-set");
        var page = add(set, "simple-page-master");
        page.setAttribute("master-name", "letter");
        page.setAttribute("page-width", "210mm");
        page.setAttribute("page-height", "297mm");
        page.setAttribute("margin", "20mm");
        var body = add(page, "region-body");
        if (letter.language().isRightToLeft()) {
            page.setAttribute("writing-mode", "rl-tb");
            body.setAttribute("writing-mode", "rl-tb");
        }
        return set;
    }

    private void body(Element flow) {
        var head = block(flow, "");
        head.setAttribute("color", LEAF);
        own(head, letter.hospital());
        var title = block(flow, text.text("title." + letter.kind().name()));
        title.setAttribute("font-size", "20pt");
        title.setAttribute("font-weight", "bold");
        title.setAttribute("space-before", "14pt");
        title.setAttribute("space-after", "14pt");
        title.setAttribute("line-height", "1.3");
        block(flow, text.text("greeting", name()));
        spaced(flow, text.text("opening." + letter.kind().name(), name()));
        box(flow);
        part(flow, "why", text.text("why.text"));
        call(flow);
        sooner(flow);
        spaced(flow, text.text("bring"));
        spaced(flow, text.text("closing"));
    }

    private void box(Element flow) {
        var box = add(flow, "block");
        box.setAttribute("border", "1pt solid " + LEAF);
        box.setAttribute("padding", "8pt");
        box.setAttribute("space-before", "8pt");
        box.setAttribute("space-after", "8pt");
        box.setAttribute("font-weight", "bold");
        var date = letter.appointment().filter(one -> letter.kind().needsDate());
        date.ifPresentOrElse(one -> labelled(box, "when", when(one)), () -> labelled(box, "by", text.day(letter.by())));
        labelled(box, "where", letter.hospital() + ", " + letter.letterhead().address());
    }

    private void labelled(Element box, String label, String words) {
        block(box, text.text("label", text.text(label), words));
    }

    private String when(Appointment appointment) {
        var day = text.day(appointment.on());
        return appointment
                .time()
                .map(time -> text.text("when.at", day, text.time(time)))
                .orElse(day);
    }

    /** The number stands as one piece on one line, from left to right, whatever the language around it. */
    private void call(Element flow) {
        heading(flow, "call");
        var mark = "\u0000";
        var parts = text.text("call.text", mark).split(mark, 2);
        var block = block(flow, parts[0]);
        var number = add(block, "bidi-override");
        number.setAttribute("direction", "ltr");
        number.setAttribute("unicode-bidi", "bidi-override");
        number.setAttribute("font-weight", "bold");
        number.setTextContent(letter.letterhead().phone().replace(' ', '\u00a0'));
        block.appendChild(document.createTextNode(parts[1]));
    }

    /** Names and addresses run in the direction of their own letters. */
    private void own(Element block, String words) {
        boolean ltr = new Bidi(words, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT).baseIsLeftToRight();
        var own = add(block, "bidi-override");
        own.setAttribute("direction", ltr ? "ltr" : "rtl");
        own.setAttribute("unicode-bidi", "embed");
        own.setTextContent(words);
    }

    private void sooner(Element flow) {
        heading(flow, "sooner");
        block(flow, text.text("sooner.text"));
        var list = add(flow, "list-block");
        list.setAttribute("provisional-distance-between-starts", "14pt");
        text.items("sooner.items").forEach(item -> {
            var entry = add(list, "list-item");
            var label = add(entry, "list-item-label");
            label.setAttribute("end-indent", "label-end()");
            block(label, "•");
            var body = add(entry, "list-item-body");
            body.setAttribute("start-indent", "body-start()");
            block(body, item);
        });
    }

    private void part(Element flow, String key, String words) {
        heading(flow, key);
        block(flow, words);
    }

    private void heading(Element flow, String key) {
        var heading = block(flow, text.text(key));
        heading.setAttribute("font-weight", "bold");
        heading.setAttribute("space-before", "10pt");
        heading.setAttribute("keep-with-next", "always");
    }

    private void spaced(Element flow, String words) {
        block(flow, words).setAttribute("space-before", "8pt");
    }

    private String name() {
        return Optional.ofNullable(letter.givenName()).orElse("…");
    }

    private Element block(Element parent, String words) {
        var block = add(parent, "block");
        block.setTextContent(words);
        return block;
    }

    private Element add(Element parent, String name) {
        var child = element(name);
        parent.appendChild(child);
        return child;
    }

    private Element element(String name) {
        return document.createElementNS(FO, "fo:" + name);
    }
}
