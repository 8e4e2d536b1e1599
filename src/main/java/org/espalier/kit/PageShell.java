package org.espalier.kit;

import com.vaadin.flow.component.dependency.CssImport;
import com.vaadin.flow.component.dependency.NpmPackage;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.page.AppShellConfigurator;

/** The page every screen stands in: the typeface and the theme. */
@NpmPackage(value = "@fontsource-variable/source-sans-3", version = "5.3.1")
@CssImport("@fontsource-variable/source-sans-3/wght.css")
@StyleSheet("themes/espalier.css")
public class PageShell implements AppShellConfigurator {}
