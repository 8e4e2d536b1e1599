package org.espalier.shell;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.ErrorParameter;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.HasErrorParameter;
import com.vaadin.flow.router.NotFoundException;
import jakarta.servlet.http.HttpServletResponse;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;

/** There is no such page, or it is not the reader's: which of the two is not told, and where to go is. */
@StyleSheet("themes/patient.css")
class NoSuchPlaceView extends Composite<Div> implements HasErrorParameter<NotFoundException>, HasDynamicTitle {

    private static final long serialVersionUID = 1;

    NoSuchPlaceView() {
        var way = new Anchor(Urls.TODAY, Texts.text("shell.no-such-place.way"));
        way.setClassName("act");
        getContent().addClassNames("screen", "narrow");
        getContent()
                .add(
                        new H1(Texts.text("shell.no-such-place")),
                        new Paragraph(Texts.text("shell.no-such-place.say")),
                        way);
    }

    @Override
    public int setErrorParameter(BeforeEnterEvent event, ErrorParameter<NotFoundException> none) {
        return HttpServletResponse.SC_NOT_FOUND;
    }

    @Override
    public String getPageTitle() {
        return Texts.page("shell.no-such-place");
    }
}
