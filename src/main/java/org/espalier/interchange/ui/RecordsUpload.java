package org.espalier.interchange.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.component.upload.UploadI18N;
import com.vaadin.flow.server.streams.UploadEvent;
import java.io.IOException;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.Collectors;
import org.espalier.interchange.ArrivingFolder;
import org.espalier.interchange.ClinicFile;
import org.espalier.kit.Texts;

/** Takes the files of a clinic in, one by one or packed, and says which are there. */
final class RecordsUpload extends Composite<Div> {

    private final transient ArrivingFolder arriving;
    private final Runnable changed;
    private final Queue<String> refused = new ConcurrentLinkedQueue<>();
    private final Paragraph there = new Paragraph();

    RecordsUpload(ArrivingFolder arriving, Runnable changed) {
        this.arriving = arriving;
        this.changed = changed;
        there.getElement().setAttribute("aria-live", "polite");
        getContent().addClassNames("sheet", "records-upload");
        getContent().add(upload(), there);
        tell();
    }

    private Upload upload() {
        var upload = new Upload(this::receive);
        var choose = new Button(Texts.text("interchange.upload.choose"));
        choose.addClassName("choose");
        upload.setUploadButton(choose);
        upload.setDropLabel(new Span(Texts.text("interchange.upload.drop")));
        upload.setI18n(words());
        upload.addAllFinishedListener(event -> {
            tell();
            changed.run();
            upload.clearFileList();
        });
        return upload;
    }

    private void receive(UploadEvent event) {
        try {
            arriving.add(event.getFileName(), event.getInputStream());
        } catch (IOException e) {
            refused.add(event.getFileName());
        }
    }

    private void tell() {
        var tables = arriving.tables().stream().map(ClinicFile::fileName).collect(Collectors.joining(", "));
        var words = tables.isEmpty()
                ? Texts.text("interchange.upload.none")
                : Texts.text("interchange.upload.there", tables, arriving.films());
        var bad = refused.poll();
        there.setText(bad == null ? words : Texts.text("interchange.upload.refused", bad) + " " + words);
    }

    private static UploadI18N words() {
        var words = new UploadI18N();
        words.setUploading(new UploadI18N.Uploading()
                .setStatus(new UploadI18N.Uploading.Status()
                        .setConnecting(Texts.text("interchange.upload.connecting"))
                        .setStalled(Texts.text("interchange.upload.stalled"))
                        .setProcessing(Texts.text("interchange.upload.keeping"))
                        .setHeld(Texts.text("interchange.upload.held")))
                .setRemainingTime(new UploadI18N.Uploading.RemainingTime()
                        .setPrefix(Texts.text("interchange.upload.remaining"))
                        .setUnknown(Texts.text("interchange.upload.remaining.unknown")))
                .setError(new UploadI18N.Uploading.Error()
                        .setServerUnavailable(Texts.text("interchange.upload.unreachable"))
                        .setUnexpectedServerError(Texts.text("interchange.upload.unreachable"))
                        .setForbidden(Texts.text("interchange.upload.forbidden"))));
        words.setFile(new UploadI18N.File()
                .setRetry(Texts.text("interchange.upload.again"))
                .setRemove(Texts.text("interchange.upload.remove"))
                .setStart(Texts.text("interchange.upload.start")));
        words.setUnits(new UploadI18N.Units(List.of("B", "kB", "MB", "GB", "TB"), 1000));
        return words;
    }
}
