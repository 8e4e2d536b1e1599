package org.espalier.interchange;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.espalier.access.SiteId;
import org.espalier.kit.Who;
import org.espalier.patient.Child;
import org.espalier.patient.ChildData;
import org.espalier.patient.ChildId;
import org.espalier.patient.ChildOrder;
import org.espalier.patient.PatientService;
import org.espalier.patient.SaveOutcome;
import org.espalier.science.quantity.Sex;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Who the children are. A child is known by the hospital and its local number there. */
@Component
@Order(1)
class ChildrenPart implements ClinicPart {

    private static final Map<String, Sex> SEXES = Words.all(Sex.class);

    private final PatientService patients;

    ChildrenPart(PatientService patients) {
        this.patients = patients;
    }

    @Override
    public void take(Taking taking) {
        all(taking.site()).forEach(known -> taking.children()
                .put(known.number(), known.child().id()));
        Set<String> seen = new HashSet<>();
        taking.rows(ClinicFile.CHILDREN).forEach(row -> taking.take(row, () -> take(taking, row, seen)));
    }

    private Effect take(Taking taking, ClinicRow row, Set<String> seen) {
        var cells = row.cells();
        var number = cells.name("local_number");
        var family = cells.name("family_name");
        var born = cells.date("birth_date");
        Optional<Sex> sex = cells.isEmpty("sex") ? Optional.empty() : cells.oneOf("sex", SEXES);
        if (number.isPresent() && !seen.add(number.get())) {
            cells.refuse("local_number", FileReason.STANDS_TWICE, number.get());
        }
        if (number.isEmpty() || family.isEmpty() || born.isEmpty()) {
            return Effect.KNOWN;
        }
        var data =
                new ChildData(family.get(), row.textOrNull("given_name"), born.get(), sex.orElse(null), number.get());
        return take(taking, number.get(), data);
    }

    private Effect take(Taking taking, String number, ChildData data) {
        var known = taking.children().get(number);
        if (known == null) {
            var id = new ChildId(StableIds.of(taking.site().value(), "child", number));
            kept(patients.register(taking.site(), id, data));
            taking.children().put(number, id);
            return Effect.NEW;
        }
        var child = patients.open(known, "import").orElseThrow();
        if (child.data().filter(data::equals).isPresent()) {
            return Effect.KNOWN;
        }
        demandSameBirth(child, data.birthDate());
        kept(patients.change(known, child.version(), data));
        return Effect.CHANGED;
    }

    /** Another day of birth is more likely another child than a slip of the pen: it is never changed by a file. */
    private static void demandSameBirth(Child child, LocalDate born) {
        var kept = child.data().map(ChildData::birthDate);
        if (kept.filter(born::equals).isEmpty()) {
            throw new RowRefused(
                    "birth_date",
                    FileReason.BORN_ON_ANOTHER_DAY,
                    kept.map(LocalDate::toString).orElse("?"));
        }
    }

    private static void kept(SaveOutcome outcome) {
        switch (outcome) {
            case SaveOutcome.Saved saved -> {}
            case SaveOutcome.NumberTaken taken -> throw new RowRefused("local_number", FileReason.NUMBER_TAKEN);
            case SaveOutcome.ChangedMeanwhile changed ->
                throw new RowRefused("local_number", FileReason.CHILD_CHANGED_MEANWHILE);
        }
    }

    @Override
    public Map<ClinicFile, List<List<String>>> rows(Giving giving) {
        return Map.of(
                ClinicFile.CHILDREN,
                giving.children().stream().map(ChildrenPart::row).toList());
    }

    private static List<String> row(Giving.Numbered one) {
        var data = one.data();
        return List.of(
                one.number(),
                data.familyName(),
                Words.text(data.givenName()),
                data.birthDate().toString(),
                Words.of(data.sex()));
    }

    /** The children of the hospital that have a local number, by it. */
    List<Giving.Numbered> all(SiteId site) {
        List<Giving.Numbered> all = new ArrayList<>();
        everyone(site).forEach(child -> child.data().ifPresent(data -> {
            var number = data.localNumber();
            if (number != null) {
                all.add(new Giving.Numbered(number, child, data));
            }
        }));
        all.sort(Comparator.comparing(Giving.Numbered::number));
        return all;
    }

    /** How many children of the hospital have no local number, so that no file can name them. */
    long withoutNumber(SiteId site) {
        return everyone(site).stream()
                .filter(child -> !(child.who() instanceof Who.Named named) || named.localNumber() == null)
                .count();
    }

    private List<Child> everyone(SiteId site) {
        List<Child> all = new ArrayList<>();
        List<Child> page;
        do {
            page = patients.list(site, ChildOrder.NAME, all.size());
            all.addAll(page);
        } while (page.size() == PatientService.PAGE);
        return all;
    }
}
