package org.espalier.followup;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.espalier.access.SiteService;
import org.espalier.kit.Who;
import org.espalier.patient.Child;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.treatment.ImplantInPlace;
import org.espalier.treatment.ImplantService;
import org.espalier.treatment.Piece;
import org.espalier.treatment.PieceIn;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The card a family carries for what is in their child, in their language. */
@Service
@Transactional
public class PlateCardService {

    private final LetterPress press;
    private final JdbcLetterheadRepository letterheads;
    private final JdbcVisitRepository visits;
    private final JdbcVisitStepRepository steps;
    private final ImplantService implants;
    private final PatientService patients;
    private final SiteService sites;

    PlateCardService(
            LetterPress press,
            JdbcLetterheadRepository letterheads,
            JdbcVisitRepository visits,
            JdbcVisitStepRepository steps,
            ImplantService implants,
            PatientService patients,
            SiteService sites) {
        this.press = press;
        this.letterheads = letterheads;
        this.visits = visits;
        this.steps = steps;
        this.implants = implants;
        this.patients = patients;
        this.sites = sites;
    }

    /** The card as PDF; empty when there is no such child that the caller may see. */
    public Optional<LetterOutcome> card(ChildId child, LetterLanguage language) {
        return patients.open(child, "plate-card").map(one -> {
            var in = implants.of(child).stream()
                    .filter(implant -> implant.tether().isIn())
                    .toList();
            return refusal(one, in)
                    .<LetterOutcome>map(LetterOutcome.Refused::new)
                    .orElseGet(() -> new LetterOutcome.Written(press.print(card(one, in, language))));
        });
    }

    private Optional<LetterRefusal> refusal(Child child, List<ImplantInPlace> in) {
        if (steps.end(child.id()).filter(CareEnd::stopsLetters).isPresent()) {
            return Optional.of(LetterRefusal.DIED);
        }
        if (in.isEmpty()) {
            return Optional.of(LetterRefusal.NOTHING_IN);
        }
        if (letterheads.of(child.site()).isEmpty()) {
            return Optional.of(LetterRefusal.NO_LETTERHEAD);
        }
        return child.who() instanceof Who.Named ? Optional.empty() : Optional.of(LetterRefusal.NO_NAME);
    }

    private PlateCard card(Child child, List<ImplantInPlace> in, LetterLanguage language) {
        var name = child.who() instanceof Who.Named named ? named.givenName() : null;
        return new PlateCard(
                Objects.requireNonNullElse(name, "…"),
                sites.get(child.site()).name(),
                letterheads.of(child.site()).orElseThrow(),
                in.stream().map(PlateCardService::item).toList(),
                visits.findOpen(child.id()).map(visit -> visit.due().lookBy()),
                sites.today(child.site()),
                language);
    }

    private static PlateCard.Item item(ImplantInPlace implant) {
        var tether = implant.tether();
        return new PlateCard.Item(
                tether.physis(),
                tether.side(),
                tether.from(),
                tether.what(),
                implant.pieces().stream()
                        .map(PieceIn::piece)
                        .map(PlateCardService::part)
                        .toList(),
                implant.magnet());
    }

    private static PlateCard.Part part(Piece piece) {
        return new PlateCard.Part(piece.what(), Optional.ofNullable(piece.lotNumbers()), piece.isOfOneLot());
    }
}
