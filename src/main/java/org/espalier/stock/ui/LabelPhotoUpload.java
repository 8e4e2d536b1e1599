package org.espalier.stock.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.component.upload.UploadI18N;
import com.vaadin.flow.server.streams.UploadEvent;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Consumer;
import org.espalier.kit.Texts;
import org.espalier.stock.Label;
import org.espalier.stock.LabelService;
import org.espalier.stock.code.LabelPhoto;

/**
 * A photo of a label by the camera of a phone, or from a file; it is looked at while it arrives, with no session
 * locked, and not kept.
 */
final class LabelPhotoUpload extends Composite<Div> {

    private final transient LabelService labels;
    private final transient Consumer<Label> read;
    private final Upload upload = new Upload(this::look);
    private final transient Queue<Optional<List<String>>> seen = new ConcurrentLinkedQueue<>();

    LabelPhotoUpload(LabelService labels, Consumer<Label> read) {
        this.labels = labels;
        this.read = read;
        upload.setUploadButton(new Button(Texts.text("stock.photo")));
        upload.setDropAllowed(false);
        upload.setAcceptedMimeTypes("image/jpeg", "image/png");
        upload.getElement().setAttribute("capture", "environment");
        upload.setI18n(words());
        upload.addAllFinishedListener(event -> {
            tell();
            upload.clearFileList();
        });
        getContent().addClassName("label-photo");
        getContent().add(upload);
    }

    private void look(UploadEvent event) {
        try (var file = event.getInputStream()) {
            seen.add(LabelPhoto.codes(file.readNBytes(LabelPhoto.MAXIMUM_BYTES + 1)));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private void tell() {
        for (var codes = seen.poll(); codes != null; codes = seen.poll()) {
            read.accept(codes.map(labels::readTogether).orElseGet(LabelPhotoUpload::unread));
        }
    }

    private static Label unread() {
        var problem = Optional.of(Texts.text("stock.photo.no-picture"));
        return new Label(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), problem);
    }

    private static UploadI18N words() {
        return new UploadI18N()
                .setUploading(new UploadI18N.Uploading()
                        .setStatus(new UploadI18N.Uploading.Status()
                                .setConnecting(Texts.text("stock.photo.sending"))
                                .setStalled(Texts.text("stock.photo.sending"))
                                .setProcessing(Texts.text("stock.photo.looking"))
                                .setHeld(Texts.text("stock.photo.sending")))
                        .setRemainingTime(new UploadI18N.Uploading.RemainingTime()
                                .setPrefix("")
                                .setUnknown(""))
                        .setError(new UploadI18N.Uploading.Error()
                                .setServerUnavailable(Texts.text("stock.photo.unreachable"))
                                .setUnexpectedServerError(Texts.text("stock.photo.unreachable"))
                                .setForbidden(Texts.text("stock.photo.unreachable"))))
                .setError(new UploadI18N.Error().setIncorrectFileType(Texts.text("stock.photo.no-picture")))
                .setFile(new UploadI18N.File()
                        .setRetry(Texts.text("stock.photo.again"))
                        .setRemove(Texts.text("stock.photo.remove"))
                        .setStart(Texts.text("stock.photo.again")))
                .setUnits(new UploadI18N.Units(List.of("B", "kB", "MB", "GB", "TB"), 1000));
    }
}
