package org.espalier.followup.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.component.upload.UploadI18N;
import com.vaadin.flow.server.streams.UploadEvent;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Consumer;
import org.espalier.kit.Texts;

/** The day's file of the booking system, chosen or dropped; its content goes into the page and is not kept. */
final class BookingUpload extends Composite<Div> {

    private static final int MAXIMUM_BYTES = 2_000_000;

    private final transient Queue<String> arrived = new ConcurrentLinkedQueue<>();

    BookingUpload(Consumer<String> read) {
        var upload = new Upload(this::receive);
        upload.setUploadButton(new Button(Texts.text("followup.bookings.choose")));
        upload.setDropLabel(new Span(Texts.text("followup.bookings.drop")));
        upload.setMaxFiles(1);
        upload.setMaxFileSize(MAXIMUM_BYTES);
        upload.setI18n(words());
        upload.addAllFinishedListener(event -> {
            for (var text = arrived.poll(); text != null; text = arrived.poll()) {
                read.accept(text);
            }
            upload.clearFileList();
        });
        getContent().addClassName("booking-upload");
        getContent().add(upload);
    }

    private void receive(UploadEvent event) {
        try (var file = event.getInputStream()) {
            arrived.add(new String(file.readNBytes(MAXIMUM_BYTES), StandardCharsets.UTF_8));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static UploadI18N words() {
        var sending = Texts.text("followup.bookings.sending");
        var unreachable = Texts.text("followup.bookings.unreachable");
        return new UploadI18N()
                .setUploading(new UploadI18N.Uploading()
                        .setStatus(new UploadI18N.Uploading.Status()
                                .setConnecting(sending)
                                .setStalled(sending)
                                .setProcessing(sending)
                                .setHeld(sending))
                        .setRemainingTime(new UploadI18N.Uploading.RemainingTime()
                                .setPrefix("")
                                .setUnknown(""))
                        .setError(new UploadI18N.Uploading.Error()
                                .setServerUnavailable(unreachable)
                                .setUnexpectedServerError(unreachable)
                                .setForbidden(unreachable)))
                .setError(new UploadI18N.Error()
                        .setFileIsTooBig(Texts.text("followup.bookings.too-large"))
                        .setTooManyFiles(Texts.text("followup.bookings.one-file")))
                .setFile(new UploadI18N.File()
                        .setRetry(Texts.text("followup.bookings.again"))
                        .setRemove(Texts.text("followup.bookings.remove"))
                        .setStart(Texts.text("followup.bookings.again")));
    }
}
