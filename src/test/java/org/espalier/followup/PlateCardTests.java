package org.espalier.followup;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.espalier.patient.Bone;
import org.espalier.patient.BoneEnd;
import org.espalier.science.quantity.Side;
import org.espalier.stock.Magnet;
import org.espalier.treatment.PhysisKey;
import org.espalier.treatment.PlateSide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PlateCardTests {

    private static final String PHONE = "555-0142";
    private static final LocalDate PLACED = LocalDate.of(2026, 3, 9);
    private static final LocalDate BY = LocalDate.of(2026, 12, 1);
    private static final LocalDate MADE = LocalDate.of(2026, 11, 3);
    private static final Path PICTURES = Path.of("target", "pictures");
    private static final LetterPress PRESS = new LetterPress();

    @ParameterizedTest
    @EnumSource(LetterLanguage.class)
    void saysWhatIsInOfWhichLotWhatAScannerNeedsAndWhomToCall(LetterLanguage language) throws IOException {
        var words = new LetterText(language);
        try (var pdf = Loader.loadPDF(PRESS.print(card(language, Magnet.CONDITIONAL)))) {
            picture(pdf, "plate-card-" + language);
            var text = text(pdf);
            assertThat(pdf.getNumberOfPages()).as("one card").isEqualTo(1);
            assertThat(text)
                    .contains("PL-1", "SC-1, SC-2", "Invented plate", "Lantern Road 5")
                    .doesNotContain("#", "{", "null");
            assertThat(text.replaceAll("[\u202A-\u202E]", "")).contains(PHONE);
            if (!language.isRightToLeft()) {
                assertThat(text)
                        .contains("Amina", words.day(PLACED), words.day(BY), words.day(MADE))
                        .contains(words.text("card.leg.RIGHT"), words.text("card.bone.FEMUR.DISTAL"))
                        .contains(words.text("card.lot.one-of"), words.text("card.magnet.CONDITIONAL"))
                        .contains(words.text("card.magnet.decides"))
                        .contains(words.items("sooner.items"));
            }
        }
    }

    @ParameterizedTest
    @EnumSource(LetterLanguage.class)
    void hasWordsForEveryPlaceAndEveryStatus(LetterLanguage language) {
        var words = new LetterText(language);
        for (var bone : Bone.values()) {
            for (var end : BoneEnd.values()) {
                assertThat(words.text("card.bone." + bone + "." + end)).isNotBlank();
            }
        }
        for (var side : PlateSide.values()) {
            assertThat(words.text("card.side." + side)).isNotBlank();
        }
        for (var magnet : Magnet.values()) {
            assertThat(words.text("card.magnet." + magnet)).isNotBlank();
            assertThat(words.text("card.status." + magnet)).isNotBlank();
        }
    }

    @Test
    void warnsOfTheLeastSafeOfAllThatIsIn() {
        assertThat(card(LetterLanguage.ENGLISH, Magnet.SAFE).magnet()).isEqualTo(Magnet.NOT_KNOWN);
        assertThat(card(LetterLanguage.ENGLISH, Magnet.UNSAFE).magnet()).isEqualTo(Magnet.UNSAFE);
    }

    /** Two plates in; of the second, placed elsewhere, nothing is known. */
    private static PlateCard card(LetterLanguage language, Magnet magnet) {
        var plate = new PlateCard.Part("Invented plate · IP-12", Optional.of("PL-1"), true);
        var screw = new PlateCard.Part("Invented screw · IS-24", Optional.of("SC-1, SC-2"), false);
        var femur = new PlateCard.Item(
                new PhysisKey(Side.RIGHT, Bone.FEMUR, BoneEnd.DISTAL),
                Optional.of(PlateSide.LATERAL),
                PLACED,
                "plate, two screws",
                List.of(plate, screw, screw),
                magnet);
        var tibia = new PlateCard.Item(
                new PhysisKey(Side.LEFT, Bone.TIBIA, BoneEnd.PROXIMAL),
                Optional.of(PlateSide.MEDIAL),
                PLACED,
                "plate, two screws",
                List.of(),
                magnet == Magnet.CONDITIONAL ? magnet : Magnet.NOT_KNOWN);
        return new PlateCard(
                language == LetterLanguage.ARABIC ? "أمينة" : "Amina",
                "Harbour Hospital (invented)",
                new Letterhead("Lantern Road 5, Porthaven", PHONE),
                List.of(femur, tibia),
                Optional.of(BY),
                MADE,
                language);
    }

    private static String text(PDDocument pdf) throws IOException {
        return Normalizer.normalize(new PDFTextStripper().getText(pdf), Normalizer.Form.NFKC)
                .replaceAll("\\s+", " ");
    }

    private static void picture(PDDocument pdf, String name) throws IOException {
        Files.createDirectories(PICTURES);
        ImageIO.write(
                new PDFRenderer(pdf).renderImageWithDPI(0, 110),
                "png",
                PICTURES.resolve(name + ".png").toFile());
    }
}
