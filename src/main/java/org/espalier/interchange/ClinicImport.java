package org.espalier.interchange;

import java.time.Clock;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.espalier.access.CurrentStaff;
import org.espalier.access.SiteId;
import org.espalier.access.StaffId;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.espalier.platform.Ids;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.TransactionStatus;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Takes a clinic's own records in for a hospital: in one transaction, all of them or none unless part is asked for. The
 * house itself brings them in, for nobody there did what they tell of; who had it done is written down beside.
 */
@Component
class ClinicImport {

    private static final String PURPOSE = "import";

    private final List<ClinicPart> parts;
    private final JdbcBroughtInRepository broughtIn;
    private final CurrentStaff currentStaff;
    private final TransactionTemplate whole;
    private final TransactionTemplate step;
    private final Ids ids;
    private final Clock clock;

    ClinicImport(
            List<ClinicPart> parts,
            JdbcBroughtInRepository broughtIn,
            CurrentStaff currentStaff,
            PlatformTransactionManager transactions,
            Ids ids,
            Clock clock) {
        this.parts = List.copyOf(parts);
        this.broughtIn = broughtIn;
        this.currentStaff = currentStaff;
        whole = new TransactionTemplate(transactions);
        whole.setPropagationBehavior(TransactionDefinition.PROPAGATION_REQUIRES_NEW);
        step = new TransactionTemplate(transactions);
        step.setPropagationBehavior(TransactionDefinition.PROPAGATION_NESTED);
        this.ids = ids;
        this.clock = clock;
    }

    /** What taking the folder would do; nothing is kept. */
    ImportReport preview(SiteId site, ClinicFolder folder) {
        return inOneGo(site, status -> {
            status.setRollbackOnly();
            return read(site, folder);
        });
    }

    /** Takes the folder, or so much of it as is asked for. */
    ImportReport take(SiteId site, ClinicFolder folder, Portion portion) {
        @Nullable StaffId by = currentStaff.find().orElse(null);
        return inOneGo(site, status -> {
            var report = read(site, folder);
            if (!report.isGood() && portion == Portion.ALL) {
                status.setRollbackOnly();
                return report;
            }
            if (report.bringsSomething()) {
                broughtIn.add(ids.next(), site, by, clock.instant(), report);
            }
            return report.asTaken();
        });
    }

    private ImportReport read(SiteId site, ClinicFolder folder) {
        var taking = new Taking(site, folder, step);
        parts.forEach(part -> part.take(taking));
        return taking.report();
    }

    private ImportReport inOneGo(SiteId site, Function<TransactionStatus, ImportReport> work) {
        return Callers.callAs(
                new Caller.SystemAtSite(site.value(), PURPOSE),
                () -> Objects.requireNonNull(whole.execute(work::apply)));
    }
}
