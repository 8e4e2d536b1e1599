package org.espalier.shell;

import static java.util.Comparator.comparingInt;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.Direction;
import com.vaadin.flow.component.HasElement;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Header;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.component.html.Nav;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.AfterNavigationEvent;
import com.vaadin.flow.router.AfterNavigationObserver;
import com.vaadin.flow.router.Layout;
import com.vaadin.flow.router.NavigationTrigger;
import com.vaadin.flow.router.RouterLayout;
import com.vaadin.flow.server.menu.MenuConfiguration;
import com.vaadin.flow.server.menu.MenuEntry;
import com.vaadin.flow.spring.security.AuthenticationContext;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Site;
import org.espalier.access.SiteService;
import org.espalier.kit.IntoView;
import org.espalier.kit.Texts;

/** The frame: the house's name, the places the person may go to, who they are and where, and the way out. */
@Layout
@StyleSheet("themes/shell.css")
class MainLayout extends Composite<Div> implements RouterLayout, AfterNavigationObserver {

    private static final long serialVersionUID = 1;

    private static final Set<NavigationTrigger> GOING_ON =
            EnumSet.of(NavigationTrigger.ROUTER_LINK, NavigationTrigger.CLIENT_SIDE, NavigationTrigger.UI_NAVIGATE);

    private final Main content = new Main();
    private final List<Anchor> links = new ArrayList<>();

    MainLayout(DemoNotice notice, CurrentStaff currentStaff, SiteService sites, AuthenticationContext authentication) {
        content.setId("content");
        getContent().addClassName("house");
        getContent().add(skipLink(), notice, top(currentStaff, sites, authentication), content);
    }

    /** The page runs as the reader's language does. */
    @Override
    protected void onAttach(AttachEvent attached) {
        super.onAttach(attached);
        attached.getUI().setDirection(Texts.isRightToLeft() ? Direction.RIGHT_TO_LEFT : Direction.LEFT_TO_RIGHT);
    }

    @Override
    public void showRouterLayoutContent(HasElement view) {
        content.getElement().removeAllChildren();
        content.getElement().appendChild(view.getElement());
    }

    /** Marks the place the person is at, and begins a new screen at its top. */
    @Override
    public void afterNavigation(AfterNavigationEvent event) {
        if (GOING_ON.contains(event.getLocationChangeEvent().getTrigger())) {
            getElement().scrollIntoView();
        }
        var here = event.getLocation().getPath();
        var at = links.stream().filter(link -> isAt(here, place(link))).max(comparingInt(link -> place(link)
                .length()));
        links.forEach(link -> {
            boolean current = at.filter(link::equals).isPresent();
            link.getElement().setAttribute("aria-current", current ? "page" : "false");
            if (current) {
                IntoView.bring(link);
            }
        });
    }

    private static String place(Anchor link) {
        return link.getHref().replaceFirst("^/", "");
    }

    private static boolean isAt(String here, String place) {
        return here.equals(place) || (!place.isEmpty() && here.startsWith(place + "/"));
    }

    private static Component skipLink() {
        var skip = new Anchor("#content", Texts.text("shell.skip"));
        skip.setClassName("skip");
        skip.setRouterIgnore(true);
        return skip;
    }

    private Header top(CurrentStaff currentStaff, SiteService sites, AuthenticationContext authentication) {
        var name = new Anchor("", Texts.text("shell.house"));
        name.setClassName("house-name");
        var header = new Header(name, places(), person(currentStaff, sites, authentication));
        header.setClassName("house-top");
        return header;
    }

    private Nav places() {
        var list = new UnorderedList();
        for (var entry : MenuConfiguration.getMenuEntries()) {
            var link = link(entry);
            links.add(link);
            list.add(new ListItem(link));
        }
        var nav = new Nav(list);
        nav.setAriaLabel(Texts.text("shell.places"));
        return nav;
    }

    /** A menu entry's title is the key of its text. */
    private static Anchor link(MenuEntry entry) {
        return new Anchor(entry.path(), Texts.text(entry.title()));
    }

    private static Div person(CurrentStaff currentStaff, SiteService sites, AuthenticationContext authentication) {
        var who = new Anchor("account", currentStaff.name());
        who.setTitle(currentStaff.name());
        var where = new Span(sites.mine().stream().map(Site::name).collect(Collectors.joining(" · ")));
        where.setClassName("small");
        where.setTitle(where.getText());
        var out = new Button(Texts.text("shell.sign-out"), click -> authentication.logout());
        var person = new Div(new Div(who, where), out);
        person.setClassName("person");
        return person;
    }
}
