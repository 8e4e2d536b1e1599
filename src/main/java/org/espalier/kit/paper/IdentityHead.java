package org.espalier.kit.paper;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.kit.DateText;
import org.espalier.kit.IdentityBanner;
import org.espalier.kit.Texts;
import org.espalier.kit.Who;

/** Says at the head of a page which child it is about. What is not known says so. */
public final class IdentityHead {

    private IdentityHead() {}

    /**
     * Begins the page with it.
     *
     * @param today the day ages are counted to, by the site's zone
     */
    public static void begin(Markup page, Who who, LocalDate today) {
        var head = page.block(IdentityBanner.name(who))
                .with("font-size", "13pt")
                .with("font-weight", "600")
                .with("border-bottom", "0.5pt solid " + Ink.RULE)
                .with("padding-bottom", "1.5mm");
        facts(who, today).forEach(fact -> head.fo("inline")
                .with("font-size", "9pt")
                .with("font-weight", "400")
                .text("\u2003" + fact));
    }

    private static Stream<String> facts(Who who, LocalDate today) {
        return switch (who) {
            case Who.Named named ->
                Stream.of(
                        Texts.text("kit.born") + " " + DateText.born(named.birthDate(), today),
                        Texts.text("kit.sex") + " "
                                + known(Optional.ofNullable(named.sex()).map(Texts::of)),
                        Texts.text("kit.number") + " " + known(Optional.ofNullable(named.localNumber())));
            case Who.Initialled initialled ->
                Stream.of(Texts.text("kit.age") + " " + DateText.of(initialled.ageOn(today)));
        };
    }

    private static String known(Optional<String> fact) {
        return fact.orElseGet(() -> Texts.text("kit.not-known"));
    }
}
