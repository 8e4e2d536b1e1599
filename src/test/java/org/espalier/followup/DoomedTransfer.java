package org.espalier.followup;

import java.io.IOException;
import java.io.PrintStream;
import java.time.LocalDate;
import org.espalier.DoomedProcess;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildData;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.platform.Ids;
import org.espalier.science.quantity.Sex;
import org.springframework.context.ConfigurableApplicationContext;

/**
 * The whole application in a process of its own, which tells who has care of the child it finds, takes it over, and
 * dies at a named point as a killed process does: at once, without any farewell.
 */
public final class DoomedTransfer {

    /** Where it dies. */
    enum Death {
        ASKED,
        ACCEPTED_NOT_YET_COMMITTED,
        ACCEPTED_COMMITTED,
        NOWHERE
    }

    private final PrintStream said;
    private final TestNetwork network;
    private final TransferService transfers;
    private final PatientService patients;
    private final Ids ids;

    private DoomedTransfer(PrintStream said, ConfigurableApplicationContext house) {
        this.said = said;
        network = house.getBean(TestNetwork.class);
        transfers = house.getBean(TransferService.class);
        patients = house.getBean(PatientService.class);
        ids = house.getBean(Ids.class);
    }

    public static void main(String[] arguments) throws IOException {
        DoomedProcess.live(
                arguments, (house, said) -> new DoomedTransfer(said, house).live(Death.valueOf(arguments[1])));
    }

    private void live(Death death) {
        tellWhoHasCare();
        switch (death) {
            case ASKED -> {
                ask();
                die();
            }
            case ACCEPTED_NOT_YET_COMMITTED -> accept(true);
            case ACCEPTED_COMMITTED -> {
                accept(false);
                die();
            }
            case NOWHERE -> said.println("alive");
        }
    }

    private void ask() {
        var here = new SiteId(network.site());
        var there = new SiteId(network.site());
        var nurse = network.staff(here.value(), "NURSE");
        network.staff(there.value(), "NURSE");
        var child = new ChildId(ids.next());
        var data = new ChildData("Invented", "Moving", LocalDate.of(2019, 7, 14), Sex.FEMALE, "M-1");
        network.as(nurse, () -> patients.register(here, child, data));
        network.as(nurse, () -> transfers.ask(child, there, "moved to the coast"));
    }

    private void accept(boolean dieBeforeCommit) {
        var owner = network.owner();
        var asked =
                owner.sql("select id from transfer").query(java.util.UUID.class).single();
        var nurse = owner.sql("select m.staff_id from membership m join transfer t on t.to_site = m.site_id")
                .query(java.util.UUID.class)
                .single();
        network.as(nurse, () -> {
            var taken = transfers.accept(asked);
            if (dieBeforeCommit) {
                die();
            }
            return taken;
        });
    }

    /** How many hospitals have care of the child, which one, and how many visits of it are open there. */
    private void tellWhoHasCare() {
        network.owner().sql("""
                        select case when c.site_id = t.from_site then 'old' else 'new' end || ' hospital, transfer ' ||
                            t.state
                            || ', open visits there '
                            || (select count(*) from visit v
                                where v.child_id = c.id and v.site_id = c.site_id and v.closed_at is null)
                            || ', rows elsewhere '
                            || (select count(*) from physis p where p.child_id = c.id and p.site_id <> c.site_id)
                        from child c join transfer t on t.child_id = c.id
                        """).query(String.class).list().forEach(said::println);
    }

    private static void die() {
        DoomedProcess.die();
    }
}
