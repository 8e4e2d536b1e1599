package org.espalier.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.kit.Texts;
import org.espalier.prognosis.FilmAngle;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.planning.LoadIndex;
import org.espalier.science.planning.ScrewShank;
import org.espalier.science.quantity.Length;

/** How much harder an exposed screw is bent than a seated one, with how little that says. */
record LoadPart(LimbMeasures measures, SheetInputs inputs) {

    /** What a shank can measure, in millimetres. */
    static final double LEAST_CORE = 1.5;

    static final double MOST_CORE = 8;
    static final double MOST_EXPOSED = 20;

    /** Soft, middle and hard bone, N/mm²: which of them it is nobody knows. */
    private static final List<Double> BEDS = List.of(1000.0, 3000.0, 5000.0);

    List<Sheet.Part> parts() {
        var heading = Texts.text("plan.load.heading");
        return shank().flatMap(shank -> material().map(material -> {
                    List<Sheet.Part> parts = List.of(
                            new Sheet.Table(
                                    heading,
                                    List.of(
                                            Texts.text("plan.load.screw"),
                                            Texts.text("plan.load.exposed"),
                                            Texts.text("plan.load.index"),
                                            Texts.text("plan.load.grade")),
                                    exposed()
                                            .map(screw -> row(screw, shank, material))
                                            .toList()),
                            new Sheet.Note(Texts.text("plan.load.limits")));
                    return parts;
                }))
                .orElseGet(() ->
                        List.of(new Sheet.Facts(heading, List.of()), new Sheet.Note(Texts.text("plan.load.ask"))));
    }

    private record Screw(String name, Length exposed) {}

    private Stream<Screw> exposed() {
        var typed = inputs.number("exposed", 0, MOST_EXPOSED)
                .map(value -> new Screw(Texts.text("plan.load.typed"), new Length(value)));
        return Stream.concat(
                typed.stream(),
                Stream.of(
                                Quantity.FEMUR_METAPHYSIS_SCREW_EXPOSED,
                                Quantity.FEMUR_EPIPHYSIS_SCREW_EXPOSED,
                                Quantity.TIBIA_METAPHYSIS_SCREW_EXPOSED,
                                Quantity.TIBIA_EPIPHYSIS_SCREW_EXPOSED)
                        .flatMap(quantity -> measures.latest(quantity).stream())
                        .map(LoadPart::measured));
    }

    private static Screw measured(FilmAngle film) {
        return new Screw(Texts.text("plan.load." + film.quantity().name()), new Length(Math.max(0, film.value())));
    }

    private static List<String> row(Screw screw, ScrewShank shank, LoadIndex.Material material) {
        var indices =
                BEDS.stream().map(bed -> LoadIndex.of(shank, material, bed)).toList();
        return List.of(
                screw.name,
                PlanText.tenths(screw.exposed),
                Texts.text(
                        "plan.load.range",
                        indices.getFirst().against(screw.exposed),
                        indices.get(1).against(screw.exposed),
                        indices.getLast().against(screw.exposed)),
                Texts.text(
                        "plan.load.grade." + indices.get(1).grade(screw.exposed).name()));
    }

    private Optional<ScrewShank> shank() {
        return inputs.number("core", LEAST_CORE, MOST_CORE).flatMap(core -> {
            double bore = inputs.number("bore", 0, MOST_CORE).orElse(0.0);
            return bore < core ? Optional.of(new ScrewShank(new Length(core), new Length(bore))) : Optional.empty();
        });
    }

    private Optional<LoadIndex.Material> material() {
        return inputs.choice("material", LoadIndex.Material.class);
    }
}
