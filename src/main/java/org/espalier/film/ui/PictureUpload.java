package org.espalier.film.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.server.streams.UploadEvent;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.espalier.film.Consent;
import org.espalier.film.PictureKind;
import org.espalier.film.PictureReceived;
import org.espalier.film.PictureService;
import org.espalier.kit.DateEntryField;
import org.espalier.kit.DateText;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.patient.ChildId;

/**
 * Takes photos and clips in, once it is said of which day they are and who agreed. The bytes go straight from the
 * request to the door; no session is locked meanwhile.
 */
final class PictureUpload extends Composite<Div> {

    /** What is said of the pictures before any is sent. */
    private record Terms(LocalDate takenOn, Consent consent) {}

    private final PictureService pictures;
    private final ChildId child;
    private final LocalDate today;
    private final Runnable changed;
    private final DateEntryField takenOn;
    private final Select<Consent.By> consent = new Select<>();
    private final Upload upload = new Upload(this::receive);
    private final Div said = new Div();
    private final Queue<PictureReceived> outcomes = new ConcurrentLinkedQueue<>();
    private volatile Optional<Terms> terms = Optional.empty();

    PictureUpload(PictureService pictures, ChildId child, LocalDate today, Runnable changed) {
        this.pictures = pictures;
        this.child = child;
        this.today = today;
        this.changed = changed;
        takenOn = new DateEntryField(Texts.text("film.picture.day"), () -> today);
        takenOn.type(DateText.typed(today));
        takenOn.addValueChangeListener(change -> settleTerms());
        consent.setLabel(Texts.text("film.picture.consent"));
        consent.setItems(Consent.By.values());
        consent.setItemLabelGenerator(Texts::of);
        consent.addValueChangeListener(change -> settleTerms());
        setUpUpload();
        said.getElement().setAttribute("aria-live", "polite");
        var limits = PageParts.paragraph("small", Texts.text("film.picture.limits"));
        var fields = new Div(takenOn, consent);
        fields.addClassName("form-fields");
        getContent().addClassName("picture-upload");
        getContent().add(fields, upload, limits, said);
        settleTerms();
    }

    private void setUpUpload() {
        var choose = new Button(Texts.text("film.picture.choose"));
        upload.setUploadButton(choose);
        upload.setDropAllowed(false);
        upload.setI18n(FilmUpload.words());
        upload.setAcceptedMimeTypes(
                Arrays.stream(PictureKind.values()).map(PictureKind::mediaType).toArray(String[]::new));
        upload.addAllFinishedListener(event -> {
            tell();
            upload.clearFileList();
        });
    }

    private void settleTerms() {
        var day = takenOn.getValue();
        boolean complete = day != null && !day.isAfter(today) && !consent.isEmpty();
        terms = complete ? Optional.of(new Terms(day, new Consent(consent.getValue(), today))) : Optional.empty();
        upload.setVisible(complete);
    }

    private void receive(UploadEvent event) {
        var given = terms.orElseThrow();
        outcomes.add(pictures.receive(child, event.getInputStream(), given.takenOn(), given.consent()));
    }

    private void tell() {
        said.removeAll();
        for (var outcome = outcomes.poll(); outcome != null; outcome = outcomes.poll()) {
            said.add(notice(outcome));
        }
        changed.run();
    }

    private static Paragraph notice(PictureReceived outcome) {
        var notice =
                switch (outcome) {
                    case PictureReceived.Kept kept -> new Paragraph(Texts.text("film.picture.kept"));
                    case PictureReceived.Refused(var problem) -> new Paragraph(Texts.of(problem));
                };
        notice.addClassName("notice");
        if (outcome instanceof PictureReceived.Refused) {
            notice.addClassName("harm");
        }
        return notice;
    }
}
