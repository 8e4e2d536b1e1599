package org.espalier.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.espalier.IntegrationTest;
import org.espalier.course.CourseService;
import org.espalier.film.FilmId;
import org.espalier.film.FilmService;
import org.espalier.film.TestDoor;
import org.espalier.patient.ChildId;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.alignment.SiteRepeatability;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Two readers of one film, blind to each other; and a film that is moved to the right child. */
@IntegrationTest
class TwoReadersIntegrationTests {

    private static final LocalDate BIRTH = LocalDate.of(2018, 5, 20);
    private static final LocalDate TAKEN = LocalDate.of(2024, 6, 3);

    @Autowired
    TestReader reader;

    @Autowired
    DraftService drafts;

    @Autowired
    ReadingService readings;

    @Autowired
    ReadersService readers;

    @Autowired
    FilmService films;

    @Autowired
    CourseService courses;

    TestDoor.Sender surgeon;
    TestDoor.Sender colleague;
    ChildId child;
    FilmId film;
    ReadingId first;

    @BeforeEach
    void film() {
        surgeon = reader.surgeon();
        colleague = reader.colleague(surgeon);
        child = reader.child(surgeon, BIRTH);
        film = reader.film(surgeon, child, TAKEN);
        first = reader.signed(surgeon, film);
    }

    @Test
    void hidesTheFirstReadingUntilTheSecondIsSigned() {
        assertThat(colleague.does(() -> readings.ofFilm(film))).hasSize(1);
        var draft = colleague.does(() -> drafts.readBlind(first));
        assertThat(draft.marks()).isEqualTo(Marks.NONE);
        assertThat(colleague.does(() -> readings.ofFilm(film))).isEmpty();
        assertThat(colleague.does(() -> readings.ofChild(surgeon.site(), child)))
                .isEmpty();
        assertThat(surgeon.does(() -> readings.ofFilm(film))).hasSize(1);
        secondSigned(draft);
        assertThat(colleague.does(() -> readings.ofFilm(film))).hasSize(2);
    }

    @Test
    void refusesAReaderASecondReadingOfTheirOwn() {
        assertThatThrownBy(() -> surgeon.does(() -> drafts.readBlind(first)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theSecondReadingDoesNotChangeTheCourse() {
        secondSigned(colleague.does(() -> drafts.readBlind(first)));
        var standing = colleague
                .does(() -> courses.open(child))
                .orElseThrow()
                .films()
                .getFirst()
                .standing();
        assertThat(standing).extracting(Reading::id).containsExactly(first);
    }

    /** Half-width of one mLDFA reading 1.5 degrees (Braun 2023), of a difference √2 times that. */
    @Test
    void showsTheDifferenceBesideThePublishedError() {
        secondSigned(colleague.does(() -> drafts.readBlind(first)));
        var two = TwoReaders.among(colleague.does(() -> readings.ofFilm(film))).orElseThrow();
        assertThat(two.first().id()).isEqualTo(first);
        assertThat(two.pairs())
                .filteredOn(pair -> pair.quantity() == Quantity.MMPTA && pair.side() == Side.RIGHT)
                .singleElement()
                .satisfies(pair -> {
                    assertThat(Math.abs(pair.difference())).isCloseTo(3, within(0.05));
                    assertThat(pair.published()).isPresent();
                    assertThat(pair.isBeyondPublished()).isTrue();
                });
    }

    @Test
    void publishedFiguresStandInUntilAHospitalHasThirtyPairs() {
        assertThat(basis(Quantity.MMPTA)).isEqualTo(SiteRepeatability.Basis.PUBLISHED);
        for (int i = 0; i < 2; i++) {
            var another = reader.film(surgeon, child, TAKEN.plusMonths(i + 1));
            var signed = reader.signed(surgeon, another, i);
            secondSigned(colleague.does(() -> drafts.readBlind(signed)));
        }
        var mmpta = agreement(Quantity.MMPTA);
        assertThat(mmpta.pairs()).isEqualTo(4);
        assertThat(mmpta.differences()).isPresent();
        assertThat(mmpta.correlation()).isPresent();
        assertThat(basis(Quantity.MMPTA)).isEqualTo(SiteRepeatability.Basis.BOTH);
    }

    @Test
    void offersFilmsThatOneOtherHasRead() {
        assertThat(colleague.does(() -> readers.unpaired(surgeon.site())))
                .extracting(UnpairedFilm::reading)
                .containsExactly(first);
        assertThat(surgeon.does(() -> readers.unpaired(surgeon.site()))).isEmpty();
        assertThat(reader.surgeon().does(() -> readers.unpaired(surgeon.site())))
                .isEmpty();
        secondSigned(colleague.does(() -> drafts.readBlind(first)));
        assertThat(reader.colleague(surgeon).does(() -> readers.unpaired(surgeon.site())))
                .isEmpty();
    }

    @Test
    void aFilmOnTheWrongChildIsMovedBySupersedingAndBothCoursesRecompute() {
        var right = reader.child(surgeon, BIRTH.plusYears(1));
        var version = surgeon.does(() -> films.find(film)).orElseThrow().version();
        surgeon.does(() -> films.assign(film, version, right, TAKEN, "Film of the other child"));
        assertThat(surgeon.does(() -> courses.open(child)).orElseThrow().films())
                .isEmpty();
        assertThat(surgeon.does(() -> courses.open(right))
                        .orElseThrow()
                        .films()
                        .getFirst()
                        .standing())
                .isEmpty();
        var again = surgeon.does(() -> drafts.correct(first));
        assertThat(again.marks()).isEqualTo(TestReader.bothLimbs());
        surgeon.does(() -> readings.sign(again.id(), again.revision(), "Film moved to the right child"));
        assertThat(surgeon.does(() -> courses.open(right))
                        .orElseThrow()
                        .films()
                        .getFirst()
                        .standing())
                .singleElement()
                .satisfies(reading -> {
                    assertThat(reading.child()).isEqualTo(right);
                    assertThat(reading.supersedes().orElseThrow().reading()).isEqualTo(first);
                });
        assertThat(surgeon.does(() -> readings.ofChild(surgeon.site(), child)))
                .singleElement()
                .satisfies(before -> assertThat(before.isSuperseded()).isTrue());
    }

    private void secondSigned(ReadingDraft draft) {
        colleague.does(() -> {
            drafts.measure(draft.id(), TestReader.commit(draft.revision(), TestReader.bothLimbs(3)));
            return readings.sign(draft.id(), draft.revision() + 1, null);
        });
    }

    private Agreement agreement(Quantity quantity) {
        return surgeon.does(() -> readers.agreement(surgeon.site())).stream()
                .filter(one -> one.quantity() == quantity)
                .findFirst()
                .orElseThrow();
    }

    private SiteRepeatability.Basis basis(Quantity quantity) {
        return agreement(quantity).repeatability().orElseThrow().basis();
    }
}
