package org.espalier.opinion.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.DescriptionList;
import com.vaadin.flow.component.html.DescriptionList.Description;
import com.vaadin.flow.component.html.DescriptionList.Term;
import org.espalier.opinion.FactSheet;

/** The lines of a fact, each name with its value. */
class SheetLines extends Composite<DescriptionList> {

    SheetLines(FactSheet sheet) {
        getContent().addClassName("sheet-lines");
        sheet.lines().forEach(line -> getContent().add(new Term(line.name()), new Description(line.value())));
    }
}
