package org.espalier.outcomes;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.outcomes.Looks.End;
import org.espalier.outcomes.Looks.Visited;
import org.espalier.patient.ChildId;
import org.espalier.science.statistics.Proportion;
import org.junit.jupiter.api.Test;

class LooksTests {

    private static final Span SPAN = new Span(2025, 2025);
    private static final LocalDate TODAY = LocalDate.of(2026, 1, 10);
    private static final LocalDate DUE = LocalDate.of(2025, 6, 1);

    private final ChildId child = new ChildId(UUID.randomUUID());
    private final ChildId other = new ChildId(UUID.randomUUID());

    private static Visited visit(ChildId child, LocalDate due, End end, LocalDate on) {
        return new Visited(child, due, Optional.of(end), Optional.of(on));
    }

    private static Visited open(ChildId child, LocalDate due) {
        return new Visited(child, due, Optional.empty(), Optional.empty());
    }

    private static Looks looks(Visited... visits) {
        return Looks.of(List.of(visits), SPAN, TODAY);
    }

    @Test
    void isInTimeOnTheLastGoodDay() {
        var looks = looks(visit(child, DUE, End.ARRIVED, DUE), visit(other, DUE, End.ARRIVED, DUE.plusDays(1)));
        assertThat(looks.inTime()).contains(new Proportion(1, 2));
        assertThat(looks.daysLate()).containsExactly(1.0);
    }

    @Test
    void whatWasMissedAndCalledOffOnTheWayDoesNotMoveTheDay() {
        var looks = looks(
                visit(child, DUE, End.NOT_BROUGHT, DUE),
                visit(child, DUE.plusDays(30), End.CANCELLED, DUE.plusDays(20)),
                visit(child, DUE.plusDays(60), End.ARRIVED, DUE.plusDays(50)));
        assertThat(looks.inTime()).contains(new Proportion(0, 1));
        assertThat(looks.medianLate()).contains(50.0);
        assertThat(looks.worstTenthLate()).contains(50.0);
    }

    @Test
    void oneChildsMissedVisitIsNotTheNextChilds() {
        var looks = looks(visit(child, DUE, End.NOT_BROUGHT, DUE), visit(other, DUE, End.ARRIVED, DUE));
        assertThat(looks.inTime()).contains(new Proportion(1, 1));
    }

    @Test
    void whoIsStillAwayCountsAndWhoseCareEndedIsLeftOut() {
        var looks = looks(open(child, DUE), visit(other, DUE, End.CARE_ENDED, DUE.plusDays(9)));
        assertThat(looks.inTime()).contains(new Proportion(0, 1));
        assertThat(looks.away()).isEqualTo(1);
        assertThat(looks.leftOut()).isEqualTo(1);
    }

    @Test
    void whatIsNotDueYetOrFellDueInOtherYearsIsNotAsked() {
        assertThat(looks(open(child, TODAY), visit(other, DUE.minusYears(1), End.ARRIVED, DUE))
                        .inTime())
                .isEmpty();
    }
}
