package org.espalier;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.espalier.Browser.Screen;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A test before the screen of a desk and before that of a phone. What is touched on a tablet has tests of its own. */
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.RUNTIME)
@ParameterizedTest
@EnumSource(
        value = Screen.class,
        names = {"DESKTOP", "PHONE"})
public @interface OnEachScreen {}
