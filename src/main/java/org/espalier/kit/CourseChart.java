package org.espalier.kit;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasSize;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.JsModule;
import java.util.Map;

/** One child's angles on one time axis: age above, date below, varus up and valgus down. */
@Tag("course-chart")
@JsModule("./course-chart/course-chart.ts")
public class CourseChart extends Component implements HasSize {

    /** Draws another course. */
    public void show(CourseModel model) {
        getElement().setPropertyBean("model", model);
    }

    /** The chart's own words in the reader's language, by their names in {@code frontend/course-chart/texts.ts}. */
    public void speak(Map<String, String> texts) {
        getElement().setPropertyMap("texts", texts);
    }
}
