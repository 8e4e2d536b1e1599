package org.espalier.stock.code;

import java.util.List;
import java.util.Optional;

/**
 * One line of the dictionary, for one identifier.
 *
 * @param digits two to four
 * @param predefinedLength whether its length is known without a separator after it
 * @param components what its value is made of, in order
 * @param required of which groups one must be there too; none if empty
 * @param excluded what cannot be there too
 * @param title what the standard calls it
 */
record ApplicationIdentifier(
        String digits,
        boolean predefinedLength,
        List<Component> components,
        List<List<String>> required,
        List<String> excluded,
        String title) {

    /** How labels print it. */
    String name() {
        return title.isEmpty() ? "(" + digits + ")" : "(" + digits + ") " + title;
    }

    int longest() {
        return components.stream().mapToInt(Component::longest).sum();
    }

    Optional<UnreadCode> problem(String value) {
        if (value.isEmpty()) {
            return Optional.of(new UnreadCode(CodeProblem.NOTHING_AFTER, name(), value));
        }
        var rest = value;
        for (var component : components) {
            if (rest.isEmpty() && component.optional()) {
                break;
            }
            var taken = rest.substring(0, Math.min(component.longest(), rest.length()));
            var problem = component.problem(taken);
            if (problem.isPresent()) {
                return Optional.of(new UnreadCode(problem.get(), name(), value));
            }
            rest = rest.substring(taken.length());
        }
        return rest.isEmpty() ? Optional.empty() : Optional.of(new UnreadCode(CodeProblem.TOO_LONG, name(), value));
    }
}
