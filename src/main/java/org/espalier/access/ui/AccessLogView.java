package org.espalier.access.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.Text;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.Route;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.espalier.access.AccessDeed;
import org.espalier.access.AccessLine;
import org.espalier.access.AccessLogService;
import org.espalier.access.AccessReport;
import org.espalier.access.Site;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.kit.DateText;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;

/** Who saw what, the latest first; and whether the log still is what was written. */
@Route("admin/access-log")
@Menu(title = "access.menu.log", order = 95)
@StyleSheet("themes/admin.css")
class AccessLogView extends Composite<Div> implements HasDynamicTitle {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss");

    private static final Set<AccessDeed> AT_THE_DOOR = EnumSet.of(AccessDeed.SIGNED_IN, AccessDeed.SIGN_IN_FAILED);

    private final AccessLogService log;
    private final Map<SiteId, Site> sites;
    private final TextField number = new TextField(Texts.text("access.log.number"));
    private final SealNotice seals = new SealNotice();
    private final Paragraph said = new Paragraph();
    private final UnorderedList list = new UnorderedList();
    private final Div empty = new Div();
    private final Paragraph older = new Paragraph();

    AccessLogView(AccessLogService log, SiteService siteService) {
        this.log = log;
        sites = siteService.all().stream().collect(Collectors.toMap(Site::id, site -> site));
        number.setHelperText(Texts.text("access.log.number.help"));
        said.getElement().setAttribute("role", "status");
        list.addClassNames("admin-list", "log");
        empty.addClassName("empty");
        empty.setText(Texts.text("access.log.empty"));
        var question = PageParts.paragraph("question", Texts.text("access.log.question"));
        var form = new Div(
                number,
                new Button(Texts.text("access.log.find"), click -> find()),
                new Button(Texts.text("access.log.check"), click -> check()));
        form.addClassName("admin-form");
        var order = PageParts.paragraph("small", Texts.text("access.log.order"));
        getContent().addClassName("screen");
        getContent().add(new H1(Texts.text("access.log")), question, form, seals, said, order, list, older, empty);
        log.lastCheck().ifPresentOrElse(seals::show, seals::showNone);
        show(log.recent());
    }

    @Override
    public String getPageTitle() {
        return Texts.page("access.log.title");
    }

    private void find() {
        if (number.getValue().isBlank()) {
            said.setText("");
            show(log.recent());
            return;
        }
        log.ofChild(number.getValue())
                .ifPresentOrElse(
                        report -> {
                            said.setText(Texts.text(
                                    "access.log.of", number.getValue().strip()));
                            show(report);
                        },
                        () -> said.setText(Texts.text(
                                "access.log.nobody", number.getValue().strip())));
    }

    private void check() {
        seals.show(log.check());
    }

    private void show(AccessReport report) {
        list.removeAll();
        boolean several =
                report.lines().stream().map(AccessLine::site).distinct().count() > 1;
        report.lines().forEach(line -> list.add(line(line, several, report.numbers())));
        empty.setVisible(report.lines().isEmpty());
        older.setText(Texts.text("access.log.older", report.lines().size()));
        older.setVisible(!report.complete());
    }

    /** Where the lines are of several hospitals, each says which. */
    private ListItem line(AccessLine line, boolean several, Map<UUID, String> numbers) {
        var site = line.site() == null ? null : sites.get(line.site());
        var at = line.at().atZone(site == null ? (ZoneId) ZoneOffset.UTC : site.zone());
        var who = new Span(line.who() == null ? Texts.text("access.log.house") : line.who());
        who.addClassName("name");
        var what = new Span(
                AT_THE_DOOR.contains(line.deed())
                        ? Texts.of(line.deed())
                        : Texts.of(line.deed()) + ": " + line.subject());
        var item = new ListItem(new Span(DateText.of(at.toLocalDate()) + " " + CLOCK.format(at)), who, what);
        if (line.about() != null) {
            item.add(new Span(Objects.requireNonNull(line.about())));
        }
        if (!line.children().isEmpty()) {
            item.add(children(line.children(), numbers));
        }
        if (several && site != null) {
            item.add(new Span(Texts.text("access.log.at", site.name())));
        }
        item.add(new Span(Texts.text(line.sealed() ? "access.log.sealed" : "access.log.not-sealed")));
        return item;
    }

    /** Each child's number leads to who saw it. */
    private static Span children(List<UUID> children, Map<UUID, String> numbers) {
        var span = new Span(Texts.text("access.log.children"));
        children.forEach(child ->
                span.add(new Text(" "), new Anchor(Urls.whoSaw(child), numbers.getOrDefault(child, child.toString()))));
        return span;
    }
}
