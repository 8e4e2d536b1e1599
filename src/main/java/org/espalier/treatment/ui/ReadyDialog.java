package org.espalier.treatment.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.NumberField;
import com.vaadin.flow.component.textfield.TextField;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.espalier.kit.DateEntryField;
import org.espalier.kit.DateText;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.science.quantity.Length;
import org.espalier.stock.Need;
import org.espalier.stock.ProductKind;
import org.espalier.stock.Reservation;
import org.espalier.treatment.StandingPlan;
import org.espalier.treatment.Treatment;
import org.jspecify.annotations.Nullable;

/**
 * Keeps ready what a planned operation needs: a range of sizes, a driver, a set for broken screws. Nothing is ticked
 * before.
 */
final class ReadyDialog extends Dialog {

    private static final int MOST_PIECES = 40;
    private static final int DRIVER_LENGTH = 60;

    private final transient Desk desk;
    private final transient Treatment treatment;
    private final transient StandingPlan plan;
    private final DateEntryField on;
    private final IntegerField plates = count("treatment.ready.plates");
    private final IntegerField screws = count("treatment.ready.screws");
    private final NumberField shortest = new NumberField(Texts.text("treatment.ready.shortest"));
    private final NumberField longest = new NumberField(Texts.text("treatment.ready.longest"));
    private final TextField driver = Choices.text("treatment.ready.driver", DRIVER_LENGTH);
    private final Checkbox rescue = new Checkbox(Texts.text("treatment.ready.rescue"));
    private final Div problem = new Div();
    private final transient UUID id;

    ReadyDialog(StandingPlan plan, Desk desk, Treatment treatment, Runnable done) {
        this.desk = desk;
        this.treatment = treatment;
        this.plan = plan;
        id = desk.ids().next();
        addClassName("fact-dialog");
        setHeaderTitle(Texts.text("treatment.ready"));
        on = new DateEntryField(Texts.text("treatment.ready.on"), treatment::today);
        on.setErrorMessage(Texts.text("treatment.ready.on.missing"));
        Optional.ofNullable(plan.plan().theatreOn()).map(DateText::of).ifPresent(on::type);
        longest.setErrorMessage(Texts.text("treatment.ready.range"));
        boolean placing = plan.plan().kind().takesPieces();
        Stream.<Component>of(plates, screws, shortest, longest).forEach(field -> field.setVisible(placing));
        var fields = new Div(on, plates, screws, shortest, longest, driver, rescue);
        fields.addClassName("form-fields");
        problem.getElement().setAttribute("role", "alert");
        add(new Paragraph(Texts.text("treatment.ready.help")), fields, problem);
        if (plan.plan().kind().bringsPiecesOut()) {
            rememberDriver();
        }
        var save = new Button(Texts.text("treatment.ready.save"), click -> save(done));
        save.addThemeVariants(ButtonVariant.PRIMARY);
        getFooter().add(new Button(Texts.text("treatment.cancel"), click -> close()), save);
    }

    /**
     * What is to come out tells its driver when its pieces are known; of what was placed elsewhere nobody here knows
     * it.
     */
    private void rememberDriver() {
        var tether = treatment.tethersIn().stream()
                .filter(one -> plan.plan().physis().filter(one.physis()::equals).isPresent())
                .findFirst();
        tether.flatMap(one -> one.implant()).stream()
                .flatMap(implant -> treatment.pieces().of(implant).stream())
                .flatMap(one -> Optional.ofNullable(one.piece().product()).stream())
                .flatMap(product -> desk.catalogue().product(product).stream())
                .flatMap(product -> Optional.ofNullable(product.data().driver()).stream())
                .findFirst()
                .ifPresent(driver::setValue);
        tether.filter(one -> driver.isEmpty())
                .ifPresent(one -> driver.setHelperText(Texts.text(
                        one.elsewhere() ? "treatment.ready.driver-elsewhere" : "treatment.ready.driver-unknown",
                        DateText.of(one.from()))));
    }

    private void save(Runnable done) {
        var day = on.getValue();
        on.setInvalid(day == null || day.isBefore(treatment.today()));
        longest.setInvalid(!isRange());
        var needs = longest.isInvalid() ? List.<Need>of() : needs();
        problem.removeAll();
        if (needs.isEmpty()) {
            problem.add(PageParts.paragraph("harm", Texts.text("treatment.ready.nothing")));
        }
        if (day != null && !on.isInvalid() && !needs.isEmpty()) {
            desk.reservations()
                    .reserve(new Reservation(id, treatment.site(), plan.first().value(), day, needs));
            close();
            done.run();
        }
    }

    private boolean isRange() {
        var from = shortest.getValue();
        var to = longest.getValue();
        return from == null && to == null || from != null && to != null && from > 0 && from <= to;
    }

    private List<Need> needs() {
        var needs = new ArrayList<Need>();
        if (given(plates) > 0) {
            needs.add(new Need(ProductKind.PLATE, null, null, null, null, null, given(plates)));
        }
        if (given(screws) > 0) {
            needs.add(new Need(ProductKind.SCREW, null, null, length(shortest), length(longest), null, given(screws)));
        }
        if (!driver.getValue().isBlank()) {
            var turns = driver.getValue().strip();
            needs.add(new Need(ProductKind.INSTRUMENT, null, null, null, null, turns, 1));
        }
        if (rescue.getValue()) {
            needs.add(new Need(ProductKind.RESCUE_SET, null, null, null, null, null, 1));
        }
        return needs;
    }

    private static int given(IntegerField field) {
        return field.getValue() == null ? 0 : Math.clamp(field.getValue(), 0, MOST_PIECES);
    }

    private static @Nullable Length length(NumberField field) {
        return field.getValue() == null ? null : Length.ofMillimetres(field.getValue());
    }

    private static IntegerField count(String label) {
        var field = new IntegerField(Texts.text(label));
        field.setMin(0);
        field.setMax(MOST_PIECES);
        return field;
    }
}
