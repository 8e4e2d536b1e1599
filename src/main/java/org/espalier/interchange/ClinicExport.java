package org.espalier.interchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.espalier.access.SiteId;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/** Writes a hospital's records into a folder, as the import reads them. Each child is written down as opened. */
@Component
class ClinicExport {

    private static final String PURPOSE = "export";

    private final List<ClinicPart> parts;
    private final ChildrenPart children;
    private final TransactionTemplate transactions;

    ClinicExport(List<ClinicPart> parts, ChildrenPart children, TransactionTemplate transactions) {
        this.parts = List.copyOf(parts);
        this.children = children;
        this.transactions = transactions;
    }

    /**
     * Writes the files, those of films too.
     *
     * @return how many children have no local number and are left out
     */
    long write(SiteId site, Path folder) {
        return Callers.callAs(
                new Caller.SystemAtSite(site.value(), PURPOSE),
                () -> Objects.requireNonNull(transactions.execute(status -> writeAll(site, folder))));
    }

    private long writeAll(SiteId site, Path folder) {
        var giving = new Giving(site, children.all(site), folder);
        parts.forEach(part -> part.rows(giving).forEach((file, rows) -> write(folder, file, rows)));
        return children.withoutNumber(site);
    }

    private static void write(Path folder, ClinicFile file, List<List<String>> rows) {
        try {
            Files.createDirectories(folder);
            Files.write(folder.resolve(file.fileName()), ClinicSheet.bytes(file, rows));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
