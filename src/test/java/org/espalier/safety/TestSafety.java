package org.espalier.safety;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.patient.Bone;
import org.espalier.patient.BoneEnd;
import org.espalier.patient.ChildId;
import org.espalier.patient.FactId;
import org.espalier.platform.Ids;
import org.espalier.science.quantity.Side;
import org.espalier.stock.Explant;
import org.espalier.stock.Lot;
import org.espalier.stock.LotId;
import org.espalier.stock.Product;
import org.espalier.stock.ShelfId;
import org.espalier.stock.TestStock;
import org.espalier.stock.TestStock.Stocked;
import org.espalier.stock.Use;
import org.espalier.stock.UseService;
import org.espalier.treatment.ImplantFinding;
import org.espalier.treatment.ImplantId;
import org.espalier.treatment.PhysisKey;
import org.espalier.treatment.PlateSide;
import org.espalier.treatment.ProcedureData;
import org.espalier.treatment.ProcedureId;
import org.espalier.treatment.TestTreatment;
import org.espalier.treatment.TreatmentFactService;
import org.espalier.treatment.TreatmentService;
import org.springframework.stereotype.Component;

/** Children who carry lots of the stock, for a test. */
@Component
public class TestSafety {

    private static final LocalDate PLACED = LocalDate.of(2025, 6, 12);
    private static final PhysisKey LEFT_FEMUR = new PhysisKey(Side.LEFT, Bone.FEMUR, BoneEnd.DISTAL);

    private final TestNetwork network;
    private final TestStock stock;
    private final TreatmentService treatments;
    private final TreatmentFactService facts;
    private final UseService uses;
    private final SafetyService safety;
    private final IncidentService incidents;
    private final Ids ids;

    TestSafety(
            TestNetwork network,
            TestStock stock,
            TreatmentService treatments,
            TreatmentFactService facts,
            UseService uses,
            SafetyService safety,
            IncidentService incidents,
            Ids ids) {
        this.network = network;
        this.stock = stock;
        this.treatments = treatments;
        this.facts = facts;
        this.uses = uses;
        this.safety = safety;
        this.incidents = incidents;
        this.ids = ids;
    }

    /** A plate that was put into a child. */
    public record Plated(ProcedureId procedure, ImplantId implant) {}

    /** Puts a piece into a child: the record of the operation, and what it took from the shelf. */
    public Plated plate(UUID surgeon, ChildId child, ShelfId from, Product product, Optional<LotId> lot) {
        var plated = new Plated(new ProcedureId(ids.next()), new ImplantId(ids.next()));
        var data = TestTreatment.plate(PLACED, LEFT_FEMUR, PlateSide.LATERAL, plated.implant());
        var elsewhere = new ProcedureData(data.on(), true, null, null, data.acts(), data.next());
        network.as(surgeon, () -> {
            treatments.record(child, plated.procedure(), elsewhere);
            return uses.use(new Use(
                    ids.next(), from, product.id(), lot, 1, plated.procedure().value()));
        });
        return plated;
    }

    /** Says that the operation was on another day, by another surgeon. */
    public void correct(UUID surgeon, ChildId child, Plated plated, LocalDate on, String operatedBy) {
        var data = TestTreatment.plate(on, LEFT_FEMUR, PlateSide.LATERAL, plated.implant());
        var corrected = new ProcedureData(data.on(), true, operatedBy, null, data.acts(), data.next());
        network.as(
                surgeon,
                () -> treatments.correct(
                        child, plated.procedure(), new ProcedureId(ids.next()), corrected, "the day was wrong"));
    }

    /** Takes out what an operation put in; it is disposed of. */
    public void explant(UUID surgeon, SiteId site, Product product, Lot lot, Plated plated) {
        var explant = new Explant(
                ids.next(),
                site,
                product.id(),
                List.of(lot.id()),
                1,
                plated.procedure().value(),
                Explant.Fate.DISPOSED);
        network.as(surgeon, () -> {
            uses.explant(explant);
            return plated;
        });
    }

    /** Writes down that a part of what was put in is broken. */
    public ImplantFinding breaks(UUID surgeon, ChildId child, ImplantId implant, ImplantFinding.Part part) {
        var finding = new ImplantFinding(
                PLACED.plusDays(90), implant, part, ImplantFinding.Seen.BROKEN, null, "seen on the film");
        network.as(surgeon, () -> {
            facts.record(child, new FactId(ids.next()), finding);
            return finding;
        });
        return finding;
    }

    /** Opens a notice for a lot. */
    public UUID notice(UUID opener, SiteId site, Lot lot) {
        var notice = ids.next();
        network.as(opener, () -> safety.open(notice, lot.id(), site, "Invented maker, notice 7", "heads may break"));
        return notice;
    }

    /** A child who carries a lot with a notice, with two broken parts, one of them reported. */
    public Map<String, Object[]> arrange(SiteId site, UUID surgeon, ChildId child) {
        Stocked stocked = stock.empty(site);
        var lot = stock.arrive(stocked, stocked.plate(), stocked.store(), "SN-1", LocalDate.of(2040, 1, 31), 2);
        var plated = plate(surgeon, child, stocked.store(), stocked.plate(), Optional.of(lot.id()));
        var broken = breaks(surgeon, child, plated.implant(), ImplantFinding.Part.BODY);
        var reported = breaks(surgeon, child, plated.implant(), ImplantFinding.Part.EPIPHYSEAL_SCREW);
        var report = ids.next();
        network.as(surgeon, () -> incidents.report(child, report, reported, "head broken off"));
        var notice = notice(surgeon, site, lot);
        var other = stock.arrive(stocked, stocked.screw(), stocked.store(), "SN-2", LocalDate.of(2040, 1, 31), 2);
        var arguments = new HashMap<String, Object[]>();
        List.of("lookAgain", "notice", "progress", "close", "carriers")
                .forEach(method -> arguments.put("SafetyService." + method, new Object[] {notice}));
        arguments.put(
                "SafetyService.open",
                new Object[] {ids.next(), other.id(), site, "Invented maker, notice 8", "threads may strip"});
        arguments.put("SafetyService.told", new Object[] {notice, child, "by phone, comes on Monday"});
        arguments.put("IncidentService.broken", new Object[] {child});
        arguments.put("IncidentService.of", new Object[] {child});
        arguments.put("IncidentService.find", new Object[] {report});
        arguments.put("IncidentService.report", new Object[] {child, ids.next(), broken, "plate broken"});
        return arguments;
    }
}
