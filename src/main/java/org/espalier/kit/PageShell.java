package org.espalier.kit;

import com.vaadin.flow.component.dependency.CssImport;
import com.vaadin.flow.component.dependency.NpmPackage;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.page.AppShellConfigurator;
import com.vaadin.flow.server.AppShellSettings;

/** The page every screen stands in: the typeface, the theme and the mark of the house. */
@NpmPackage(value = "@fontsource-variable/source-sans-3", version = "5.3.1")
@CssImport("@fontsource-variable/source-sans-3/wght.css")
@StyleSheet("themes/espalier.css")
public class PageShell implements AppShellConfigurator {

    @Override
    public void configurePage(AppShellSettings settings) {
        settings.addFavIcon("icon", "assets/espalier.svg", "any");
    }
}
