package org.espalier.followup;

import java.util.Map;
import java.util.Optional;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;

/** Each morning a word to a hospital's staff how many wait on the recall. It names nobody. */
class RecallMail {

    private static final String PURPOSE = "recall-mail";

    private final StaffMail mail;
    private final JdbcRecallRepository recall;
    private final SiteService sites;

    RecallMail(StaffMail mail, JdbcRecallRepository recall, SiteService sites) {
        this.mail = mail;
        this.recall = recall;
        this.sites = sites;
    }

    void run() {
        mail.toEach(PURPOSE, this::word);
    }

    private Optional<StaffMail.Word> word(SiteId site) {
        var today = sites.today(site);
        long waiting = recall.count(Map.of(site, today));
        return waiting == 0
                ? Optional.empty()
                : Optional.of(new StaffMail.Word(
                        Texts.text("followup.mail.subject", waiting),
                        Texts.text("followup.mail.text", sites.get(site).name(), waiting, DateText.inWords(today))));
    }
}
