package org.espalier.followup;

import java.util.Optional;
import java.util.function.Function;
import org.espalier.access.SiteId;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.mail.SimpleMailMessage;
import org.springframework.mail.javamail.JavaMailSender;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * A word to the staff of a hospital, where somebody wrote down to whom. There is one only where a mail server is named.
 * Mail is read by anybody on its way: a word names nobody, and what it is about is to be looked up in the house.
 */
public class StaffMail {

    private static final Logger LOG = LoggerFactory.getLogger(StaffMail.class);

    private final JavaMailSender sender;
    private final String from;
    private final JdbcLetterheadRepository letterheads;
    private final JdbcVisitNightRepository nights;
    private final TransactionTemplate transactions;

    StaffMail(
            JavaMailSender sender,
            String from,
            JdbcLetterheadRepository letterheads,
            JdbcVisitNightRepository nights,
            TransactionTemplate transactions) {
        this.sender = sender;
        this.from = from;
        this.letterheads = letterheads;
        this.nights = nights;
        this.transactions = transactions;
    }

    /** What is said. */
    public record Word(String subject, String text) {}

    /**
     * Says to every hospital with an address what there is to say. One whose mail fails is told to the house and holds
     * up no other.
     *
     * @param purpose what for, as the access log knows it
     * @param words asked as the house itself at that hospital, in one transaction; empty says nothing
     */
    public void toEach(String purpose, Function<SiteId, Optional<Word>> words) {
        nights.sites().forEach(site -> {
            try {
                Callers.runAs(
                        new Caller.SystemAtSite(site.value(), purpose),
                        () -> transactions.executeWithoutResult(
                                status -> letterheads.staffMail(site).ifPresent(to -> words.apply(site)
                                        .ifPresent(word -> send(to, word)))));
            } catch (RuntimeException e) {
                LOG.error("No mail for {} went to site {}", purpose, site.value(), e);
            }
        });
    }

    private void send(String to, Word word) {
        var message = new SimpleMailMessage();
        message.setFrom(from);
        message.setTo(to);
        message.setSubject(word.subject());
        message.setText(word.text());
        sender.send(message);
    }
}
