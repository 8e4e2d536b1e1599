package org.espalier.interchange.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.DetachEvent;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.Route;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.List;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.Site;
import org.espalier.access.SiteService;
import org.espalier.interchange.ArrivingFolder;
import org.espalier.interchange.BroughtIn;
import org.espalier.interchange.ImportReport;
import org.espalier.interchange.ImportService;
import org.espalier.interchange.Portion;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;

/** Brings a clinic's own records in: first what it would do, with every bad row explained, then for good. */
@Route(Urls.BRING_IN)
@Menu(title = "interchange.menu", order = 80)
@StyleSheet("themes/interchange.css")
class BringInView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private final ImportService records;
    private final SiteService siteService;
    private final CurrentStaff currentStaff;
    private final transient ArrivingFolder arriving = openFolder();
    private final Select<Site> hospital = new Select<>();
    private final Checkbox partial = new Checkbox(Texts.text("interchange.partial"));
    private final Paragraph said = new Paragraph();
    private final ReportTables report = new ReportTables();
    private final OrderedList before = new OrderedList();
    private final Button preview = new Button(Texts.text("interchange.preview"), click -> preview());
    private final Button take = new Button(Texts.text("interchange.take"), click -> take());

    BringInView(ImportService records, SiteService siteService, CurrentStaff currentStaff) {
        this.records = records;
        this.siteService = siteService;
        this.currentStaff = currentStaff;
        hospital.setLabel(Texts.text("interchange.hospital"));
        hospital.setItemLabelGenerator(Site::name);
        hospital.addValueChangeListener(change -> forget());
        said.getElement().setAttribute("role", "status");
        before.addClassName("before");
        preview.addThemeVariants(ButtonVariant.PRIMARY);
        partial.addValueChangeListener(change -> take.setEnabled(false));
        var actions = new Div(preview, take);
        actions.addClassName("actions");
        getContent().addClassNames("screen", "bring-in");
        getContent()
                .add(
                        new H1(Texts.text("interchange.title")),
                        new Paragraph(Texts.text("interchange.what")),
                        new Paragraph(Texts.text("interchange.caution")),
                        hospital,
                        new RecordsUpload(arriving, this::forget),
                        partial,
                        actions,
                        said,
                        report,
                        new H2(Texts.text("interchange.before")),
                        before);
        forget();
    }

    private static ArrivingFolder openFolder() {
        try {
            return ArrivingFolder.open();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        var mine = siteService.mine().stream()
                .filter(site -> currentStaff.has(Role.SURGEON, site.id()) || currentStaff.has(Role.NURSE, site.id()))
                .toList();
        hospital.setItems(mine);
        hospital.setValue(mine.getFirst());
        hospital.setVisible(mine.size() > 1);
        showBefore();
    }

    @Override
    protected void onDetach(DetachEvent detached) {
        try {
            arriving.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public String getPageTitle() {
        return Texts.page("interchange.page");
    }

    /** What was shown was of other files, or of another hospital. */
    private void forget() {
        report.clear();
        said.setText("");
        take.setEnabled(false);
        preview.setEnabled(!arriving.tables().isEmpty());
    }

    private void preview() {
        var found = records.preview(hospital.getValue().id(), arriving.folder());
        report.show(found);
        boolean takes = found.bringsSomething() && (found.isGood() || partial.getValue());
        take.setEnabled(takes);
        said.setText(Texts.text(previewed(found, takes), found.problems().size()));
    }

    private static String previewed(ImportReport found, boolean takes) {
        if (!found.bringsSomething() && found.isGood()) {
            return "interchange.previewed.nothing";
        }
        if (found.isGood()) {
            return "interchange.previewed.good";
        }
        return takes ? "interchange.previewed.part" : "interchange.previewed.bad";
    }

    private void take() {
        var portion = partial.getValue() ? Portion.GOOD_ROWS : Portion.ALL;
        var found = records.take(hospital.getValue().id(), arriving.folder(), portion);
        report.show(found);
        take.setEnabled(false);
        said.setText(Texts.text(
                found.taken() ? "interchange.taken" : "interchange.not-taken",
                found.problems().size()));
        showBefore();
    }

    private void showBefore() {
        List<BroughtIn> all = records.before(hospital.getValue().id());
        before.removeAll();
        all.forEach(one -> before.add(item(one)));
        if (all.isEmpty()) {
            before.add(new ListItem(Texts.text("interchange.before.none")));
        }
    }

    private ListItem item(BroughtIn one) {
        var day = new Span(
                DateText.of(LocalDate.ofInstant(one.at(), hospital.getValue().zone())));
        day.addClassName("day");
        var by = new Span(one.by().orElseGet(() -> Texts.text("interchange.before.command")));
        return new ListItem(day, by, new Span(one.counts()));
    }
}
