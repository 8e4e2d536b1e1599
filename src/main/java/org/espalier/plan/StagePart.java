package org.espalier.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.patient.Fact;
import org.espalier.patient.StagePair;
import org.espalier.patient.TibiaVaraStage;
import org.espalier.prognosis.Ahead;
import org.espalier.science.quantity.Side;
import org.espalier.science.statistics.WeightedKappa;

/** Stages of early tibia vara as read, film by film and reader by reader, with a guide in drawings of the house. */
record StagePart(Ahead ahead, Side side, List<StagePair> pairs) {

    /** Below so many films read by two a kappa says next to nothing (judged). */
    private static final int LEAST_PAIRS = 10;

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
        parts.add(agreement());
        parts.add(onset());
        return parts;
    }

    /** How well readers agree: what was published, and the films two readers of this hospital gave a stage. */
    private Sheet.Part agreement() {
        var facts = new Sheet.Gathered();
        facts.with("plan.stage.published", Texts.text("plan.stage.published.told"));
        facts.with("plan.stage.here", pairs.isEmpty() ? Texts.text("plan.stage.here.none") : here());
        return facts.under("plan.stage.readers-agree");
    }

    private String here() {
        long same = pairs.stream().filter(pair -> pair.apart() == 0).count();
        long near = pairs.stream().filter(pair -> pair.apart() == 1).count();
        var kappa = WeightedKappa.of(pairs.stream()
                .map(pair -> new WeightedKappa.Pair(
                        pair.first().ordinal(), pair.second().ordinal()))
                .toList());
        var counted = Texts.text("plan.stage.here.counted", pairs.size(), same, near, pairs.size() - same - near);
        return pairs.size() < LEAST_PAIRS || kappa.isEmpty()
                ? Texts.text("plan.stage.here.few", counted, LEAST_PAIRS)
                : Texts.text("plan.stage.here.kappa", counted, kappa.getAsDouble());
    }

    /** Stages are of early onset; late onset is divided by age, in either of two schemes. */
    private Sheet.Part onset() {
        var facts = new Sheet.Gathered();
        facts.with("plan.stage.onset.two", Texts.text("plan.stage.onset.two.told"));
        facts.with("plan.stage.onset.three", Texts.text("plan.stage.onset.three.told"));
        facts.with(
                "plan.stage.onset.here",
                ahead.examination().diagnoses().findings().reversed().stream()
                        .filter(one -> one.sides().covers(side))
                        .flatMap(one -> Stream.ofNullable(one.onset()))
                        .findFirst()
                        .map(Texts::of)
                        .orElseGet(() -> Texts.text("plan.stage.onset.unknown")));
        return facts.under("plan.stage.onset");
    }

    private List<List<String>> rows() {
        var byFilm = new TreeMap<>(ahead.examination().stages().standing().stream()
                .filter(fact -> Optional.ofNullable(fact.finding())
                        .filter(stage -> stage.side() == side)
                        .isPresent())
                .collect(Collectors.groupingBy(Fact::on)));
        return byFilm.isEmpty()
                ? List.of(List.of(Texts.text("plan.stage.none"), "", ""))
                : byFilm.descendingMap().entrySet().stream().map(StagePart::row).toList();
    }

    private static List<String> row(Map.Entry<LocalDate, List<Fact<TibiaVaraStage>>> film) {
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
