package org.espalier.shell;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.spring.annotation.SpringComponent;
import org.espalier.kit.Texts;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.beans.factory.config.ConfigurableBeanFactory;
import org.springframework.context.annotation.Scope;

/** Says on every page of a demonstration that nobody in it is real; not to be seen otherwise. */
@SpringComponent
@Scope(ConfigurableBeanFactory.SCOPE_PROTOTYPE)
class DemoNotice extends Composite<Div> {

    private static final long serialVersionUID = 1;

    DemoNotice(@Value("${espalier.demo:false}") boolean isDemo) {
        getContent().setClassName("demo-banner");
        getContent().setText(Texts.text("shell.demo"));
        setVisible(isDemo);
    }
}
