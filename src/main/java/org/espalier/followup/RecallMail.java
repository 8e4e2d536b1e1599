package org.espalier.followup;

import java.util.Map;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.springframework.mail.SimpleMailMessage;
import org.springframework.mail.javamail.JavaMailSender;
import org.springframework.transaction.support.TransactionTemplate;

/** Each morning a word to a hospital's staff how many wait on the recall. It names nobody. */
class RecallMail {

    private static final String PURPOSE = "recall-mail";

    private final JavaMailSender sender;
    private final String from;
    private final JdbcRecallRepository recall;
    private final JdbcLetterheadRepository letterheads;
    private final JdbcVisitNightRepository nights;
    private final SiteService sites;
    private final TransactionTemplate transactions;

    RecallMail(
            JavaMailSender sender,
            String from,
            JdbcRecallRepository recall,
            JdbcLetterheadRepository letterheads,
            JdbcVisitNightRepository nights,
            SiteService sites,
            TransactionTemplate transactions) {
        this.sender = sender;
        this.from = from;
        this.recall = recall;
        this.letterheads = letterheads;
        this.nights = nights;
        this.sites = sites;
        this.transactions = transactions;
    }

    void run() {
        nights.sites().forEach(site -> Callers.runAs(new Caller.SystemAtSite(site.value(), PURPOSE), () -> send(site)));
    }

    /** Sends the site's word, where somebody wrote down to whom and anybody waits. */
    private void send(SiteId site) {
        transactions.executeWithoutResult(status -> letterheads.staffMail(site).ifPresent(to -> {
            var today = sites.today(site);
            long waiting = recall.count(Map.of(site, today));
            if (waiting > 0) {
                sender.send(message(to, sites.get(site).name(), waiting, DateText.inWords(today)));
            }
        }));
    }

    private SimpleMailMessage message(String to, String hospital, long waiting, String day) {
        var message = new SimpleMailMessage();
        message.setFrom(from);
        message.setTo(to);
        message.setSubject(Texts.text("followup.mail.subject", waiting));
        message.setText(Texts.text("followup.mail.text", hospital, waiting, day));
        return message;
    }
}
