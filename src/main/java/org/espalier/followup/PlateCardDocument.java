package org.espalier.followup;

import java.text.Bidi;
import java.util.LinkedHashMap;
import java.util.stream.Collectors;
import org.espalier.kit.paper.Ink;
import org.espalier.kit.paper.Markup;
import org.w3c.dom.Document;

/**
 * The plate card laid out on a sheet of half size: what is in, in a scanner, whom to call. Right to left where the
 * language is.
 */
final class PlateCardDocument {

    private static final String LEAF = "#2f6b4f";

    private final PlateCard card;
    private final LetterText text;

    private PlateCardDocument(PlateCard card) {
        this.card = card;
        text = new LetterText(card.language());
    }

    /** The card as formatting objects. */
    static Document of(PlateCard card) {
        var root = Markup.document();
        new PlateCardDocument(card).write(root);
        return root.whole();
    }

    private void write(Markup root) {
        boolean right = card.language().isRightToLeft();
        root.with("font-family", right ? "NotoNaskhArabic, NotoSans" : "NotoSans, NotoNaskhArabic")
                .with("font-size", "10pt")
                .with("line-height", "1.4")
                .with("color", Ink.INK)
                .with("xml:lang", card.language().locale().getLanguage());
        var page = root.fo("layout-master-set")
                .fo("simple-page-master")
                .with("master-name", "card")
                .with("page-width", "148mm")
                .with("page-height", "210mm")
                .with("margin", "11mm");
        var body = page.fo("region-body");
        if (right) {
            root.with("writing-mode", "rl-tb");
            page.with("writing-mode", "rl-tb");
            body.with("writing-mode", "rl-tb");
        }
        fill(root.fo("page-sequence")
                .with("master-reference", "card")
                .fo("flow")
                .with("flow-name", "xsl-region-body"));
    }

    private void fill(Markup flow) {
        own(block(flow).with("color", LEAF), card.hospital());
        block(flow)
                .with("font-size", "16pt")
                .with("font-weight", "bold")
                .with("line-height", "1.3")
                .with("space-after", "4pt")
                .text(text.text("card.title", card.givenName()));
        block(flow).text(text.text("card.carry", card.givenName()));
        card.items().forEach(item -> item(flow, item));
        heading(flow, "card.magnet");
        block(flow).text(text.text("card.magnet." + card.magnet()));
        block(flow).text(text.text("card.magnet.decides"));
        call(flow);
        heading(flow, "sooner");
        block(flow)
                .text(text.text("sooner.text") + " " + String.join(text.text("card.and"), text.items("sooner.items")));
        card.by().ifPresent(by -> block(heading(flow, "card.next"))
                .with("font-weight", "normal")
                .text(text.day(by)));
        block(flow)
                .with("space-before", "6pt")
                .with("font-size", "8pt")
                .text(text.text("card.made", text.day(card.madeOn())));
    }

    private void item(Markup flow, PlateCard.Item item) {
        var box = block(flow)
                .with("border", "1pt solid " + LEAF)
                .with("padding", "5pt")
                .with("space-before", "5pt")
                .with("keep-together.within-page", "always");
        block(box).with("font-weight", "bold").text(where(item));
        block(box).text(text.text("card.since", text.day(item.since())));
        if (item.pieces().isEmpty()) {
            own(block(box), item.what());
            block(box).text(text.text("card.lot.unknown"));
        }
        item.pieces().stream()
                .collect(Collectors.groupingBy(part -> part, LinkedHashMap::new, Collectors.counting()))
                .forEach((part, count) -> part(box, part, count));
        block(box).text(text.text("card.status", text.text("card.status." + item.magnet())));
    }

    private String where(PlateCard.Item item) {
        var physis = item.physis();
        var bone = text.text("card.bone." + physis.bone() + "." + physis.end());
        var leg = text.text("card.leg." + physis.side());
        return item.side()
                .map(side -> text.text("card.where.side", leg, bone, text.text("card.side." + side)))
                .orElseGet(() -> text.text("card.where", leg, bone));
    }

    /** Names and lots stand as their makers wrote them, from left to right. */
    private void part(Markup box, PlateCard.Part part, long count) {
        var line = block(box);
        own(line, count == 1 ? part.what() : count + " × " + part.what());
        line.text(" – ");
        part.lots()
                .ifPresentOrElse(
                        lots -> {
                            line.text(text.text(part.certain() ? "card.lot" : "card.lot.one-of") + " ");
                            ltr(line).text(lots);
                        },
                        () -> line.text(text.text("card.lot.unknown")));
    }

    /** The number stands as one piece from left to right, whatever the language around it. */
    private void call(Markup flow) {
        heading(flow, "call");
        var mark = "\u0000";
        var parts = text.text("card.call", mark).split(mark, 2);
        var block = block(flow).text(parts[0]);
        ltr(block).with("font-weight", "bold").text(card.letterhead().phone());
        block.text(parts[1]);
        own(block(flow), card.hospital() + ", " + card.letterhead().address());
    }

    private Markup heading(Markup flow, String key) {
        return block(flow)
                .with("font-weight", "bold")
                .with("space-before", "6pt")
                .with("keep-with-next", "always")
                .text(text.text(key));
    }

    private static Markup ltr(Markup line) {
        return line.fo("bidi-override").with("direction", "ltr").with("unicode-bidi", "bidi-override");
    }

    /** Names and addresses run in the direction of their own letters. */
    private static void own(Markup block, String words) {
        boolean ltr = new Bidi(words, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT).baseIsLeftToRight();
        block.fo("bidi-override")
                .with("direction", ltr ? "ltr" : "rtl")
                .with("unicode-bidi", "embed")
                .text(words);
    }

    private static Markup block(Markup parent) {
        return parent.fo("block");
    }
}
