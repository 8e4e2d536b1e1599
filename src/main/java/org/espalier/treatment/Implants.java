package org.espalier.treatment;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * All that was ever put in, as it follows from what was done and seen.
 *
 * @param misfits what does not fit the rest, by its day
 */
record Implants(List<Tether> tethers, List<Misfit> misfits) {

    private record Event(LocalDate on, Runnable happening) {}

    static Implants of(List<Deed> deeds, List<ImplantFinding> findings) {
        return new Going().through(deeds, findings);
    }

    /** What is gone through, the first first; of one day acts before findings. */
    private static final class Going {

        private final Map<ImplantId, ImplantStory> stories = new LinkedHashMap<>();
        private final List<Tether> arrests = new ArrayList<>();
        private final List<Misfit> misfits = new ArrayList<>();

        Implants through(List<Deed> deeds, List<ImplantFinding> findings) {
            Stream.concat(
                            deeds.stream().map(deed -> new Event(deed.on(), () -> take(deed))),
                            findings.stream().map(finding -> new Event(finding.on(), () -> take(finding))))
                    .sorted(Comparator.comparing(Event::on))
                    .forEach(event -> event.happening().run());
            var tethers = Stream.concat(stories.values().stream().map(ImplantStory::toTether), arrests.stream())
                    .sorted(Comparator.comparing(Tether::from))
                    .toList();
            return new Implants(tethers, List.copyOf(misfits));
        }

        private void take(Deed deed) {
            switch (deed.act().kind().effect()) {
                case PUTS_IN -> putIn(deed);
                case ARRESTS -> arrests.add(arrest(deed));
                case TAKES_OUT, SCREW_OUT, SCREW_IN, SCREW_IN_PLACE, MOVES ->
                    story(deed.act().implant())
                            .map(story -> story.take(deed.on(), deed.act()))
                            .orElseGet(() -> Optional.of(Misfit.Kind.NOT_IN))
                            .ifPresent(kind -> misfits.add(new Misfit(kind, deed.on())));
                default -> {
                    // Nothing is put in or taken out.
                }
            }
        }

        private void take(ImplantFinding finding) {
            story(finding.implant())
                    .map(story -> story.take(finding))
                    .orElseGet(() -> Optional.of(Misfit.Kind.NOT_IN))
                    .ifPresent(kind -> misfits.add(new Misfit(kind, finding.on())));
        }

        private void putIn(Deed deed) {
            var implant = deed.act().implant();
            if (implant == null || stories.containsKey(implant)) {
                misfits.add(new Misfit(Misfit.Kind.PLACED_TWICE, deed.on()));
                return;
            }
            deed.act().physis().ifPresent(physis -> stories.put(implant, new ImplantStory(deed, physis)));
        }

        private Optional<ImplantStory> story(@Nullable ImplantId implant) {
            return Optional.ofNullable(implant).map(stories::get);
        }

        private static Tether arrest(Deed deed) {
            var act = deed.act();
            var side = Optional.ofNullable(act.plateSide());
            var forever = new TetherPeriod(deed.on(), Optional.empty(), Hold.HOLDS, side);
            return new Tether(
                    Optional.empty(),
                    act.kind(),
                    act.physis().orElseThrow(),
                    side,
                    act.implants(),
                    act.count(),
                    deed.elsewhere(),
                    deed.on(),
                    Optional.empty(),
                    List.of(forever),
                    List.of());
        }
    }
}
