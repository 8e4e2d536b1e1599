package org.espalier.plan;

import java.util.Locale;
import org.espalier.kit.Texts;
import org.espalier.kit.paper.Ink;
import org.espalier.kit.paper.Markup;
import org.espalier.kit.paper.PaperPrinter;
import org.espalier.patient.TibiaVaraStage;

/**
 * The six stages drawn for this program: the medial half of the proximal tibia, medial on the left, as a scheme.
 * Epiphysis above, metaphysis below, the growth plate between them; not to scale and of no child.
 */
final class StageDrawing {

    private static final double CELL = 112;
    private static final double HEIGHT = 120;

    private StageDrawing() {}

    static void draw(Markup parent) {
        double width = CELL * TibiaVaraStage.Stage.values().length;
        var svg = parent.svg("svg")
                .with("width", width)
                .with("height", HEIGHT)
                .with("viewBox", String.format(Locale.ROOT, "0 0 %.0f %.0f", width, HEIGHT))
                .with("font-family", PaperPrinter.FACE + ", sans-serif")
                .with("font-size", "12");
        for (var stage : TibiaVaraStage.Stage.values()) {
            var cell = svg.svg("g")
                    .with("transform", String.format(Locale.ROOT, "translate(%.0f 0)", stage.ordinal() * CELL));
            bone(cell, epiphysis(stage));
            bone(cell, metaphysis(stage));
            extra(cell, stage);
            cell.svg("text")
                    .with("x", "52")
                    .with("y", "116")
                    .with("text-anchor", "middle")
                    .with("fill", Ink.INK)
                    .text(Texts.text("plan.stage.label", stage.name()));
        }
    }

    private static String epiphysis(TibiaVaraStage.Stage stage) {
        return switch (stage) {
            case I -> "M100 18 L46 18 Q24 20 20 32 Q24 40 46 40 L100 40 Z";
            case II -> "M100 18 L48 18 Q30 22 22 36 L46 42 L100 40 Z";
            case III -> "M100 18 L50 18 Q32 24 24 42 L40 46 L52 40 L100 40 Z";
            case IV -> "M100 18 L52 18 Q30 26 20 52 L38 60 L50 44 L62 40 L100 40 Z";
            case V -> "M100 18 L58 20 L50 40 L62 42 L100 40 Z";
            case VI -> "M100 18 L52 18 Q30 26 18 58 L36 66 L50 46 L62 40 L100 40 Z";
        };
    }

    private static String metaphysis(TibiaVaraStage.Stage stage) {
        return switch (stage) {
            case I -> "M100 46 L44 47 L34 45 L24 50 L20 58 Q44 70 52 104 L100 104 Z";
            case II -> "M100 46 L48 47 L36 56 L22 60 L16 68 Q44 78 52 104 L100 104 Z";
            case III -> "M100 46 L54 46 L46 58 L34 64 L18 68 L14 76 Q44 84 52 104 L100 104 Z";
            case IV -> "M100 46 L64 46 L54 52 L44 68 L26 72 L12 78 Q44 90 54 104 L100 104 Z";
            case V -> "M100 46 L64 48 L54 56 L44 76 L24 80 L14 86 Q46 94 56 104 L100 104 Z";
            case VI -> "M100 46 L64 46 L54 54 L44 76 L26 82 L14 88 Q46 96 56 104 L100 104 Z";
        };
    }

    private static void extra(Markup cell, TibiaVaraStage.Stage stage) {
        switch (stage) {
            case III -> bone(cell, "M14 60 L20 56 L24 62 L18 65 Z");
            case V -> bone(cell, "M50 22 L44 40 L36 60 L18 62 Q22 34 50 22 Z");
            case VI -> bone(cell, "M30 63 L44 56 L40 74 L28 78 Z").with("fill", Ink.INK);
            default -> {
                // The outline says all of it.
            }
        }
    }

    private static Markup bone(Markup cell, String outline) {
        return cell.svg("path")
                .with("d", outline)
                .with("fill", Ink.PALE)
                .with("stroke", Ink.INK)
                .with("stroke-width", "1.4")
                .with("stroke-linejoin", "round");
    }
}
