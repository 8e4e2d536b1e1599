package org.espalier.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.kit.Who;
import org.espalier.prognosis.Ahead;

/** Until when an option works that places no plate; what passes meanwhile is said of it, and what is not known. */
record LastDay(Options options, Option option) {

    private static final int BRACED_YEARS = 3;
    private static final int EARLY_YEARS = 4;

    List<String> words() {
        return switch (option) {
            case WATCH, MEDICAL_FIRST -> watched();
            case BRACE ->
                List.of(birthday(BRACED_YEARS)
                        .map(day -> Texts.text("plan.window.brace", DateText.of(day)))
                        .orElseGet(() -> Texts.text("plan.window.brace.age")));
            case OSTEOTOMY, PLATEAU_ELEVATION, GRADUAL_CORRECTION -> List.of(cut());
            case TAKE_OUT_NOW, TAKE_OUT_AT_TARGET, TAKE_OUT_SCREW, RELEASE_AND_WAIT, DEROTATE_AT_REMOVAL ->
                List.of(Texts.text("plan.window.removal"));
            case PLATE_FEMUR, PLATE_TIBIA, PLATE_BOTH, ADD_PHYSIS, EXCHANGE_SCREW, MOVE_SIDE, RESECT_BAR ->
                List.of(growthEnds());
        };
    }

    /** While it is watched the windows of the plates run. */
    private List<String> watched() {
        var windows = Stream.of(options.limb().femur(), options.limb().tibia())
                .flatMap(physis -> ahead().prognosis().physis(physis.physis()).stream()
                        .flatMap(prognosis -> prognosis.window().stream())
                        .map(window -> Texts.text(
                                "plan.window.meanwhile", PlanText.window(physis.site(), window, ahead().today()))))
                .toList();
        return windows.isEmpty() ? List.of(Texts.text("plan.window.open-ended")) : windows;
    }

    private String cut() {
        boolean early = new LimbFacts(ahead(), options.side()).isDecidedBeforeFourth();
        return early
                ? birthday(EARLY_YEARS)
                        .map(day -> Texts.text("plan.window.fourth", DateText.of(day)))
                        .orElseGet(() -> Texts.text("plan.window.fourth.age"))
                : Texts.text("plan.window.cut");
    }

    private String growthEnds() {
        return ahead().prognosis()
                .maturity()
                .map(maturity -> Texts.text(
                        "plan.window.growth",
                        DateText.of(maturity.day()),
                        DateText.of(maturity.earliest()),
                        DateText.of(maturity.latest())))
                .orElseGet(() -> Texts.text("plan.window.open-ended"));
    }

    private Optional<LocalDate> birthday(int years) {
        return ahead().prognosis().child().who() instanceof Who.Named named
                ? Optional.of(named.birthDate().plusYears(years))
                : Optional.empty();
    }

    private Ahead ahead() {
        return options.ahead();
    }
}
