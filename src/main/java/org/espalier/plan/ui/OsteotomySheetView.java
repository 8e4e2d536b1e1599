package org.espalier.plan.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.Route;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import org.espalier.access.SiteService;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.plan.CutFilm;
import org.espalier.plan.CutService;
import org.espalier.plan.FibulaPlan;
import org.espalier.plan.FilmPlace;
import org.espalier.plan.Sheet;
import org.espalier.plan.SheetInputs;
import org.espalier.plan.SheetKind;
import org.espalier.plan.SheetService;
import org.espalier.science.planning.TrueFragment;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;

/** Where would a cut run, how would it turn, and what does the axis look like then? */
@Route("child/:child/plan/osteotomy")
@StyleSheet("themes/plan.css")
class OsteotomySheetView extends SheetScreen {

    private static final String CUT = "cut";

    private final transient CutService cuts;
    private final Map<String, String> kept = new LinkedHashMap<>();
    private @Nullable InputsForm form;

    OsteotomySheetView(SheetService sheets, CutService cuts, PatientService patients, SiteService sites) {
        super(SheetKind.OSTEOTOMY, sheets, patients, sites);
        this.cuts = cuts;
    }

    @Override
    Optional<Component> form(ChildId child, Side side, SheetInputs inputs) {
        kept.clear();
        inputs.text(CUT).ifPresent(place -> kept.put(CUT, place));
        form = new InputsForm(inputs, _ -> reckonAnew(child, side, typed()))
                .number("varus", -60, 60)
                .number("procurvatum", -60, 60)
                .number("torsion", -90, 90)
                .choice("fragment", TrueFragment.class)
                .number("width", 1, 120)
                .number("radius", 1, 200)
                .number("diameter", 1, 120)
                .number("below", 0, 300)
                .choice("fibula", FibulaPlan.class);
        var film = cuts.film(child, side)
                .<Component>map(found -> film(found, inputs, place -> {
                    kept.put(CUT, place);
                    reckonAnew(child, side, typed());
                }))
                .orElseGet(() -> PageParts.paragraph("empty", Texts.text("plan.film.none")));
        return Optional.of(new Div(film, form));
    }

    @Override
    void take(ChildId child, Side side, Sheet.Offered number) {
        Objects.requireNonNull(form).type(number.input(), number.value());
        reckonAnew(child, side, typed());
    }

    private static Component film(CutFilm film, SheetInputs inputs, Consumer<String> keep) {
        var start =
                FilmPlace.of(inputs).map(place -> place.request(film.side())).orElse(film.start());
        var element = new CutFilmElement(film, start);
        element.onKept(kept -> keep.accept(kept.place()));
        return element;
    }

    private Map<String, String> typed() {
        var all = new LinkedHashMap<>(Objects.requireNonNull(form).typed());
        all.putAll(kept);
        return all;
    }
}
