package org.espalier.kit;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Header;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Nav;
import com.vaadin.flow.component.html.UnorderedList;
import java.time.LocalDate;
import java.util.UUID;

/** The head of every page about a child: who it is, and the way to the other pages about the same child. */
public class ChildHeader extends Composite<Header> {

    /** A page about a child. */
    public enum Page {
        COURSE,
        EXAMINATION,
        PROGNOSIS,
        PLAN,
        TREATMENT,
        VISITS,
        OPINIONS,
        IDENTITY,
        SEEN;

        private String url(UUID child) {
            return switch (this) {
                case COURSE -> Urls.course(child);
                case EXAMINATION -> Urls.examination(child);
                case PROGNOSIS -> Urls.prognosis(child);
                case PLAN -> Urls.plan(child);
                case TREATMENT -> Urls.treatment(child);
                case VISITS -> Urls.visits(child);
                case OPINIONS -> Urls.childOpinions(child);
                case IDENTITY -> Urls.editChild(child);
                case SEEN -> Urls.whoSaw(child);
            };
        }
    }

    /**
     * @param who the child as far as the reader may know
     * @param today the day ages are counted to, by the site's zone
     * @param here the page that is shown
     */
    public ChildHeader(UUID child, Who who, LocalDate today, Page here) {
        var list = new UnorderedList();
        for (var page : Page.values()) {
            var link = new Anchor(page.url(child), Texts.of(page));
            if (page == here) {
                link.getElement().setAttribute("aria-current", "page");
                IntoView.bring(link);
            }
            list.add(new ListItem(link));
        }
        var pages = new Nav(list);
        pages.addClassName("child-pages");
        pages.setAriaLabel(Texts.text("kit.child-pages"));
        getContent().addClassName("child-header");
        getContent().add(new IdentityBanner(who, today), pages);
    }
}
