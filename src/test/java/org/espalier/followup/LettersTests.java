package org.espalier.followup;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Optional;
import java.util.Properties;
import java.util.UUID;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LettersTests {

    private static final String PHONE = "555-0142";
    private static final Path PICTURES = Path.of("target", "pictures");
    private static final LetterPress PRESS = new LetterPress();

    @ParameterizedTest
    @EnumSource(LetterLanguage.class)
    void saysWhenWhereWhomToCallAndWhenToComeSooner(LetterLanguage language) throws IOException {
        var words = new LetterText(language);
        try (var pdf = Loader.loadPDF(PRESS.print(letter(LetterKind.INVITATION, language)))) {
            var text = text(pdf);

            assertThat(pdf.getNumberOfPages()).as("one sheet").isEqualTo(1);
            assertThat(text).contains(plain(words.time(LocalTime.of(9, 30))), "Lantern Road 5");
            assertThat(text).doesNotContain("#");
            if (!language.isRightToLeft()) {
                assertThat(text)
                        .contains("Amina", words.day(LocalDate.of(2026, 11, 3)))
                        .contains(words.items("sooner.items"));
            }
        }
    }

    @Test
    void writesTheFirstOfAMonthAndTheTimeAsTheLanguageDoes() {
        var french = new LetterText(LetterLanguage.FRENCH);
        assertThat(french.day(LocalDate.of(2026, 12, 1))).isEqualTo("mardi 1er décembre 2026");
        assertThat(french.day(LocalDate.of(2026, 12, 21))).isEqualTo("lundi 21 décembre 2026");
        assertThat(french.time(LocalTime.of(9, 5))).isEqualTo("9\u00a0h\u00a005");
    }

    /** Digits as the eye meets them, from left to right on the paper. */
    @ParameterizedTest
    @EnumSource(LetterLanguage.class)
    void printsTheTelephoneFromLeftToRight(LetterLanguage language) throws IOException {
        for (var kind : LetterKind.values()) {
            try (var pdf = Loader.loadPDF(PRESS.print(letter(kind, language)))) {
                picture(pdf, "letter-" + kind + "-" + language);
                assertThat(asSeen(pdf)).as(kind.name()).contains(PHONE).doesNotContain("0142-555");
            }
        }
    }

    @ParameterizedTest
    @EnumSource(LetterLanguage.class)
    void hasEveryWordInEveryLanguage(LetterLanguage language) throws IOException {
        var english = words("");
        var own = language == LetterLanguage.ENGLISH
                ? english
                : words("_" + language.locale().getLanguage());

        assertThat(own.stringPropertyNames()).isEqualTo(english.stringPropertyNames());
        assertThat(new LetterText(language).items("sooner.items")).hasSize(5);
    }

    /** Long words and long sentences are what makes a letter hard: a plain check, no formula of a language. */
    @Test
    void staysEasyToRead() {
        var text = new LetterText(LetterLanguage.ENGLISH);
        for (var key : new String[] {"why.text", "call.text", "opening.INVITATION", "opening.MISSED", "sooner.text"}) {
            for (var sentence : text.text(key, "Amina").split("[.!?:]")) {
                assertThat(sentence.strip().split("\\s+")).as(sentence).hasSizeLessThanOrEqualTo(22);
            }
        }
        var words = text.text("why.text").split("\\s+");
        double letters = java.util.Arrays.stream(words)
                .mapToInt(String::length)
                .average()
                .orElseThrow();
        assertThat(letters).isLessThan(5);
    }

    @Test
    void putsTheDateIntoACalendarWithoutAnyName() {
        var visit = new Visit(
                new VisitId(UUID.randomUUID()),
                new ChildId(UUID.randomUUID()),
                new SiteId(UUID.randomUUID()),
                3,
                OpenedFor.NEXT_LOOK,
                Instant.EPOCH,
                Optional.empty(),
                due(),
                Optional.of(date()),
                Optional.empty());
        var letter = letter(LetterKind.INVITATION, LetterLanguage.SPANISH);
        var file = CalendarFile.of(visit, date(), letter, ZoneId.of("Europe/Lisbon"), Instant.EPOCH);

        assertThat(new String(file, StandardCharsets.UTF_8).replace("\r\n ", ""))
                .contains("BEGIN:VCALENDAR", "DTSTART:20261103T093000Z", "SUMMARY:Cita en el hospital")
                .contains("\u2066" + PHONE + "\u2069")
                .contains("SEQUENCE:3", "UID:" + visit.id().value(), "TRIGGER:-P2D")
                .doesNotContain("Amina");
    }

    private static Letter letter(LetterKind kind, LetterLanguage language) {
        return new Letter(
                kind,
                language == LetterLanguage.ARABIC ? "أمينة" : "Amina",
                "Harbour Hospital (invented)",
                new Letterhead("Lantern Road 5, Porthaven", PHONE),
                Optional.of(date()),
                LocalDate.of(2026, 11, 20),
                language);
    }

    private static Appointment date() {
        return Appointment.of(LocalDate.of(2026, 11, 3), LocalTime.of(9, 30));
    }

    private static Due due() {
        return new Due(
                LocalDate.of(2026, 11, 20),
                Optional.empty(),
                Optional.empty(),
                true,
                DueRule.FIRST_LOOK,
                Optional.empty(),
                new Risk.NotKnown(),
                Harm.OVERDUE);
    }

    private static String text(PDDocument pdf) throws IOException {
        return plain(new PDFTextStripper().getText(pdf));
    }

    private static String plain(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFKC).replaceAll("\\s+", " ");
    }

    /** Every glyph by where it stands on the paper: line by line, from the left edge to the right. */
    private static String asSeen(PDDocument pdf) throws IOException {
        var lines = new java.util.TreeMap<Integer, java.util.TreeMap<Float, String>>();
        new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition glyph) {
                lines.computeIfAbsent(Math.round(glyph.getYDirAdj()), line -> new java.util.TreeMap<>())
                        .put(glyph.getXDirAdj(), glyph.getUnicode());
            }
        }.getText(pdf);
        return lines.values().stream()
                .map(line -> String.join("", line.values()))
                .collect(java.util.stream.Collectors.joining("\n"));
    }

    private static void picture(PDDocument pdf, String name) throws IOException {
        Files.createDirectories(PICTURES);
        ImageIO.write(
                new PDFRenderer(pdf).renderImageWithDPI(0, 150),
                "png",
                PICTURES.resolve(name + ".png").toFile());
    }

    private static Properties words(String suffix) throws IOException {
        var words = new Properties();
        try (var file = Files.newBufferedReader(
                Path.of("src/main/resources/org/espalier/followup/letters" + suffix + ".properties"))) {
            words.load(file);
        }
        return words;
    }
}
