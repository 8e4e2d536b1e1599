package org.espalier.film;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.espalier.film.internal.dicom.DataSet;
import org.espalier.film.internal.dicom.DicomFile;
import org.espalier.film.internal.dicom.DicomReader;
import org.espalier.film.internal.dicom.Limits;
import org.espalier.film.internal.dicom.ReadResult;
import org.espalier.film.internal.dicom.SpacingReading;
import org.espalier.film.internal.dicom.Tag;
import org.jspecify.annotations.Nullable;

/** Reads what a kept file says about itself, or why it cannot be read. */
final class FilmInspector {

    private static final int LONGEST_TEXT = 200;
    private static final Pattern UID = Pattern.compile("[0-9]+(\\.[0-9]+)*");
    private static final int LONGEST_UID = 64;

    private FilmInspector() {}

    /** What was found; the reason is present when the film is to be kept aside. */
    record Findings(FilmTags tags, Optional<Aside> aside) {}

    /** Why, and a detail for whoever looks after the sending machine. */
    record Aside(AsideReason reason, String detail) {}

    static Findings inspect(FilmKind kind, Path file, FilmProperties limits) {
        return switch (kind) {
            case DICOM -> ofDicom(file);
            case PHOTO -> ofPhoto(file, limits);
        };
    }

    private static Findings ofDicom(Path file) {
        return switch (DicomReader.read(file, Limits.STANDARD)) {
            case ReadResult.Read(DicomFile dicom) -> new Findings(tags(dicom), shortcoming(dicom.dataSet()));
            case ReadResult.Refused(var refusal, String detail) ->
                new Findings(FilmTags.NONE, Optional.of(new Aside(Refusals.reason(refusal), cleaned(detail))));
        };
    }

    private static Findings ofPhoto(Path file, FilmProperties limits) {
        var aside = Photos.shortcoming(file, limits.photoPixels());
        return new Findings(FilmTags.ofPhoto(Photos.takenOn(file).orElse(null)), aside);
    }

    private static Optional<Aside> shortcoming(DataSet dataSet) {
        if (uid(dataSet, Tag.SOP_INSTANCE_UID) == null
                || uid(dataSet, Tag.STUDY_INSTANCE_UID) == null
                || uid(dataSet, Tag.SERIES_INSTANCE_UID) == null) {
            return Optional.of(
                    new Aside(AsideReason.UNIDENTIFIED, "instance, study or series UID is missing or no UID"));
        }
        return dataSet.element(Tag.PIXEL_DATA).isEmpty()
                ? Optional.of(new Aside(AsideReason.NO_PICTURE, "no pixel data"))
                : Optional.empty();
    }

    private static FilmTags tags(DicomFile file) {
        var dataSet = file.dataSet();
        return new FilmTags(
                file.meta()
                        .string(Tag.TRANSFER_SYNTAX_UID)
                        .map(FilmInspector::cleaned)
                        .orElse(null),
                uid(dataSet, Tag.SOP_CLASS_UID),
                uid(dataSet, Tag.SOP_INSTANCE_UID),
                uid(dataSet, Tag.STUDY_INSTANCE_UID),
                uid(dataSet, Tag.SERIES_INSTANCE_UID),
                text(dataSet, Tag.MODALITY),
                firstText(dataSet, Tag.VIEW_POSITION, Tag.SERIES_DESCRIPTION, Tag.BODY_PART_EXAMINED),
                dataSet.date(Tag.STUDY_DATE).orElse(null),
                takenOn(dataSet).orElse(null),
                FilmScale.of(SpacingReading.of(dataSet)),
                label(dataSet));
    }

    private static FilmLabel label(DataSet dataSet) {
        return new FilmLabel(
                text(dataSet, Tag.PATIENT_NAME),
                text(dataSet, Tag.PATIENT_ID),
                dataSet.date(Tag.PATIENT_BIRTH_DATE).orElse(null),
                text(dataSet, Tag.PATIENT_SEX),
                text(dataSet, Tag.ACCESSION_NUMBER),
                text(dataSet, Tag.STUDY_DESCRIPTION),
                text(dataSet, Tag.SERIES_DESCRIPTION));
    }

    /** The day of the exposure; the day of the study where the film does not say. */
    private static Optional<LocalDate> takenOn(DataSet dataSet) {
        return Stream.of(Tag.ACQUISITION_DATE, Tag.CONTENT_DATE, Tag.STUDY_DATE)
                .flatMap(tag -> dataSet.date(tag).stream())
                .findFirst();
    }

    private static @Nullable String uid(DataSet dataSet, Tag tag) {
        return dataSet.string(tag)
                .filter(uid -> uid.length() <= LONGEST_UID && UID.matcher(uid).matches())
                .orElse(null);
    }

    private static @Nullable String firstText(DataSet dataSet, Tag... tags) {
        return Stream.of(tags)
                .map(tag -> text(dataSet, tag))
                .filter(text -> text != null)
                .findFirst()
                .orElse(null);
    }

    private static @Nullable String text(DataSet dataSet, Tag tag) {
        return dataSet.string(tag)
                .map(FilmInspector::cleaned)
                .filter(text -> !text.isEmpty())
                .orElse(null);
    }

    /** Without control characters, and no longer than anybody reads. */
    static String cleaned(String text) {
        var plain = text.replaceAll("[\\p{Cntrl}\\p{Co}\\p{Cs}]+", " ").strip();
        return plain.codePointCount(0, plain.length()) <= LONGEST_TEXT
                ? plain
                : plain.substring(0, plain.offsetByCodePoints(0, LONGEST_TEXT));
    }
}
