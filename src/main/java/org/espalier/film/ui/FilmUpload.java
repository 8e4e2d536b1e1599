package org.espalier.film.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.component.upload.UploadI18N;
import com.vaadin.flow.server.streams.UploadEvent;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.espalier.access.SiteId;
import org.espalier.film.FilmService;
import org.espalier.film.Received;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;

/**
 * Takes files in, many at once, each with its progress, and says of each what became of it. A file may be sent again
 * without harm. The bytes go straight from the request to the door; no session is locked meanwhile.
 */
final class FilmUpload extends Composite<Div> {

    private final FilmService films;
    private final SiteId site;
    private final Runnable changed;
    private final Queue<Outcome> outcomes = new ConcurrentLinkedQueue<>();
    private final UnorderedList said = new UnorderedList();

    /** A file and what became of it. */
    private record Outcome(String file, Received received) {}

    FilmUpload(FilmService films, SiteId site, Runnable changed) {
        this.films = films;
        this.site = site;
        this.changed = changed;
        said.addClassName("upload-results");
        said.getElement().setAttribute("aria-live", "polite");
        var safely = PageParts.paragraph("small", Texts.text("film.upload.safely"));
        getContent().addClassNames("sheet", "film-upload");
        getContent().add(upload(), safely, said);
    }

    private Upload upload() {
        var upload = new Upload(this::receive);
        var choose = new Button(Texts.text("film.upload.choose"));
        choose.addClassName("choose");
        upload.setUploadButton(choose);
        upload.setDropLabel(new Span(Texts.text("film.upload.drop")));
        upload.setI18n(words());
        upload.addAllFinishedListener(event -> {
            tell();
            upload.clearFileList();
        });
        return upload;
    }

    private void receive(UploadEvent event) {
        outcomes.add(
                new Outcome(event.getFileName(), films.receive(site, event.getInputStream(), event.getFileName())));
    }

    private void tell() {
        for (var outcome = outcomes.poll(); outcome != null; outcome = outcomes.poll()) {
            said.add(line(outcome));
        }
        changed.run();
    }

    private ListItem line(Outcome outcome) {
        var file = new Span(outcome.file());
        file.addClassName("file");
        var became = new Span(words(outcome.received()));
        became.addClassName(
                switch (outcome.received()) {
                    case Received.Taken taken -> "well";
                    case Received.AlreadyHere known -> "well";
                    case Received.KeptAside aside -> "soon";
                    case Received.Refused refused -> "harm";
                });
        return new ListItem(file, became);
    }

    private String words(Received received) {
        return switch (received) {
            case Received.Taken taken ->
                films.find(taken.film()).flatMap(film -> film.child()).isPresent()
                        ? Texts.text("film.upload.matched")
                        : Texts.text("film.upload.waits");
            case Received.AlreadyHere known -> Texts.text("film.upload.known");
            case Received.KeptAside aside -> Texts.text("film.upload.aside", Texts.of(aside.reason()));
            case Received.Refused refused -> Texts.of(refused.reason());
        };
    }

    /** The words of every upload. */
    static UploadI18N words() {
        var words = new UploadI18N();
        words.setUploading(new UploadI18N.Uploading()
                .setStatus(new UploadI18N.Uploading.Status()
                        .setConnecting(Texts.text("film.upload.connecting"))
                        .setStalled(Texts.text("film.upload.stalled"))
                        .setProcessing(Texts.text("film.upload.keeping"))
                        .setHeld(Texts.text("film.upload.held")))
                .setRemainingTime(new UploadI18N.Uploading.RemainingTime()
                        .setPrefix(Texts.text("film.upload.remaining"))
                        .setUnknown(Texts.text("film.upload.remaining.unknown")))
                .setError(new UploadI18N.Uploading.Error()
                        .setServerUnavailable(Texts.text("film.upload.unreachable"))
                        .setUnexpectedServerError(Texts.text("film.upload.unreachable"))
                        .setForbidden(Texts.text("film.upload.forbidden"))));
        words.setFile(new UploadI18N.File()
                .setRetry(Texts.text("film.upload.again"))
                .setRemove(Texts.text("film.upload.remove"))
                .setStart(Texts.text("film.upload.start")));
        words.setUnits(new UploadI18N.Units(List.of("B", "kB", "MB", "GB", "TB"), 1000));
        return words;
    }
}
