package org.espalier.opinion;

import java.time.Clock;
import java.util.Optional;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.followup.StaffMail;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.springframework.stereotype.Component;

/** How many opinions are wanted of a hospital's staff, due, and new, in a word that names nobody and no question. */
@Component
class OpinionReminder {

    private static final int DAYS_AHEAD = 3;

    private final JdbcReminderRepository reminders;
    private final SiteService sites;
    private final Clock clock;

    OpinionReminder(JdbcReminderRepository reminders, SiteService sites, Clock clock) {
        this.reminders = reminders;
        this.sites = sites;
        this.clock = clock;
    }

    /** Empty when there is nothing to say. */
    Optional<StaffMail.Word> word(SiteId site) {
        var until = sites.today(site).plusDays(DAYS_AHEAD);
        var counts = reminders.at(site, clock.instant(), until);
        return counts.isNothing()
                ? Optional.empty()
                : Optional.of(new StaffMail.Word(
                        Texts.text("opinion.mail.subject", counts.wanted(), counts.due(), counts.unread()),
                        Texts.text(
                                "opinion.mail.text",
                                sites.get(site).name(),
                                counts.wanted(),
                                counts.due(),
                                DateText.inWords(until),
                                counts.unread(),
                                counts.outcomes())));
    }
}
