package org.espalier.patient.ui;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.patient.ChildData;
import org.jspecify.annotations.Nullable;

/**
 * Theirs beside mine: two changes of the same child, field by field.
 *
 * @param base what both began with
 */
record ChildMerge(ChildData base, ChildData theirs, ChildData mine) {

    /** A field of who a child is. */
    enum Field {
        FAMILY_NAME(ChildData::familyName, ChildData::familyName),
        GIVEN_NAME(ChildData::givenName, ChildData::givenName),
        BIRTH_DATE(ChildData::birthDate, data -> DateText.of(data.birthDate())),
        SEX(ChildData::sex, data -> Texts.of(SexChoice.of(data.sex()))),
        LOCAL_NUMBER(ChildData::localNumber, ChildData::localNumber);

        private final Function<ChildData, @Nullable Object> value;
        private final Function<ChildData, @Nullable String> text;

        Field(Function<ChildData, @Nullable Object> value, Function<ChildData, @Nullable String> text) {
            this.value = value;
            this.text = text;
        }

        /** The field's value as it is read. */
        String text(ChildData data) {
            return Optional.ofNullable(text.apply(data)).orElseGet(() -> Texts.text("kit.not-known"));
        }

        private boolean isSame(ChildData one, ChildData other) {
            return Objects.equals(value.apply(one), value.apply(other));
        }
    }

    /** The fields in which theirs and mine differ. */
    List<Field> differing() {
        return Arrays.stream(Field.values())
                .filter(field -> !field.isSame(theirs, mine))
                .toList();
    }

    /** Whether mine is the one that was changed; empty when both were, and a person must choose. */
    Optional<Boolean> isMineTheChanged(Field field) {
        if (field.isSame(base, theirs)) {
            return Optional.of(true);
        }
        return field.isSame(base, mine) ? Optional.of(false) : Optional.empty();
    }

    /** Theirs, with mine in the given fields. */
    ChildData merged(Set<Field> takeMine) {
        return new ChildData(
                from(takeMine, Field.FAMILY_NAME).familyName(),
                from(takeMine, Field.GIVEN_NAME).givenName(),
                from(takeMine, Field.BIRTH_DATE).birthDate(),
                from(takeMine, Field.SEX).sex(),
                from(takeMine, Field.LOCAL_NUMBER).localNumber());
    }

    private ChildData from(Set<Field> takeMine, Field field) {
        return takeMine.contains(field) ? mine : theirs;
    }
}
