package org.espalier.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.patient.Fact;
import org.espalier.patient.TibiaVaraStage;
import org.espalier.prognosis.Ahead;
import org.espalier.science.quantity.Side;

/** Stages of early tibia vara as read, film by film and reader by reader, with a guide in drawings of the house. */
record StagePart(Ahead ahead, Side side) {

    List<Sheet.Part> parts() {
        var parts = new ArrayList<Sheet.Part>();
        parts.add(new Sheet.Table(
                Texts.text("plan.stage.heading"),
                List.of(
                        Texts.text("plan.stage.film"),
                        Texts.text("plan.stage.readers"),
                        Texts.text("plan.stage.agreement")),
                rows()));
        parts.add(new Sheet.Drawing(
                Texts.text("plan.stage.guide"), Texts.text("plan.stage.guide.words"), StageDrawing::draw));
        parts.add(new Sheet.Table(
                Texts.text("plan.stage.words"),
                List.of(),
                Arrays.stream(TibiaVaraStage.Stage.values())
                        .map(stage -> List.of(Texts.text("plan.stage." + stage.name())))
                        .toList()));
        return parts;
    }

    private List<List<String>> rows() {
        var byFilm = new TreeMap<>(ahead.examination().stages().facts().stream()
                .filter(fact -> Optional.ofNullable(fact.finding())
                        .filter(stage -> stage.side() == side)
                        .isPresent())
                .collect(Collectors.groupingBy(Fact::on)));
        return byFilm.isEmpty()
                ? List.of(List.of(Texts.text("plan.stage.none"), "", ""))
                : byFilm.descendingMap().entrySet().stream().map(StagePart::row).toList();
    }

    private static List<String> row(Map.Entry<java.time.LocalDate, List<Fact<TibiaVaraStage>>> film) {
        var readers = film.getValue().stream().map(StagePart::reader).collect(Collectors.joining("; "));
        long readerCount = film.getValue().stream().map(Fact::by).distinct().count();
        long stages = film.getValue().stream()
                .flatMap(fact -> Optional.ofNullable(fact.finding()).stream())
                .map(TibiaVaraStage::stage)
                .distinct()
                .count();
        return List.of(
                DateText.of(film.getKey()),
                readers,
                Texts.text(
                        readerCount < 2
                                ? "plan.stage.one-reader"
                                : stages == 1 ? "plan.stage.agree" : "plan.stage.differ"));
    }

    private static String reader(Fact<TibiaVaraStage> fact) {
        return Texts.text(
                "plan.stage.by",
                Optional.ofNullable(fact.finding())
                        .map(one -> one.stage().name())
                        .orElse(""),
                Optional.ofNullable(fact.by()).orElseGet(() -> Texts.text("plan.stage.house")));
    }
}
