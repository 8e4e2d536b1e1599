package org.espalier.kit;

import com.vaadin.flow.component.dependency.CssImport;
import com.vaadin.flow.component.dependency.JsModule;
import com.vaadin.flow.component.dependency.NpmPackage;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.page.AppShellConfigurator;

/** The page every screen stands in: the typeface and the theme. */
@NpmPackage(value = "@fontsource-variable/source-sans-3", version = "5.3.1")
@NpmPackage(value = "openseadragon", version = "6.1.1")
@JsModule("./film-room/film-room.ts")
@CssImport("@fontsource-variable/source-sans-3/wght.css")
@StyleSheet("themes/espalier.css")
public class PageShell implements AppShellConfigurator {}
