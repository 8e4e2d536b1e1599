package org.espalier.interchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * One go at taking a folder for a hospital: what was found so far. Each step is a transaction within the whole, so that
 * a bad one leaves nothing and spoils nothing.
 */
final class Taking {

    private static final Logger LOG = LoggerFactory.getLogger(Taking.class);

    private final SiteId site;
    private final ClinicFolder folder;
    private final TransactionTemplate step;
    private final Map<ClinicFile, FileCount> counts = new EnumMap<>(ClinicFile.class);
    private final List<FileProblem> problems = new ArrayList<>();
    private final Map<String, ChildId> children = new HashMap<>();
    private final Map<String, Object> named = new HashMap<>();

    Taking(SiteId site, ClinicFolder folder, TransactionTemplate step) {
        this.site = site;
        this.folder = folder;
        this.step = step;
    }

    SiteId site() {
        return site;
    }

    ClinicFolder folder() {
        return folder;
    }

    /** The children taken so far by their local numbers. */
    Map<String, ChildId> children() {
        return children;
    }

    /** What one file gave a name to, for the files after it. */
    Map<String, Object> named() {
        return named;
    }

    /** The readable rows of a file; none when it is not there. */
    List<ClinicRow> rows(ClinicFile file) {
        return bytes(file).map(bytes -> rows(file, bytes)).orElse(List.of());
    }

    private Optional<byte[]> bytes(ClinicFile file) {
        try {
            return folder.table(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private List<ClinicRow> rows(ClinicFile file, byte[] bytes) {
        var table = CsvTable.read(file.fileName(), bytes, file.columns());
        problems.addAll(table.problems());
        counts.put(file, FileCount.none(file).plusBad(badLines(table.problems())));
        return table.rows().stream()
                .map(row -> new CsvTable.Row(row.line(), unguarded(row.cells())))
                .map(row -> new ClinicRow(file, row.line(), new Cells(file.fileName(), row, problems)))
                .toList();
    }

    private static Map<String, String> unguarded(Map<String, String> cells) {
        return cells.entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, cell -> FormulaGuard.unguarded(cell.getValue())));
    }

    private static int badLines(List<FileProblem> problems) {
        return (int) problems.stream().mapToLong(FileProblem::line).distinct().count();
    }

    /** The child of a row; empty, with the reason written down, when there is none. */
    Optional<ChildId> child(ClinicRow row) {
        var number = row.text("local_number");
        var child = children.get(number);
        if (child == null) {
            row.cells()
                    .refuse(
                            "local_number",
                            number.isEmpty() ? FileReason.CHILD_NUMBER_EMPTY : FileReason.CHILD_NOT_KNOWN,
                            number);
        }
        return Optional.ofNullable(child);
    }

    /** Takes one row. */
    void take(ClinicRow row, Supplier<Effect> work) {
        take(List.of(row), work);
    }

    /** Takes rows that belong together, all or none. */
    void take(List<ClinicRow> rows, Supplier<Effect> work) {
        var file = rows.getFirst().file();
        Optional<Effect> effect = attempt(rows.getFirst(), work);
        if (effect.isPresent()) {
            counts.computeIfPresent(file, (same, count) -> count.plus(effect.get(), rows.size()));
        } else {
            counts.computeIfPresent(file, (same, count) -> count.plusBad(rows.size()));
        }
    }

    private Optional<Effect> attempt(ClinicRow first, Supplier<Effect> work) {
        int before = problems.size();
        try {
            return Objects.requireNonNull(step.execute(status -> {
                var effect = work.get();
                if (problems.size() > before) {
                    status.setRollbackOnly();
                    return Optional.<Effect>empty();
                }
                return Optional.of(effect);
            }));
        } catch (RowRefused refused) {
            refuse(first, before, refused.column(), refused.reason(), refused.details());
        } catch (IllegalArgumentException unfit) {
            refuse(first, before, FileProblem.WHOLE_ROW, FileReason.UNFIT, String.valueOf(unfit.getMessage()));
        } catch (DataIntegrityViolationException unfit) {
            LOG.warn("A row of {} does not fit what is kept", first.file(), unfit);
            refuse(first, before, FileProblem.WHOLE_ROW, FileReason.DOES_NOT_FIT);
        }
        return Optional.empty();
    }

    /** What is wrong with the whole follows from what was wrong with a cell, if anything was. */
    private void refuse(ClinicRow row, int before, String column, FileReason reason, Object... details) {
        if (problems.size() == before) {
            row.cells().refuse(column, reason, details);
        }
    }

    /** The report: every bad row once, by file and line. */
    ImportReport report() {
        Set<FileProblem> once = new HashSet<>();
        var order = counts.keySet().stream().map(ClinicFile::fileName).toList();
        return new ImportReport(
                List.copyOf(counts.values()),
                problems.stream()
                        .filter(once::add)
                        .sorted(Comparator.<FileProblem>comparingInt(one -> order.indexOf(one.file()))
                                .thenComparing(FileProblem::line))
                        .toList(),
                false);
    }
}
