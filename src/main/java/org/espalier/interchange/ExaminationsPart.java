package org.espalier.interchange;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.espalier.patient.ChildId;
import org.espalier.patient.ExaminationService;
import org.espalier.patient.FactId;
import org.espalier.patient.Finding;
import org.espalier.science.quantity.Side;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** What was measured and found: one row an item, the items of one finding under one entry. */
@Component
@Order(2)
class ExaminationsPart implements ClinicPart {

    /** Rows that are one finding. */
    private record Key(String number, String date, String kind, String entry) {}

    private final ExaminationService examinations;

    ExaminationsPart(ExaminationService examinations) {
        this.examinations = examinations;
    }

    @Override
    public void take(Taking taking) {
        Map<ChildId, Map<FindingKind, List<String>>> onRecord = new LinkedHashMap<>();
        taking.rows(ClinicFile.EXAMINATIONS).stream()
                .collect(Collectors.groupingBy(
                        row -> new Key(row.text("local_number"), row.text("date"), row.text("kind"), row.text("entry")),
                        LinkedHashMap::new,
                        Collectors.toList()))
                .values()
                .forEach(rows -> taking.take(rows, () -> take(taking, rows, onRecord)));
    }

    private Effect take(Taking taking, List<ClinicRow> rows, Map<ChildId, Map<FindingKind, List<String>>> onRecord) {
        var first = rows.getFirst();
        Optional<ChildId> child = taking.child(first);
        Optional<LocalDate> on = first.cells().date("date");
        Optional<FindingKind> kind = first.cells().oneOf("kind", FindingKind.BY_WORDS);
        if (child.isEmpty() || on.isEmpty() || kind.isEmpty()) {
            return Effect.KNOWN;
        }
        var finding = new FindingReading(rows).read(kind.get(), on.get());
        var known = onRecord.computeIfAbsent(child.get(), this::onRecord)
                .computeIfAbsent(kind.get(), none -> new ArrayList<>());
        var text = text(finding);
        if (known.contains(text)) {
            return Effect.KNOWN;
        }
        var id = new FactId(StableIds.of(child.get().value(), Words.of(kind.get()), text));
        examinations.record(child.get(), id, finding);
        known.add(text);
        return Effect.NEW;
    }

    private Map<FindingKind, List<String>> onRecord(ChildId child) {
        var examination = examinations.of(child);
        Map<FindingKind, List<String>> known = new LinkedHashMap<>();
        for (var kind : FindingKind.values()) {
            known.put(
                    kind,
                    new ArrayList<>(kind.of(examination).stream()
                            .map(ExaminationsPart::text)
                            .toList()));
        }
        return known;
    }

    private static String text(Finding finding) {
        return finding.on() + " "
                + FindingItems.of(finding).stream().map(FindingItem::asText).collect(Collectors.joining("; "));
    }

    @Override
    public Map<ClinicFile, List<List<String>>> rows(Giving giving) {
        List<List<String>> rows = new ArrayList<>();
        for (var one : giving.children()) {
            var examination = examinations.of(one.child().id());
            for (var kind : FindingKind.values()) {
                add(rows, one.number(), kind, kind.of(examination));
            }
        }
        return Map.of(ClinicFile.EXAMINATIONS, rows);
    }

    /** Findings of one day are numbered in the order of what they say. */
    private static void add(
            List<List<String>> rows, String number, FindingKind kind, List<? extends Finding> findings) {
        Map<LocalDate, Integer> entries = new LinkedHashMap<>();
        Map<String, Finding> once = new TreeMap<>();
        findings.forEach(finding -> once.put(text(finding), finding));
        once.values().forEach(finding -> {
            var entry = entries.merge(finding.on(), 1, Integer::sum);
            FindingItems.of(finding)
                    .forEach(item -> rows.add(List.of(
                            number,
                            finding.on().toString(),
                            Words.of(kind),
                            entry.toString(),
                            item.name(),
                            item.side().map(Side::letter).orElse(""),
                            item.value())));
        });
    }
}
