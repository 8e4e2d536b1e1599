package org.espalier.film.internal.dicomweb;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.espalier.film.AsideReason;
import org.espalier.film.DoorReason;
import org.espalier.film.internal.dicom.Tag;
import org.espalier.film.internal.dicom.Vr;
import org.springframework.http.HttpStatus;

/** What became of each instance of a store request (PS3.18 section 10.5.3, annex I.2). */
final class StoreReport {

    private static final Tag RETRIEVE_URL = new Tag(0x00081190);
    private static final Tag FAILURE_REASON = new Tag(0x00081197);
    private static final Tag FAILED_SEQUENCE = new Tag(0x00081198);
    private static final Tag REFERENCED_SEQUENCE = new Tag(0x00081199);
    private static final Tag REFERENCED_CLASS = new Tag(0x00081150);
    private static final Tag REFERENCED_INSTANCE = new Tag(0x00081155);

    private static final int PROCESSING_FAILURE = 0x0110;
    private static final int DUPLICATE_INSTANCE = 0x0111;
    private static final int CLASS_NOT_SUPPORTED = 0x0122;
    private static final int OUT_OF_RESOURCES = 0xA700;
    private static final int CANNOT_UNDERSTAND = 0xC000;
    private static final int SYNTAX_NOT_SUPPORTED = 0xC122;

    private final List<DicomJson> stored = new ArrayList<>();
    private final List<DicomJson> failed = new ArrayList<>();

    void stored(Instance instance) {
        stored.add(reference(Optional.of(instance)).add(RETRIEVE_URL, Vr.UR, Addresses.instance(instance)));
    }

    void keptAside(Optional<Instance> instance, AsideReason reason) {
        failed.add(reference(instance).add(FAILURE_REASON, Vr.US, code(reason)));
    }

    void refused(DoorReason reason) {
        failed.add(reference(Optional.empty()).add(FAILURE_REASON, Vr.US, code(reason)));
    }

    private static DicomJson reference(Optional<Instance> instance) {
        return new DicomJson()
                .add(REFERENCED_CLASS, Vr.UI, instance.map(Instance::sopClass).orElse(null))
                .add(
                        REFERENCED_INSTANCE,
                        Vr.UI,
                        instance.map(Instance::sopInstance).orElse(null));
    }

    private static int code(AsideReason reason) {
        return switch (reason) {
            case SAME_NUMBER_OTHER_PICTURE -> DUPLICATE_INSTANCE;
            case NO_PICTURE, PICTURE_KIND_UNKNOWN -> CLASS_NOT_SUPPORTED;
            case ENCODING_UNKNOWN -> SYNTAX_NOT_SUPPORTED;
            case PREPARING_FAILED -> PROCESSING_FAILURE;
            case CUT_SHORT, BROKEN, UNSAFE, PICTURE_CONTRADICTS, TOO_MANY_PIXELS, PICTURE_DAMAGED, UNIDENTIFIED ->
                CANNOT_UNDERSTAND;
        };
    }

    private static int code(DoorReason reason) {
        return switch (reason) {
            case EMPTY, NOT_A_FILM, MALICIOUS -> CANNOT_UNDERSTAND;
            case TOO_LARGE, QUOTA_REACHED, DISK_FULL -> OUT_OF_RESOURCES;
            case NOT_STORED -> PROCESSING_FAILURE;
        };
    }

    /** 200 when all were stored, 202 when some were, 409 when none was. */
    HttpStatus status() {
        if (failed.isEmpty()) {
            return HttpStatus.OK;
        }
        return stored.isEmpty() ? HttpStatus.CONFLICT : HttpStatus.ACCEPTED;
    }

    Map<String, Object> body() {
        var body = new DicomJson();
        if (!stored.isEmpty()) {
            body.addItems(REFERENCED_SEQUENCE, stored);
        }
        if (!failed.isEmpty()) {
            body.addItems(FAILED_SEQUENCE, failed);
        }
        return body.attributes();
    }
}
