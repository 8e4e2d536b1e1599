package org.espalier.reading.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.FieldSet;
import com.vaadin.flow.component.select.Select;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.espalier.kit.Texts;
import org.espalier.reading.ReadingSettings;
import org.espalier.reading.ScrewSeen;
import org.espalier.reading.Seen;
import org.espalier.science.alignment.Landmark;
import org.espalier.science.quantity.Side;

/** What is read beyond the frontal set, and what is asked of every screw of a plate that was seen. */
class FurtherPanel extends Composite<Details> {

    private record PlateAt(Side side, ScrewSeen.Plate plate) {
        String words() {
            return Texts.text("reading.further.plate", Texts.of(side), Texts.of(plate));
        }

        List<ScrewSeen> screws() {
            return Arrays.stream(ScrewSeen.Screw.values())
                    .map(screw -> ScrewSeen.asked(side, plate, screw))
                    .toList();
        }
    }

    private final transient Consumer<UnaryOperator<ReadingSettings>> choose;
    private final Div questions = new Div();
    private List<ScrewSeen> screws;

    FurtherPanel(ReadingSettings settings, Consumer<UnaryOperator<ReadingSettings>> choose) {
        this.choose = choose;
        this.screws = settings.screws();
        questions.addClassName("room-screws");
        var form = new Div(further(settings), plates(settings), questions);
        form.addClassName("room-settings");
        getContent().setSummaryText(Texts.text("reading.further.title"));
        getContent().add(form);
        getContent().addClassName("room-fold");
        ask();
    }

    private CheckboxGroup<Landmark.Family> further(ReadingSettings settings) {
        var further = new CheckboxGroup<Landmark.Family>(Texts.text("reading.further"));
        further.setItems(Landmark.Family.FURTHER);
        further.setItemLabelGenerator(Texts::of);
        further.setValue(settings.further());
        further.addValueChangeListener(event -> choose.accept(now -> now.withFurther(event.getValue())));
        return further;
    }

    private CheckboxGroup<PlateAt> plates(ReadingSettings settings) {
        var plates = new CheckboxGroup<PlateAt>(Texts.text("reading.further.plates"));
        plates.setItems(Arrays.stream(Side.values())
                .flatMap(side -> Arrays.stream(ScrewSeen.Plate.values()).map(plate -> new PlateAt(side, plate)))
                .toList());
        plates.setItemLabelGenerator(PlateAt::words);
        plates.setValue(settings.screws().stream()
                .map(screw -> new PlateAt(screw.side(), screw.plate()))
                .collect(Collectors.toSet()));
        plates.addValueChangeListener(event -> {
            keep(screwsOf(event.getValue()));
            ask();
        });
        return plates;
    }

    /** What was said of screws that are still there stays. */
    private List<ScrewSeen> screwsOf(Set<PlateAt> plates) {
        return plates.stream()
                .flatMap(plate -> plate.screws().stream())
                .map(asked -> screws.stream()
                        .filter(said -> isSame(said, asked))
                        .findFirst()
                        .orElse(asked))
                .sorted((one, other) -> Integer.compare(order(one), order(other)))
                .toList();
    }

    private static int order(ScrewSeen screw) {
        return 4 * screw.side().ordinal()
                + 2 * screw.plate().ordinal()
                + screw.screw().ordinal();
    }

    private static boolean isSame(ScrewSeen one, ScrewSeen other) {
        return one.side() == other.side() && one.plate() == other.plate() && one.screw() == other.screw();
    }

    private void ask() {
        questions.removeAll();
        screws.forEach(screw -> questions.add(questionsOf(screw)));
    }

    private FieldSet questionsOf(ScrewSeen screw) {
        var asked = new FieldSet(Texts.text(
                "reading.further.screw", Texts.of(screw.side()), Texts.of(screw.plate()), Texts.of(screw.screw())));
        asked.add(
                question("reading.further.exposed", screw, ScrewSeen::exposed, ScrewSeen::withExposed),
                question("reading.further.bent", screw, ScrewSeen::bent, ScrewSeen::withBent),
                question("reading.further.broken", screw, ScrewSeen::broken, ScrewSeen::withBroken),
                question("reading.further.loose", screw, ScrewSeen::loose, ScrewSeen::withLoose));
        return asked;
    }

    private Select<Seen> question(String key, ScrewSeen screw, Function<ScrewSeen, Seen> answer, Answering answering) {
        var question = new Select<Seen>();
        question.setLabel(Texts.text(key));
        question.setItems(Seen.values());
        question.setItemLabelGenerator(Texts::of);
        question.setValue(answer.apply(screw));
        question.addValueChangeListener(event -> {
            var changed = new ArrayList<ScrewSeen>();
            screws.forEach(one -> changed.add(isSame(one, screw) ? answering.with(one, event.getValue()) : one));
            keep(List.copyOf(changed));
        });
        return question;
    }

    private interface Answering {
        ScrewSeen with(ScrewSeen screw, Seen answer);
    }

    private void keep(List<ScrewSeen> now) {
        screws = now;
        choose.accept(settings -> settings.withScrews(now));
    }
}
