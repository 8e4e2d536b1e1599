package org.espalier.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.espalier.kit.Texts;
import org.espalier.kit.Who;
import org.espalier.kit.paper.Markup;
import org.espalier.science.quantity.Side;

/**
 * One sheet of the desk, the same on screen and on paper.
 *
 * @param cautions what is to be known before anybody acts on it; never empty
 */
public record Sheet(
        SheetKind kind, Who who, LocalDate today, Side side, String title, List<Part> parts, List<String> cautions) {

    /** A part of a sheet: one of its kinds. */
    public sealed interface Part permits Facts, Table, Choices, Note, Drawing, Paper, Offer {}

    /** Facts with their names before them. */
    public record Facts(String heading, List<Fact> facts) implements Part {

        public Facts {
            facts = List.copyOf(facts);
        }
    }

    /** A name and what is to be said of it. */
    public record Fact(String name, String value) {}

    /** A table; the first cell of each row heads it. */
    public record Table(String heading, List<String> head, List<List<String>> rows) implements Part {

        public Table {
            head = List.copyOf(head);
            rows = List.copyOf(rows);
        }
    }

    /** Options side by side, each numbered by its place. */
    public record Choices(String heading, List<OptionCells> options) implements Part {

        public Choices {
            options = List.copyOf(options);
        }
    }

    /** A paragraph. */
    public record Note(String text) implements Part {}

    /**
     * A drawing.
     *
     * @param inWords what it shows, for whoever cannot see it
     */
    public record Drawing(String heading, String inWords, Consumer<Markup> draw) implements Part {}

    /** A drawing for paper alone: on the screen what it shows stands already. */
    public record Paper(Drawing drawing) implements Part {}

    /**
     * Numbers on record that a person may take over into what is typed.
     *
     * @param numbers empty when there are none
     */
    public record Offer(String heading, List<Offered> numbers) implements Part {

        public Offer {
            numbers = List.copyOf(numbers);
        }
    }

    /**
     * One of them.
     *
     * @param input what it can be typed into
     * @param words what it is and where it comes from
     */
    public record Offered(String input, double value, String words) {}

    public Sheet {
        parts = List.copyOf(parts);
        cautions = List.copyOf(cautions);
        if (cautions.isEmpty()) {
            throw new IllegalArgumentException("The sheet " + kind + " states no cautions");
        }
    }

    /** Facts as they are gathered. */
    static final class Gathered {

        private final List<Fact> facts = new ArrayList<>();

        /** A fact by the key of its name. */
        Gathered with(String name, String value) {
            facts.add(new Fact(Texts.text(name), value));
            return this;
        }

        Facts under(String heading) {
            return new Facts(Texts.text(heading), facts);
        }
    }
}
