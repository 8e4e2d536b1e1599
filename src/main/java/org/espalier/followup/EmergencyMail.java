package org.espalier.followup;

import com.github.kagkarlsson.scheduler.task.TaskDescriptor;
import java.util.UUID;
import org.espalier.access.EmergencyTaken;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.kit.Texts;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.espalier.platform.Jobs;
import org.springframework.context.event.EventListener;
import org.springframework.mail.SimpleMailMessage;
import org.springframework.mail.javamail.JavaMailSender;
import org.springframework.transaction.support.TransactionTemplate;

/** A word to a hospital's staff at once when a child of theirs was opened in an emergency. It names nobody. */
class EmergencyMail {

    static final TaskDescriptor<String> TASK = TaskDescriptor.of("emergency-mail", String.class);

    private final JavaMailSender sender;
    private final String from;
    private final JdbcLetterheadRepository letterheads;
    private final SiteService sites;
    private final TransactionTemplate transactions;
    private final Jobs jobs;

    EmergencyMail(
            JavaMailSender sender,
            String from,
            JdbcLetterheadRepository letterheads,
            SiteService sites,
            TransactionTemplate transactions,
            Jobs jobs) {
        this.sender = sender;
        this.from = from;
        this.letterheads = letterheads;
        this.sites = sites;
        this.transactions = transactions;
        this.jobs = jobs;
    }

    /** The job stands exactly when the access does; the mail goes when both are committed. */
    @EventListener
    void on(EmergencyTaken taken) {
        jobs.ask(TASK, taken.site().value().toString());
    }

    void send(String siteOfChild) {
        var site = new SiteId(UUID.fromString(siteOfChild));
        Callers.runAs(
                new Caller.SystemAtSite(site.value(), TASK.getTaskName()),
                () -> transactions.executeWithoutResult(status -> letterheads
                        .staffMail(site)
                        .ifPresent(to -> sender.send(message(to, sites.get(site).name())))));
    }

    private SimpleMailMessage message(String to, String hospital) {
        var message = new SimpleMailMessage();
        message.setFrom(from);
        message.setTo(to);
        message.setSubject(Texts.text("followup.emergency.subject"));
        message.setText(Texts.text("followup.emergency.text", hospital));
        return message;
    }
}
