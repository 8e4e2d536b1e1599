package org.espalier.kit;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import java.time.LocalDate;
import java.util.Locale;
import org.espalier.science.quantity.Sex;
import org.jspecify.annotations.Nullable;

/** Says in the same place on every page which child it is about. What is not known says so. */
@Tag("section")
public class IdentityBanner extends Composite<Section> {

    /**
     * @param who the child as far as the reader may know
     * @param today the day ages are counted to, by the site's zone
     */
    public IdentityBanner(Who who, LocalDate today) {
        getContent().addClassName("identity-banner");
        getContent().getElement().setAttribute("aria-label", Texts.text("kit.banner"));
        switch (who) {
            case Who.Named named -> fill(named, today);
            case Who.Initialled initialled -> fill(initialled, today);
        }
    }

    /** The name as the banner writes it: family name in capitals, then the given name. */
    public static String name(Who who) {
        return switch (who) {
            case Who.Named named ->
                named.familyName().toUpperCase(Locale.ROOT) + ", "
                        + (named.givenName() == null ? Texts.text("kit.not-known") : named.givenName());
            case Who.Initialled initialled -> initialled.initials();
        };
    }

    private void fill(Who.Named who, LocalDate today) {
        addName(who);
        add(Texts.text("kit.born"), DateText.born(who.birthDate(), today));
        addSex(who.sex());
        add(Texts.text("kit.number"), who.localNumber() == null ? Texts.text("kit.not-known") : who.localNumber());
    }

    private void fill(Who.Initialled who, LocalDate today) {
        addName(who);
        add(Texts.text("kit.age"), DateText.of(who.ageOn(today)));
        addSex(who.sex());
    }

    private void addName(Who who) {
        var name = new Span(name(who));
        name.addClassName("name");
        getContent().add(name);
    }

    private void addSex(@Nullable Sex sex) {
        add(Texts.text("kit.sex"), sex == null ? Texts.text("kit.not-known") : Texts.of(sex));
    }

    private void add(String label, String value) {
        var quiet = new Span(label);
        quiet.addClassName("label");
        var loud = new Span(value);
        loud.addClassName("value");
        getContent().add(new Span(quiet, loud));
    }
}
