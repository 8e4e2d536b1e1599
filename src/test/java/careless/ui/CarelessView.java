package careless.ui;

import com.vaadin.flow.component.Html;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.Route;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Breaks the rules of screens: anybody may use it, it asks the database itself and makes markup of what it gets. */
@Route("careless")
public class CarelessView extends Div {

    private static final long serialVersionUID = 1;

    public CarelessView(JdbcClient jdbc) {
        add(new Html(jdbc.sql("select name from child").query(String.class).single()));
    }
}
