package org.espalier.prognosis.ui;

import com.vaadin.flow.component.html.DescriptionList;

/** Facts with their names before them. */
class FactList extends DescriptionList {

    FactList() {
        addClassName("prognosis-facts");
    }

    FactList with(String name, String value) {
        add(new Term(name), new Description(value));
        return this;
    }
}
