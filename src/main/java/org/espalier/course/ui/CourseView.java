package org.espalier.course.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.router.Route;
import org.espalier.course.Course;
import org.espalier.course.CourseService;
import org.espalier.course.CourseSheet;
import org.espalier.kit.Address;
import org.espalier.kit.ChildHeader;
import org.espalier.kit.CourseChart;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.patient.ChildId;

/** Where does each limb stand? One child on one time axis, and the same facts as a list. */
@Route("course/:child")
@StyleSheet("themes/course-page.css")
class CourseView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private final CourseService courses;

    CourseView(CourseService courses) {
        this.courses = courses;
        getContent().addClassName("course-page");
    }

    @Override
    public String getPageTitle() {
        return Texts.page("course.title");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        var child = Address.id(event, "child").map(ChildId::new);
        show(child.flatMap(courses::open).orElseThrow(NotFoundException::new));
    }

    private void show(Course course) {
        var page = getContent();
        page.removeAll();
        var heading = new H1(Texts.text("course.title"));
        heading.addClassName("screen-reader-only");
        var child = course.child();
        page.add(heading, new ChildHeader(child.id().value(), child.who(), course.today(), ChildHeader.Page.COURSE));
        var sheet = CourseSheet.of(course);
        page.add(sheet.isEmpty() ? nothing(sheet) : chart(sheet));
        if (!sheet.isEmpty()) {
            page.add(print(child.id()));
        }
        if (!sheet.forecasts().isEmpty()) {
            page.add(forecasts(sheet));
        }
        page.add(PageParts.paragraph("radiation", sheet.radiation()));
        if (!sheet.films().isEmpty()) {
            page.add(new CourseList(sheet));
        }
        if (!sheet.events().isEmpty()) {
            page.add(events(sheet));
        }
        if (!sheet.sources().isEmpty()) {
            page.add(sources(sheet));
        }
        page.add(PageParts.caution("course.caution"));
    }

    private static Component chart(CourseSheet sheet) {
        var chart = new CourseChart();
        chart.show(sheet.chart());
        return chart;
    }

    private static Anchor print(ChildId child) {
        var print = new Anchor("api/course/" + child.value() + "/pdf", Texts.text("course.print"));
        print.setRouterIgnore(true);
        print.addClassName("print");
        return print;
    }

    private static Section forecasts(CourseSheet sheet) {
        var list = new UnorderedList();
        sheet.forecasts().forEach(forecast -> list.add(new ListItem(forecast)));
        var section = new Section(
                new H2(Texts.text("course.forecasts")),
                list,
                PageParts.paragraph("small", Texts.text("course.forecasts.caution")));
        section.addClassName("course-events");
        return section;
    }

    private static Section events(CourseSheet sheet) {
        var list = new UnorderedList();
        sheet.events().forEach(event -> list.add(new ListItem(event)));
        var section = new Section(new H2(Texts.text("course.events")), list);
        section.addClassName("course-events");
        return section;
    }

    private static Details sources(CourseSheet sheet) {
        var list = new UnorderedList();
        sheet.sources().forEach(source -> list.add(new ListItem(source)));
        return new Details(Texts.text("course.sources"), list);
    }

    private static Component nothing(CourseSheet sheet) {
        return PageParts.paragraph(
                "empty", Texts.text(sheet.films().isEmpty() ? "course.no-films" : "course.unread-yet"));
    }
}
