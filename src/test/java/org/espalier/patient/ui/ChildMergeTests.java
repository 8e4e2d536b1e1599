package org.espalier.patient.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Set;
import org.espalier.patient.ChildData;
import org.espalier.patient.ui.ChildMerge.Field;
import org.espalier.science.quantity.Sex;
import org.junit.jupiter.api.Test;

class ChildMergeTests {

    private static final LocalDate BORN = LocalDate.of(2019, 7, 14);
    private static final ChildData BASE = new ChildData("Silva", "Ana", BORN, Sex.FEMALE, "1");
    private static final ChildData THEIRS = new ChildData("Silva", "Anna", BORN, null, "1");
    private static final ChildData MINE = new ChildData("Silva", "Anne", BORN, Sex.FEMALE, "2");

    private final ChildMerge merge = new ChildMerge(BASE, THEIRS, MINE);

    @Test
    void namesTheFieldsThatDiffer() {
        assertThat(merge.differing()).containsExactly(Field.GIVEN_NAME, Field.SEX, Field.LOCAL_NUMBER);
    }

    @Test
    void knowsWhoChangedAFieldAndLeavesWhatBothChangedOpen() {
        assertThat(merge.isMineTheChanged(Field.LOCAL_NUMBER)).contains(true);
        assertThat(merge.isMineTheChanged(Field.SEX)).contains(false);
        assertThat(merge.isMineTheChanged(Field.GIVEN_NAME)).isEmpty();
    }

    @Test
    void takesMineInTheChosenFieldsAndTheirsElsewhere() {
        assertThat(merge.merged(Set.of(Field.LOCAL_NUMBER))).isEqualTo(new ChildData("Silva", "Anna", BORN, null, "2"));
        assertThat(merge.merged(Set.of())).isEqualTo(THEIRS);
        assertThat(merge.merged(EnumSet.allOf(Field.class))).isEqualTo(MINE);
    }

    @Test
    void readsWhatIsNotKnownAsSuch() {
        var unknown = new ChildData("Silva", null, BORN, null, null);
        assertThat(Field.GIVEN_NAME.text(unknown)).isEqualTo("not known");
        assertThat(Field.SEX.text(unknown)).isEqualTo("not known");
        assertThat(Field.BIRTH_DATE.text(unknown)).isEqualTo("14\u2011Jul\u20112019");
    }
}
