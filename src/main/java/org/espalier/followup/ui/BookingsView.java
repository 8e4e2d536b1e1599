package org.espalier.followup.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import java.util.List;
import org.espalier.access.Site;
import org.espalier.followup.BookingLine;
import org.espalier.followup.BookingService;
import org.espalier.kit.DateText;
import org.espalier.kit.IdentityBanner;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;

/** Takes the day's file of the hospital's booking system: first what it would do, row by row, then for good. */
@Route(Urls.BOOKINGS)
@StyleSheet("themes/patient.css")
@StyleSheet("themes/followup.css")
class BookingsView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private final BookingService bookings;
    private final CareSites sites;
    private final Select<Site> hospital = new Select<>();
    private final TextArea file = new TextArea(Texts.text("followup.bookings.file"));
    private final Paragraph said = new Paragraph();
    private final OrderedList lines = new OrderedList();
    private final Button take = new Button(Texts.text("followup.bookings.take"));

    BookingsView(BookingService bookings, CareSites sites) {
        this.bookings = bookings;
        this.sites = sites;
        hospital.setLabel(Texts.text("followup.bookings.hospital"));
        hospital.setItemLabelGenerator(Site::name);
        file.setHelperText(Texts.text("followup.bookings.file.help"));
        file.setWidthFull();
        file.setMinRows(6);
        file.setMaxRows(14);
        file.addValueChangeListener(change -> take.setEnabled(false));
        said.getElement().setAttribute("role", "status");
        lines.addClassNames("steps", "bookings");
        take.setEnabled(false);
        take.addClickListener(click -> {
            show(bookings.take(hospital.getValue().id(), file.getValue()), "followup.bookings.taken");
            take.setEnabled(false);
        });
        var upload = new BookingUpload(text -> {
            file.setValue(text);
            preview();
        });
        getContent().addClassName("screen");
        getContent().add(new H1(Texts.text("followup.bookings")), hospital, upload, file, actions(), said, lines);
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        hospital.setItems(sites.all());
        hospital.setValue(sites.all().getFirst());
        hospital.setVisible(sites.all().size() > 1);
    }

    @Override
    public String getPageTitle() {
        return Texts.page("followup.bookings.title");
    }

    private Div actions() {
        var preview = new Button(Texts.text("followup.bookings.preview"), click -> preview());
        preview.addThemeVariants(ButtonVariant.PRIMARY);
        var actions = new Div(preview, take);
        actions.addClassName("actions");
        return actions;
    }

    private void preview() {
        var found = bookings.preview(hospital.getValue().id(), file.getValue());
        show(found, "followup.bookings.previewed");
        take.setEnabled(found.stream().anyMatch(line -> line.effect() != BookingLine.Effect.NOT_TAKEN));
    }

    private void show(List<BookingLine> found, String key) {
        long refused = found.stream()
                .filter(line -> line.effect() == BookingLine.Effect.NOT_TAKEN)
                .count();
        said.setText(Texts.text(key, found.size() - refused, refused));
        lines.removeAll();
        found.forEach(line -> lines.add(item(line)));
    }

    private static ListItem item(BookingLine line) {
        var where = new Span(Texts.text("followup.bookings.line", line.line(), line.number()));
        where.addClassName("day");
        var what = new Span(Texts.of(line.effect()));
        what.addClassName(line.problem().isPresent() ? "harm" : "what");
        var more = new Span(line.problem()
                .map(Texts::of)
                .or(() -> line.on().map(DateText::of))
                .orElse(""));
        return new ListItem(where, new Span(who(line)), what, more);
    }

    private static String who(BookingLine line) {
        return line.child()
                .map(child -> child.data()
                        .map(data -> Texts.text(
                                "followup.bookings.child",
                                IdentityBanner.name(child.who()),
                                DateText.of(data.birthDate())))
                        .orElseGet(() -> IdentityBanner.name(child.who())))
                .orElseGet(() -> Texts.text("followup.bookings.nobody"));
    }
}
