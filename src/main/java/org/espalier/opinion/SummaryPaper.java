package org.espalier.opinion;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.kit.paper.Markup;
import org.espalier.kit.paper.PaperPrinter;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Document;

/** What was asked, shown, answered and decided, on paper. It bears initials and no name, as the thread does. */
final class SummaryPaper {

    private static final String RULE = "0.5pt solid #7a5a3a";

    private final OpinionThread thread;
    private final Closing closing;
    private final ZoneId zone;
    private final Markup flow;

    private SummaryPaper(OpinionThread thread, Closing closing, ZoneId zone, Markup flow) {
        this.thread = thread;
        this.closing = closing;
        this.zone = zone;
        this.flow = flow;
    }

    static Document of(OpinionThread thread, Closing closing, ZoneId zone) {
        var root = Markup.document().with("font-family", PaperPrinter.FACE).with("font-size", "10pt");
        root.with("line-height", "14pt");
        var page = root.fo("layout-master-set")
                .fo("simple-page-master")
                .with("master-name", "page")
                .with("page-width", "210mm")
                .with("page-height", "297mm")
                .with("margin", "18mm");
        page.fo("region-body").with("margin-bottom", "12mm");
        page.fo("region-after").with("extent", "8mm");
        var sequence = root.fo("page-sequence").with("master-reference", "page");
        sequence.fo("static-content")
                .with("flow-name", "xsl-region-after")
                .fo("block")
                .with("font-size", "8pt")
                .with("border-top", RULE)
                .with("padding-top", "2pt")
                .text(Texts.text("opinion.paper.foot", thread.siteName(), DateText.of(dayOf(closing, zone))))
                .fo("page-number");
        var flow = sequence.fo("flow").with("flow-name", "xsl-region-body");
        new SummaryPaper(thread, closing, zone, flow).write();
        return root.whole();
    }

    private void write() {
        block(Texts.text("opinion.paper.title")).with("font-size", "16pt").with("font-weight", "600");
        block(Texts.text("opinion.paper.asked", thread.askerName(), thread.siteName(), day(thread.askedAt())));
        block(Texts.text("opinion.paper.closed", closing.decidedBy(), day(closing.at())));
        heading("opinion.paper.decided");
        block(Texts.of(closing.decided())).with("font-weight", "600");
        block(closing.text());
        heading("opinion.paper.question");
        block(thread.question().text());
        block(wanted());
        heading("opinion.paper.shown");
        thread.films().forEach(film -> block(months(film.title(), film.months())));
        thread.clips().forEach(clip -> block(months(clip.title(), clip.months())));
        thread.facts().forEach(fact -> {
            block(months(fact.sheet().heading(), fact.months()))
                    .with("font-weight", "600")
                    .with("space-before", "4pt")
                    .with("keep-with-next.within-page", "always");
            fact.sheet().lines().forEach(line -> block(Texts.text("opinion.paper.line", line.name(), line.value())));
        });
        heading("opinion.paper.answers");
        thread.opinions().forEach(this::opinion);
        heading("opinion.paper.said");
        thread.messages().stream()
                .filter(message -> message.kind() == Message.Kind.TEXT)
                .forEach(message -> block(Texts.text(
                        "opinion.paper.message",
                        message.film()
                                .flatMap(this::title)
                                .map(film -> Texts.text("opinion.paper.about", message.name(), film))
                                .orElse(message.name()),
                        day(message.at()),
                        message.text())));
        block(Texts.text("opinion.caution")).with("font-size", "8pt").with("space-before", "12pt");
    }

    private Optional<String> title(UUID film) {
        return thread.films().stream()
                .filter(one -> one.id().equals(film))
                .map(ShownFilm::title)
                .findFirst();
    }

    private void opinion(Opinion opinion) {
        var data = opinion.data();
        var head = Texts.text(
                opinion.superseded() ? "opinion.paper.opinion.earlier" : "opinion.paper.opinion",
                opinion.name(),
                day(opinion.at()),
                Texts.of(data.advice()),
                Texts.of(data.sure()));
        block(head).with("font-weight", "600").with("space-before", "4pt").with("keep-with-next.within-page", "always");
        line("opinion.where", data.place());
        line("opinion.when", data.due());
        line("opinion.change-mind", data.changeMind());
        if (!data.text().isEmpty()) {
            block(data.text());
        }
    }

    private void line(String name, String value) {
        if (!value.isEmpty()) {
            block(Texts.text("opinion.paper.line", Texts.text(name), value));
        }
    }

    private String wanted() {
        return Texts.text(
                "opinion.paper.wanted",
                thread.question().wanted().stream().map(Texts::of).collect(Collectors.joining(", ")));
    }

    private static String months(String what, @Nullable Integer months) {
        return months == null ? what : Texts.text("opinion.at-month", what, months);
    }

    private void heading(String key) {
        block(Texts.text(key))
                .with("font-size", "12pt")
                .with("font-weight", "600")
                .with("space-before", "10pt")
                .with("space-after", "3pt")
                .with("border-bottom", RULE)
                .with("keep-with-next.within-page", "always");
    }

    private Markup block(String text) {
        return flow.fo("block").with("linefeed-treatment", "preserve").text(text);
    }

    private static LocalDate dayOf(Closing closing, ZoneId zone) {
        return closing.at().atZone(zone).toLocalDate();
    }

    private String day(Instant at) {
        return DateText.of(at.atZone(zone).toLocalDate());
    }
}
