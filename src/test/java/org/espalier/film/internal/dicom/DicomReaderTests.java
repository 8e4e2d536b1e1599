package org.espalier.film.internal.dicom;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.ByteBuffer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DicomReaderTests {

    private static final TransferSyntax PLAIN = TransferSyntax.EXPLICIT_LITTLE_ENDIAN;

    @Test
    void readsTextNumbersDatesAndSequences() {
        DataSet film = new Part10Writer()
                .text(Tag.STUDY_DATE, "DA", "20250314")
                .shorts(Tag.ROWS, "US", 65535)
                .text(Tag.PIXEL_SPACING, "DS", "0.2 \\ 1e-1")
                .sequence(Tag.VOI_LUT_SEQUENCE, new Part10Writer().text(Tag.LUT_EXPLANATION, "LO", "BONE"))
                .read();
        assertThat(film.date(Tag.STUDY_DATE)).contains(LocalDate.of(2025, 3, 14));
        assertThat(film.integer(Tag.ROWS)).hasValue(65535);
        assertThat(film.decimals(Tag.PIXEL_SPACING)).containsExactly(0.2, 0.1);
        assertThat(film.items(Tag.VOI_LUT_SEQUENCE).getFirst().string(Tag.LUT_EXPLANATION))
                .contains("BONE");
    }

    @Test
    void takesWhatIsNotOfItsKindForAbsent() {
        DataSet film = new Part10Writer()
                .text(Tag.STUDY_DATE, "DA", "20250230")
                .text(Tag.PIXEL_SPACING, "DS", "0.2\\wide")
                .text(Tag.PATIENT_ID, "LO", "  ")
                .read();
        assertThat(film.date(Tag.STUDY_DATE)).isEmpty();
        assertThat(film.decimals(Tag.PIXEL_SPACING)).isEmpty();
        assertThat(film.string(Tag.PATIENT_ID)).isEmpty();
        assertThat(film.string(Tag.PATIENT_NAME)).isEmpty();
    }

    /** The Japanese, Korean and Chinese names are the examples of PS3.5 annexes H.3.1, I.2 and K.2, from memory. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            ISO_IR 100,                   4d fc 6c 6c 65 72,                                       Müller
            ISO_IR 192,                   4d c3 bc 6c 6c 65 72,                                    Müller
            ISO_IR 144,                   b8 d2 d0 dd,                                             Иван
            ISO_IR 13,                    d4 cf c0 de 5e c0 db b3,                                 ﾔﾏﾀﾞ^ﾀﾛｳ
            \\ISO 2022 IR 87,             61 3d 1b 24 42 3b 33 45 44 1b 28 42 5e 1b 24 42 42 40 4f 3a 1b 28 42, a=山田^太郎
            \\ISO 2022 IR 149,            61 3d 1b 24 29 43 fb f3 5e 1b 24 29 43 d1 ce d4 d7,      a=洪^吉洞
            GB18030,                      cd f5 5e d0 a1 b6 ab,                                    王^小东
            UNKNOWN,                      4d fc 6c,                                                M�l
            """)
    void readsNamesInTheirCharacterSets(String set, String bytes, String name) {
        DataSet film = new Part10Writer()
                .text(Tag.SPECIFIC_CHARACTER_SET, "CS", set)
                .bytes(Tag.PATIENT_NAME, "PN", HexFormat.ofDelimiter(" ").parseHex(bytes))
                .read();
        assertThat(film.string(Tag.PATIENT_NAME)).contains(name);
    }

    @Test
    void givesItemsTheCharacterSetOfTheirFilm() {
        Part10Writer item =
                new Part10Writer().text(Tag.LUT_EXPLANATION, "LO", "Knochenübersicht", StandardCharsets.ISO_8859_1);
        DataSet film = new Part10Writer()
                .text(Tag.SPECIFIC_CHARACTER_SET, "CS", "ISO_IR 100")
                .sequence(Tag.VOI_LUT_SEQUENCE, item)
                .read();
        assertThat(film.items(Tag.VOI_LUT_SEQUENCE).getFirst().string(Tag.LUT_EXPLANATION))
                .contains("Knochenübersicht");
    }

    @Test
    void partsValuesByBackslashesButNotWithinLetters() {
        DataSet film = new Part10Writer()
                .text(Tag.SPECIFIC_CHARACTER_SET, "CS", "GB18030")
                .text(Tag.SERIES_DESCRIPTION, "LO", "乗\\左", Charset.forName("GB18030"))
                .read();
        assertThat("乗".getBytes(Charset.forName("GB18030"))).contains('\\');
        assertThat(film.strings(Tag.SERIES_DESCRIPTION)).containsExactly("乗", "左");
    }

    /** A file that ends between two elements cannot be told from a whole one; the film has five such places. */
    @Test
    void refusesAFileCutWithinAnElement() {
        byte[] whole = film().file(PLAIN).array();
        long read = IntStream.range(0, whole.length)
                .mapToObj(length -> ByteBuffer.wrap(Arrays.copyOf(whole, length)))
                .filter(cut -> DicomReader.read(cut, Limits.STANDARD) instanceof ReadResult.Read)
                .count();
        assertThat(read).isEqualTo(5);
        assertThat(reason(ByteBuffer.wrap(Arrays.copyOf(whole, whole.length - 1)), Limits.STANDARD))
                .isEqualTo(Refusal.TRUNCATED);
    }

    @Test
    void refusesWhatIsBeyondTheLimits() {
        ByteBuffer film = film().file(PLAIN);
        assertThat(reason(film, new Limits(1 << 20, 100, 1 << 20, 32, 9))).isEqualTo(Refusal.TOO_MANY_ELEMENTS);
        assertThat(reason(film, new Limits(1 << 20, 100, 1 << 20, 1, 100))).isEqualTo(Refusal.NESTED_TOO_DEEP);
        ByteBuffer bomb = new Part10Writer()
                .bytes(Tag.PIXEL_DATA, "OB", new byte[1 << 20])
                .file(TransferSyntax.DEFLATED_EXPLICIT_LITTLE_ENDIAN);
        assertThat(reason(bomb, new Limits(1 << 20, 100, 1 << 19, 2, 100))).isEqualTo(Refusal.INFLATES_TOO_FAR);
    }

    @Test
    void refusesAnElementThatStandsTwice() {
        ByteBuffer film = new Part10Writer()
                .text(Tag.PATIENT_ID, "LO", "one")
                .text(Tag.PATIENT_ID, "LO", "two")
                .file(PLAIN);
        assertThat(reason(film, Limits.STANDARD)).isEqualTo(Refusal.MALFORMED);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "1.2.3"})
    void refusesTransferSyntaxesItDoesNotKnow(String uid) {
        byte[] prefix = Arrays.copyOf(new Part10Writer().file(PLAIN).array(), 132);
        byte[] meta = new Part10Writer()
                .text(Tag.TRANSFER_SYNTAX_UID, "UI", uid)
                .file(PLAIN)
                .array();
        ByteBuffer file = ByteBuffer.allocate(prefix.length + 8 + uid.length() + uid.length() % 2);
        int own = meta.length - file.remaining() + prefix.length;
        file.put(prefix).put(meta, own, file.remaining());
        assertThat(reason(file.flip(), Limits.STANDARD))
                .isEqualTo(uid.isEmpty() ? Refusal.TRANSFER_SYNTAX_MISSING : Refusal.TRANSFER_SYNTAX_UNSUPPORTED);
    }

    @Test
    void knowsTheKeywordsOfTags() {
        assertThat(Tag.PIXEL_SPACING.keyword()).contains("PixelSpacing");
        assertThat(new Tag(0x60023000).keyword()).contains("OverlayData");
        assertThat(new Tag(0x00091001).keyword()).isEmpty();
    }

    private static Part10Writer film() {
        Part10Writer deepest = new Part10Writer().text(Tag.LUT_EXPLANATION, "LO", "deep");
        Part10Writer deeper = new Part10Writer().sequence(Tag.VOI_LUT_SEQUENCE, deepest);
        return new Part10Writer()
                .text(Tag.PATIENT_ID, "LO", "17")
                .text(Tag.MODALITY, "CS", "DX")
                .shorts(Tag.ROWS, "US", 2)
                .sequence(Tag.MODALITY_LUT_SEQUENCE, deeper)
                .bytes(Tag.PIXEL_DATA, "OW", new byte[8]);
    }

    private static Refusal reason(ByteBuffer file, Limits limits) {
        return switch (DicomReader.read(file, limits)) {
            case ReadResult.Refused(Refusal reason, String detail) -> reason;
            case ReadResult.Read read -> throw new AssertionError("read");
        };
    }
}
