package org.espalier.treatment;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.espalier.film.Film;
import org.espalier.film.FilmId;
import org.espalier.film.FilmService;
import org.espalier.patient.ChildId;
import org.espalier.reading.ReadingService;
import org.espalier.stock.CatalogueService;
import org.espalier.stock.Magnet;
import org.espalier.stock.Product;
import org.espalier.stock.ProductId;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * What is in a child's limbs: piece by piece with its lots, how readers saw it, and what its makers say of scanners.
 */
@Service
@Transactional
public class ImplantService {

    private static final List<Magnet> LEAST_SAFE_FIRST =
            List.of(Magnet.UNSAFE, Magnet.NOT_KNOWN, Magnet.CONDITIONAL, Magnet.SAFE);

    private final TreatmentService treatments;
    private final ReadingService readings;
    private final FilmService films;
    private final CatalogueService catalogue;

    ImplantService(
            TreatmentService treatments, ReadingService readings, FilmService films, CatalogueService catalogue) {
        this.treatments = treatments;
        this.readings = readings;
        this.films = films;
        this.catalogue = catalogue;
    }

    /** Everything that was ever put on a physis and can come out: what is in first, then by the day it was placed. */
    public List<ImplantInPlace> of(ChildId child) {
        return of(treatments.of(child));
    }

    private List<ImplantInPlace> of(Treatment treatment) {
        var sightings = sightings(treatment);
        var products = new HashMap<ProductId, Optional<Product>>();
        return treatment.tethers().stream()
                .filter(tether -> !tether.isPermanent())
                .sorted(Comparator.<Tether, Boolean>comparing(tether -> !tether.isIn())
                        .thenComparing(Tether::from))
                .map(tether -> implant(treatment, tether, sightings, products))
                .toList();
    }

    private List<ScrewSighting> sightings(Treatment treatment) {
        Map<FilmId, LocalDate> taken = films.of(treatment.child()).stream()
                .filter(film -> film.takenOn().isPresent())
                .collect(Collectors.toMap(Film::id, film -> film.takenOn().orElseThrow()));
        return ScrewSighting.of(readings.ofChild(treatment.site(), treatment.child()), taken);
    }

    private ImplantInPlace implant(
            Treatment treatment,
            Tether tether,
            List<ScrewSighting> sightings,
            Map<ProductId, Optional<Product>> products) {
        var implant = tether.implant().orElseThrow();
        var pieces = treatment.pieces().of(implant);
        var own = sightings.stream()
                .filter(one -> one.isOf(tether))
                .filter(one -> isOfItsScrews(treatment, implant, one))
                .collect(Collectors.toMap(ScrewSighting::screw, one -> one, (earlier, later) -> later));
        boolean shared = own.values().stream()
                .anyMatch(one -> treatment.tethers().stream().filter(one::isOf).count() > 1);
        return new ImplantInPlace(
                tether,
                pieces,
                treatment.pieces().out().stream()
                        .filter(out -> implant.equals(out.implant()))
                        .toList(),
                own.values().stream()
                        .sorted(Comparator.comparing(ScrewSighting::screw))
                        .toList(),
                shared,
                magnet(pieces, products));
    }

    /** A screw that was exchanged since is not the one on the film. */
    private static boolean isOfItsScrews(Treatment treatment, ImplantId implant, ScrewSighting seen) {
        return treatment.renewals(implant, seen.screw()).stream().allMatch(day -> day.isBefore(seen.filmOn()));
    }

    private Magnet magnet(List<PieceIn> pieces, Map<ProductId, Optional<Product>> products) {
        return pieces.stream()
                .map(one -> magnet(one.piece(), products))
                .min(Comparator.comparing(LEAST_SAFE_FIRST::indexOf))
                .orElse(Magnet.NOT_KNOWN);
    }

    private Magnet magnet(Piece piece, Map<ProductId, Optional<Product>> products) {
        return Optional.ofNullable(piece.product())
                .flatMap(product -> products.computeIfAbsent(product, catalogue::product))
                .map(product -> product.data().magnet())
                .orElse(Magnet.NOT_KNOWN);
    }
}
