package org.espalier.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.espalier.kit.Texts;
import org.espalier.science.alignment.Norm;
import org.espalier.science.alignment.NormForAge;
import org.espalier.science.alignment.NormMethod;
import org.espalier.science.alignment.NormQuantity;
import org.espalier.science.alignment.NormStudy;
import org.espalier.science.alignment.NormalRange;
import org.espalier.science.alignment.Quantity;

/** What is normal for a child, of the quantities a film tells, measured by the same method alone. */
record Norms(ChildOnFilm child) {

    private record Asked(NormQuantity quantity, NormMethod method) {}

    /** The neutral band at this age. */
    Optional<NormalRange> range(Quantity quantity) {
        return child.age().flatMap(age -> NormalRange.of(quantity, age));
    }

    /** What each study says; nothing while age or sex is not known. */
    List<Norm> studies(Quantity quantity) {
        return asked(quantity)
                .flatMap(asked -> child.age().flatMap(age -> child.sex()
                        .map(sex -> NormForAge.all(asked.quantity(), asked.method(), sex, age))))
                .orElse(List.of());
    }

    /**
     * In words: each study's mean and spread; or that there is no norm for this age; empty where no norm exists at all.
     */
    Optional<String> words(Quantity quantity) {
        var studies = studies(quantity);
        if (!studies.isEmpty()) {
            return Optional.of(
                    studies.stream().map(norm -> words(quantity, norm)).collect(Collectors.joining("; ")));
        }
        boolean exists = asked(quantity).isPresent()
                || NormalRange.all().stream().anyMatch(range -> range.quantity() == quantity);
        return exists && range(quantity).isEmpty()
                ? Optional.of(Texts.text(child.age().isPresent() ? "reading.norm.none-for-age" : "reading.norm.no-age"))
                : Optional.empty();
    }

    /** How far a value lies from each study's mean that printed a spread. */
    Optional<String> z(Quantity quantity, double value) {
        var scores = new ArrayList<String>();
        for (Norm norm : studies(quantity)) {
            norm.z(value)
                    .ifPresent(z -> scores.add(Texts.text("reading.norm.z", NumberText.signed(z), name(norm.study()))));
        }
        return scores.isEmpty() ? Optional.empty() : Optional.of(String.join(" · ", scores));
    }

    /** Where what is shown of these quantities was printed, and how far it was checked. */
    List<String> sources(List<Quantity> shown) {
        return shown.stream()
                .flatMap(quantity -> studies(quantity).stream())
                .map(norm -> Texts.text(
                        "reading.norm.source",
                        name(norm.study()),
                        norm.study().citation(),
                        norm.study().population(),
                        Texts.of(norm.method()),
                        Texts.text("reading.norm.checking." + norm.checking().name())))
                .distinct()
                .toList();
    }

    private static String words(Quantity quantity, Norm norm) {
        var mean = norm.mean().isPresent()
                ? Texts.text(
                        "reading.norm.mean",
                        NumberText.of(quantity, norm.mean().getAsDouble()),
                        norm.standardDeviation().isPresent()
                                ? Texts.text(
                                        "reading.norm.sd",
                                        NumberText.signed(
                                                norm.standardDeviation().getAsDouble()))
                                : Texts.text("reading.norm.no-sd"))
                : "";
        var unverified = norm.checking().isUnverified() ? Texts.text("reading.norm.unverified") : "";
        return Texts.text("reading.norm", name(norm.study()), mean, unverified);
    }

    /** First author and year, from the study's code. */
    private static String name(NormStudy study) {
        var code = study.code().replace('-', ' ');
        return Character.toUpperCase(code.charAt(0)) + code.substring(1);
    }

    private static Optional<Asked> asked(Quantity quantity) {
        return switch (quantity) {
            case HKA -> Optional.of(new Asked(NormQuantity.HKA, NormMethod.MECHANICAL_FILM));
            case MLDFA -> Optional.of(new Asked(NormQuantity.MLDFA, NormMethod.MECHANICAL_FILM));
            case MMPTA -> Optional.of(new Asked(NormQuantity.MMPTA, NormMethod.MECHANICAL_FILM));
            case ATFA -> Optional.of(new Asked(NormQuantity.TIBIOFEMORAL, NormMethod.ANATOMIC_FILM));
            case AMA -> Optional.of(new Asked(NormQuantity.AXIS_ANGLE, NormMethod.ANATOMIC_FILM));
            default -> Optional.empty();
        };
    }
}
