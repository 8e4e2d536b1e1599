package org.espalier.reading;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Page;
import java.util.List;

/**
 * Marks on a film lie where the bone is, and ticks on a time axis where the day is, so both may lie close together and
 * be smaller than a finger. The table of landmarks and the list of films beside them do the same with controls of full
 * size, as WCAG 2.2, 2.5.8 asks then. Everything else must pass.
 */
public final class SmallMarks {

    private static final String TOO_SMALL = "target-size";

    private SmallMarks() {}

    /** Fails on whatever the rules WCAG 2.2 A and AA find on the screen besides the size of marks and ticks. */
    public static void assertAccessibleBesides(Page page) {
        var found = new AxeBuilder(page)
                .withTags(List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"))
                .analyze();
        assertThat(found.getViolations().stream()
                        .flatMap(rule -> rule.getNodes().stream()
                                .map(node -> node.getHtml())
                                .filter(html -> !isSmallMark(rule, html))
                                .map(html -> rule.getId() + ": " + html))
                        .toList())
                .isEmpty();
    }

    private static boolean isSmallMark(Rule rule, String html) {
        return rule.getId().equals(TOO_SMALL)
                && (html.startsWith("<button class=\"mark ") || html.startsWith("<a class=\"tick"));
    }
}
