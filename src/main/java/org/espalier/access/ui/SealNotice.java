package org.espalier.access.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Paragraph;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import org.espalier.access.SealCheck;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.jspecify.annotations.Nullable;

/** What the last check of the seals found, and when. */
final class SealNotice extends Composite<Paragraph> {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss");

    SealNotice() {
        getContent().addClassName("notice");
        getContent().getElement().setAttribute("role", "status");
    }

    void showNone() {
        getContent().setText(Texts.text("access.log.unchecked"));
    }

    void show(SealCheck check) {
        var broken = check.broken();
        getContent().setClassName("harm", broken != null);
        getContent()
                .setText(
                        broken == null
                                ? Texts.text("access.log.whole", check.seals(), time(check.at()))
                                : Texts.text(
                                        "access.log.broken",
                                        broken.seal(),
                                        broken.rowsThen(),
                                        broken.rowsNow(),
                                        time(broken.from()),
                                        time(broken.until()),
                                        time(check.at())));
    }

    private static String time(@Nullable Instant at) {
        if (at == null) {
            return Texts.text("access.log.no-time");
        }
        var there = at.atZone(ZoneOffset.UTC);
        return Texts.text("access.log.utc", DateText.of(there.toLocalDate()), CLOCK.format(there));
    }
}
