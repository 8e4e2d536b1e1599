package org.espalier.kit;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasSize;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.JsModule;

/** One child's angles on one time axis: age above, date below, varus up and valgus down. */
@Tag("course-chart")
@JsModule("./course-chart/course-chart.ts")
public class CourseChart extends Component implements HasSize {

    public CourseChart() {
        getElement().setPropertyMap("texts", Texts.under("kit.chart."));
    }

    /** Draws another course. */
    public void show(CourseModel model) {
        getElement().setPropertyBean("model", model);
    }
}
