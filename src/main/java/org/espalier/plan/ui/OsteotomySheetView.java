package org.espalier.plan.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.router.Route;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.espalier.access.SiteService;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.plan.CutFilm;
import org.espalier.plan.CutService;
import org.espalier.plan.FibulaPlan;
import org.espalier.plan.FilmPlace;
import org.espalier.plan.SheetInputs;
import org.espalier.plan.SheetKind;
import org.espalier.plan.SheetService;
import org.espalier.science.planning.TrueFragment;
import org.espalier.science.quantity.Side;

/** Where would a cut run, how would it turn, and what does the axis look like then? */
@Route("child/:child/plan/osteotomy")
@StyleSheet("themes/plan.css")
class OsteotomySheetView extends SheetScreen {

    private static final String CUT = "cut";

    private final transient CutService cuts;

    OsteotomySheetView(SheetService sheets, CutService cuts, PatientService patients, SiteService sites) {
        super(SheetKind.OSTEOTOMY, sheets, patients, sites);
        this.cuts = cuts;
    }

    @Override
    Optional<Component> form(ChildId child, Side side, SheetInputs inputs) {
        var kept = new LinkedHashMap<String, String>();
        inputs.text(CUT).ifPresent(place -> kept.put(CUT, place));
        var form = new InputsForm(inputs, typed -> reckonAnew(child, side, with(typed, kept)))
                .number("varus", -60, 60)
                .number("procurvatum", -60, 60)
                .number("torsion", -90, 90)
                .choice("fragment", TrueFragment.class)
                .number("width", 1, 120)
                .number("diameter", 1, 120)
                .number("below", 0, 300)
                .choice("fibula", FibulaPlan.class);
        var film = cuts.film(child, side);
        return Optional.of(film.<Component>map(found -> new Div(
                        film(found, inputs, place -> {
                            kept.put(CUT, place);
                            reckonAnew(child, side, with(form.typed(), kept));
                        }),
                        form))
                .orElseGet(() -> new Div(Parts.paragraph("empty", Texts.text("plan.film.none")), form)));
    }

    private static Section film(CutFilm film, SheetInputs inputs, java.util.function.Consumer<String> keep) {
        var start =
                FilmPlace.of(inputs).map(place -> place.request(film.side())).orElse(film.start());
        var element = new CutFilmElement(film.film(), start);
        element.onKept(kept -> keep.accept(kept.place()));
        return new Section(new H2(Texts.text("plan.film.heading", DateText.of(film.takenOn()))), element);
    }

    private static Map<String, String> with(Map<String, String> typed, Map<String, String> kept) {
        var all = new LinkedHashMap<>(typed);
        all.putAll(kept);
        return all;
    }
}
