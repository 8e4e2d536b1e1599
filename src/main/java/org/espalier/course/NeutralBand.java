package org.espalier.course;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.espalier.kit.CourseModel;
import org.espalier.kit.Texts;
import org.espalier.science.alignment.NormalRange;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Age;

/**
 * What is normal for age along the time axis, with where that was published. Between ages of which nothing is known
 * there is no band.
 *
 * @param stretches the edges of the band over each stretch of age, in order
 * @param source where they were published; empty where there is no band
 */
record NeutralBand(List<List<CourseModel.Normal>> stretches, Optional<String> source) {

    static NeutralBand of(Quantity quantity, LocalDate birth, LocalDate from, LocalDate to) {
        var stretches = NormalRange.all().stream()
                .filter(range -> range.quantity() == quantity)
                .map(range -> Stretch.of(range, birth, from, to))
                .flatMap(Optional::stream)
                .sorted((one, other) -> one.first().compareTo(other.first()))
                .toList();
        return new NeutralBand(
                stretches.stream().map(Stretch::days).toList(),
                stretches.isEmpty() ? Optional.empty() : Optional.of(sources(stretches)));
    }

    private static String sources(List<Stretch> stretches) {
        return stretches.stream().map(NeutralBand::source).distinct().collect(Collectors.joining("; "));
    }

    private static String source(Stretch stretch) {
        var source = stretch.range().source();
        return stretch.range().checking().isUnverified() ? Texts.text("course.band.unverified", source) : source;
    }

    /** One published range over the days on which it may be drawn. */
    private record Stretch(NormalRange range, LocalDate first, LocalDate last) {

        static Optional<Stretch> of(NormalRange range, LocalDate birth, LocalDate from, LocalDate to) {
            var first = later(dayOf(range.from(), birth), from);
            var last = earlier(dayOf(range.before(), birth).minusDays(1), to);
            return first.isAfter(last) ? Optional.empty() : Optional.of(new Stretch(range, first, last));
        }

        List<CourseModel.Normal> days() {
            return List.of(
                    new CourseModel.Normal(first, range.low(), range.high()),
                    new CourseModel.Normal(last, range.low(), range.high()));
        }

        private static LocalDate dayOf(Age age, LocalDate birth) {
            return birth.plusMonths(age.completedMonths());
        }

        private static LocalDate later(LocalDate one, LocalDate other) {
            return one.isAfter(other) ? one : other;
        }

        private static LocalDate earlier(LocalDate one, LocalDate other) {
            return one.isBefore(other) ? one : other;
        }
    }
}
