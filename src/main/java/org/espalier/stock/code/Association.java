package org.espalier.stock.code;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.espalier.stock.code.ReadCode.Part;

/** Which identifiers go together, as the dictionary says. */
final class Association {

    private Association() {}

    /** Two parts that cannot stand on one item, or one that is there twice with different values. */
    static Optional<UnreadCode> clash(List<Part> parts) {
        for (var part : parts) {
            for (var other : parts) {
                if (part.identifier().equals(other.identifier())) {
                    if (!part.value().equals(other.value())) {
                        return Optional.of(new UnreadCode(
                                CodeProblem.SAID_TWICE, name(part), part.value() + ", " + other.value()));
                    }
                } else if (identifier(part).excluded().stream().anyMatch(fits(other))) {
                    return Optional.of(new UnreadCode(CodeProblem.NOT_TOGETHER, name(part), name(other)));
                }
            }
        }
        return Optional.empty();
    }

    /** Parts without those that must accompany them. */
    static List<Part> alone(List<Part> parts) {
        return parts.stream()
                .filter(part -> !identifier(part).required().isEmpty())
                .filter(part -> identifier(part).required().stream().noneMatch(group -> isThere(group, parts)))
                .toList();
    }

    private static boolean isThere(List<String> group, List<Part> parts) {
        return group.stream().allMatch(one -> parts.stream().anyMatch(part -> matches(one, part)));
    }

    private static Predicate<String> fits(Part part) {
        return pattern -> matches(pattern, part);
    }

    private static boolean matches(String pattern, Part part) {
        return part.identifier().matches(pattern.replace("n", "\\d"));
    }

    private static ApplicationIdentifier identifier(Part part) {
        return SyntaxDictionary.GS1.find(part.identifier()).orElseThrow();
    }

    private static String name(Part part) {
        return identifier(part).name();
    }
}
