package org.espalier.interchange;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.espalier.followup.Family;
import org.espalier.followup.FamilyService;
import org.espalier.followup.Phone;
import org.jspecify.annotations.Nullable;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/**
 * How families are reached: one row a family, and its telephones in the order they are tried. What is on record is
 * never changed by a file: that nobody may call is not undone by last year's list.
 */
@Component
@Order(10)
class FamiliesPart implements ClinicPart {

    private static final int LONGEST = 400;
    private static final Pattern LANGUAGE = Pattern.compile("[a-z]{2,3}");

    private final FamilyService families;

    FamiliesPart(FamilyService families) {
        this.families = families;
    }

    @Override
    public void take(Taking taking) {
        var rows = taking.rows(ClinicFile.FAMILIES);
        Map<String, List<ClinicRow>> phones = taking.rows(ClinicFile.PHONES).stream()
                .collect(Collectors.groupingBy(
                        row -> row.text("local_number"), LinkedHashMap::new, Collectors.toList()));
        Map<String, Effect> taken = new LinkedHashMap<>();
        for (var row : rows) {
            var number = row.text("local_number");
            taking.take(row, () -> {
                if (taken.containsKey(number)) {
                    throw new RowRefused("local_number", FileReason.STANDS_TWICE, number);
                }
                var effect = take(taking, row, phones.getOrDefault(number, List.of()));
                effect.ifPresent(one -> taken.put(number, one));
                return effect.orElse(Effect.KNOWN);
            });
        }
        phones.forEach((number, some) -> some.forEach(row -> taking.take(row, () -> phone(row, taken.get(number)))));
    }

    /** A phone fares as its family does. */
    private static Effect phone(ClinicRow row, @Nullable Effect family) {
        if (family == null) {
            throw new RowRefused("local_number", FileReason.PHONE_WITHOUT_FAMILY);
        }
        read(row);
        return family;
    }

    private Optional<Effect> take(Taking taking, ClinicRow row, List<ClinicRow> phones) {
        var child = taking.child(row);
        var said = read(row, phones.stream().flatMap(one -> read(one).stream()).toList());
        if (child.isEmpty() || said.isEmpty()) {
            return Optional.empty();
        }
        var known = families.of(child.get());
        if (known.version() == 0) {
            families.save(taking.site(), child.get(), said.get());
            return Optional.of(Effect.NEW);
        }
        if (!row(known, "").equals(row(said.get(), ""))
                || !known.phones().equals(said.get().phones())) {
            throw new RowRefused("local_number", FileReason.FAMILY_ON_RECORD);
        }
        return Optional.of(Effect.KNOWN);
    }

    private static Optional<Family> read(ClinicRow row, List<Phone> phones) {
        var language = language(row);
        List.of("transport", "school", "do_not_contact", "safeguarding_lead").forEach(column -> limit(row, column));
        var interpreter = row.cells().oneOf("interpreter", Words.YES_NO);
        return language.isEmpty() || interpreter.isEmpty()
                ? Optional.empty()
                : Optional.of(new Family(
                        0,
                        phones,
                        language.get(),
                        interpreter.get(),
                        row.textOrNull("transport"),
                        row.textOrNull("school"),
                        row.textOrNull("do_not_contact"),
                        row.textOrNull("safeguarding_lead")));
    }

    private static Optional<Phone> read(ClinicRow row) {
        var number = row.cells().name("number");
        var language = language(row);
        List.of("number", "owner").forEach(column -> limit(row, column));
        return number.flatMap(one -> language.map(spoken -> new Phone(one, row.text("owner"), spoken)));
    }

    private static Optional<String> language(ClinicRow row) {
        var language = row.cells().name("language");
        if (language.isPresent() && !LANGUAGE.matcher(language.get()).matches()) {
            row.cells().refuse("language", FileReason.NOT_A_LANGUAGE, language.get());
            return Optional.empty();
        }
        return language;
    }

    private static void limit(ClinicRow row, String column) {
        if (row.text(column).length() > LONGEST) {
            row.cells().refuse(column, FileReason.TOO_LONG, LONGEST);
        }
    }

    @Override
    public Map<ClinicFile, List<List<String>>> rows(Giving giving) {
        List<List<String>> rows = new ArrayList<>();
        List<List<String>> phones = new ArrayList<>();
        for (var one : giving.children()) {
            var family = families.of(one.child().id());
            if (family.version() > 0) {
                rows.add(row(family, one.number()));
                family.phones()
                        .forEach(phone ->
                                phones.add(List.of(one.number(), phone.number(), phone.owner(), phone.language())));
            }
        }
        return Map.of(ClinicFile.FAMILIES, rows, ClinicFile.PHONES, phones);
    }

    private static List<String> row(Family family, String number) {
        return List.of(
                number,
                family.language(),
                Words.of(family.interpreter()),
                Words.text(family.transport()),
                Words.text(family.school()),
                Words.text(family.doNotContact()),
                Words.text(family.safeguardingLead()));
    }
}
