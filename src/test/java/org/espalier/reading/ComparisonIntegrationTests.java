package org.espalier.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Optional;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.film.FilmId;
import org.espalier.film.TestDoor;
import org.espalier.patient.ChildId;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@IntegrationTest
class ComparisonIntegrationTests {

    private static final LocalDate BIRTH = LocalDate.of(2016, 5, 20);

    @Autowired
    TestReader reader;

    @Autowired
    TestNetwork network;

    @Autowired
    ComparisonService comparisons;

    TestDoor.Sender surgeon;
    ChildId child;
    FilmId first;
    FilmId second;

    @BeforeEach
    void twoFilms() {
        surgeon = reader.surgeon();
        child = reader.child(surgeon, BIRTH);
        first = reader.film(surgeon, child, LocalDate.of(2024, 2, 1));
        second = reader.film(surgeon, child, LocalDate.of(2024, 8, 1));
        reader.signed(surgeon, first);
        reader.signed(surgeon, second, 7);
    }

    @Test
    void laysTheEarlierFilmFirstWhicheverIsNamedFirst() {
        for (var comparison : new Comparison[] {open(first, second), open(second, first)}) {
            assertThat(comparison.earlier().film().id()).isEqualTo(first);
            assertThat(comparison.later().film().id()).isEqualTo(second);
            assertThat(comparison.films()).hasSize(2);
        }
    }

    /** The tibia was turned by 7 degrees, above the limit of 2.5; the femur was left alone. */
    @Test
    void tellsTheDifferenceAndWhatIsNoMeasurableChange() {
        var comparison = open(first, second);
        assertThat(change(comparison, Quantity.HKA).difference()).isCloseTo(-7, within(0.05));
        assertThat(change(comparison, Quantity.HKA).isUnmeasurable()).isFalse();
        assertThat(ChangeText.difference(change(comparison, Quantity.HKA))).isEqualTo("7.0\u00b0 towards valgus");
        assertThat(ChangeText.difference(change(comparison, Quantity.MMPTA))).isEqualTo("7.0\u00b0 towards valgus");
        assertThat(change(comparison, Quantity.MLDFA).isUnmeasurable()).isTrue();
        assertThat(ChangeText.limit(change(comparison, Quantity.MLDFA)))
                .contains("(Limit 2.1\u00b0: reading 1.5\u00b0, standing 1.5\u00b0, if the knee is straight.)");
        assertThat(ChangeText.limit(change(comparison, Quantity.MAD))).isEmpty();
    }

    @Test
    void showsTheSameLandmarksOnBothFilmsAtOneScale() {
        var comparison = open(first, second);
        assertThat(comparison.isToScale()).isTrue();
        assertThat(comparison.isScaledAlike()).isTrue();
        assertThat(comparison.earlier().landmarks())
                .hasSize(14)
                .extracting(placed -> placed.side() + placed.landmark())
                .containsExactlyElementsOf(comparison.later().landmarks().stream()
                        .map(placed -> placed.side() + placed.landmark())
                        .toList());
    }

    @Test
    void comparesOnlyTwoFilmsOfOneChild() {
        var other = reader.film(surgeon, reader.child(surgeon, BIRTH), LocalDate.of(2024, 3, 1));
        assertThat(find(surgeon, first, other)).isEmpty();
        assertThat(find(surgeon, first, first)).isEmpty();
        assertThat(find(surgeon, first, reader.filmOfNobody(surgeon))).isEmpty();
    }

    @Test
    void showsAnotherSiteNothingAndWritesTheLookDown() {
        assertThat(find(reader.surgeon(), first, second)).isEmpty();
        open(first, second);
        var looks = network.owner()
                .sql("select count(*) from access_entry where subject = 'comparison' and children = array[?]")
                .param(child.value())
                .query(Long.class)
                .single();
        assertThat(looks).isEqualTo(1);
    }

    private Comparison open(FilmId one, FilmId other) {
        return find(surgeon, one, other).orElseThrow();
    }

    private Optional<Comparison> find(TestDoor.Sender sender, FilmId one, FilmId other) {
        return sender.does(() -> comparisons.open(one, other));
    }

    private static Change change(Comparison comparison, Quantity quantity) {
        return comparison.rows().stream()
                .filter(row -> row.side() == Side.RIGHT && row.quantity() == quantity)
                .findFirst()
                .flatMap(Comparison.Row::change)
                .orElseThrow();
    }
}
