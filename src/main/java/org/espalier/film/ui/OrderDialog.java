package org.espalier.film.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.function.BiConsumer;
import org.espalier.film.FilmProtocol;
import org.espalier.film.FilmWish;
import org.espalier.kit.DateEntryField;
import org.espalier.kit.DateText;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.patient.AffectedSides;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;

/** Asks for a film on a day, or says that none is needed. */
final class OrderDialog extends Dialog {

    /** The two answers to whether a film is needed. */
    enum Need {
        FILM,
        NO_FILM
    }

    private final LocalDate today;
    private final BiConsumer<LocalDate, FilmWish> order;
    private final DateEntryField day;
    private final RadioButtonGroup<Need> need = new RadioButtonGroup<>(Texts.text("film.order.need"));
    private final Select<FilmProtocol> protocol = new Select<>();
    private final Select<AffectedSides> sides = new Select<>();
    private final Select<Side> liftSide = new Select<>();
    private final TextField liftHeight = new TextField(Texts.text("film.order.lift.height"));
    private final Checkbox ball = new Checkbox(Texts.text("film.order.with-ball"));
    private final TextField reason = new TextField(Texts.text("film.order.reason"));
    private final Div film = new Div();

    /**
     * @param films taken so far, so that the dose already given is before whoever asks for more
     * @param order what happens with a good order
     */
    OrderDialog(LocalDate today, long films, BiConsumer<LocalDate, FilmWish> order) {
        this.today = today;
        this.order = order;
        day = new DateEntryField(Texts.text("film.order.day"), () -> today);
        day.type(DateText.typed(today));
        setHeaderTitle(Texts.text("film.order.title"));
        setUpFields();
        var radiation = PageParts.paragraph("small", Texts.text("film.radiation", films));
        add(radiation, day, need, film, reason);
        var confirm = new Button(Texts.text("film.order.confirm"), click -> confirm());
        confirm.addThemeVariants(ButtonVariant.PRIMARY);
        getFooter().add(new Button(Texts.text("film.cancel"), click -> close()), confirm);
        addClassName("order-dialog");
    }

    private void setUpFields() {
        need.setItems(Need.values());
        need.setItemLabelGenerator(Texts::of);
        need.addValueChangeListener(change -> film.setVisible(change.getValue() == Need.FILM));
        protocol.setLabel(Texts.text("film.order.protocol"));
        protocol.setItems(FilmProtocol.values());
        protocol.setItemLabelGenerator(Texts::of);
        sides.setLabel(Texts.text("film.order.sides"));
        sides.setItems(AffectedSides.BOTH, AffectedSides.RIGHT, AffectedSides.LEFT);
        sides.setItemLabelGenerator(one -> Texts.text("film.order.sides." + one));
        liftSide.setLabel(Texts.text("film.order.lift.side"));
        liftSide.setItems(Side.values());
        liftSide.setItemLabelGenerator(
                one -> one == null ? Texts.text("film.order.no-lift") : Texts.text("film.order.foot." + one));
        liftSide.setEmptySelectionAllowed(true);
        liftSide.setEmptySelectionCaption(Texts.text("film.order.no-lift"));
        liftSide.addValueChangeListener(change -> liftHeight.setVisible(change.getValue() != null));
        liftHeight.getElement().setAttribute("inputmode", "numeric");
        liftHeight.setMaxLength(3);
        liftHeight.setVisible(false);
        reason.setMaxLength(FilmWish.REASON_LENGTH);
        reason.setWidthFull();
        film.addClassName("order-film");
        film.add(protocol, sides, liftSide, liftHeight, ball);
        film.setVisible(false);
    }

    private void confirm() {
        boolean good = good(day, day.getValue() != null && !day.getValue().isBefore(today), "film.order.day.missing")
                & goodNeed();
        if (good) {
            close();
            order.accept(java.util.Objects.requireNonNull(day.getValue()), wish());
        }
    }

    private boolean goodNeed() {
        if (need.getValue() == Need.FILM) {
            return good(protocol, !protocol.isEmpty(), "film.order.protocol.missing")
                    & good(sides, !sides.isEmpty(), "film.order.sides.missing")
                    & good(liftHeight, liftSide.isEmpty() || isHeight(), "film.order.lift.range");
        }
        return good(need, !need.isEmpty(), "film.order.need.missing")
                & good(reason, need.isEmpty() || !reason.getValue().isBlank(), "film.order.reason.missing");
    }

    private boolean isHeight() {
        var typed = liftHeight.getValue().strip();
        return typed.matches("\\d{1,3}")
                && Integer.parseInt(typed) >= 1
                && Integer.parseInt(typed) <= FilmWish.Lift.HIGHEST.millimetres();
    }

    private static boolean good(com.vaadin.flow.component.HasValidation field, boolean isGood, String problem) {
        field.setInvalid(!isGood);
        field.setErrorMessage(isGood ? "" : Texts.text(problem));
        return isGood;
    }

    private FilmWish wish() {
        return need.getValue() == Need.FILM
                ? new FilmWish.Film(sides.getValue(), protocol.getValue(), lift(), ball.getValue(), reason.getValue())
                : new FilmWish.NoFilm(reason.getValue());
    }

    private FilmWish.@Nullable Lift lift() {
        return liftSide.isEmpty()
                ? null
                : new FilmWish.Lift(
                        liftSide.getValue(),
                        Length.ofMillimetres(
                                Integer.parseInt(liftHeight.getValue().strip())));
    }
}
