package org.espalier.film.internal.dicomweb;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.espalier.film.FilmId;
import org.espalier.film.FilmImages;
import org.espalier.film.internal.dicom.DicomFile;
import org.espalier.film.internal.dicom.DicomReader;
import org.espalier.film.internal.dicom.Limits;
import org.espalier.film.internal.dicom.ReadResult;
import org.espalier.platform.Blobs;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** The films of the archive's site by their UIDs; each one that is handed out is written down as looked at. */
@Component
class StoredFilms {

    private final InstanceRepository instances;
    private final FilmImages images;
    private final Blobs blobs;
    private final ArchiveSite site;

    StoredFilms(InstanceRepository instances, FilmImages images, Blobs blobs, ArchiveSite site) {
        this.instances = instances;
        this.images = images;
        this.blobs = blobs;
        this.site = site;
    }

    /** The films of a study, of one series of it, or one instance; null asks for all. */
    List<StoredFilm> of(String study, @Nullable String series, @Nullable String instance) {
        var keys = new HashMap<String, String>();
        keys.put("StudyInstanceUID", study);
        if (series != null) {
            keys.put("SeriesInstanceUID", series);
        }
        if (instance != null) {
            keys.put("SOPInstanceUID", instance);
        }
        var query = new Query(Map.copyOf(keys), Query.LARGEST_PAGE, 0, List.of());
        return instances.instances(site.get(), query).stream()
                .flatMap(found ->
                        images.open(new FilmId(found.film())).map(open -> new StoredFilm(found, open)).stream())
                .toList();
    }

    /** The tags of a film as it was received. */
    DicomJson tags(StoredFilm film) {
        var file = blobs.path(film.open().film().bytes());
        return switch (DicomReader.read(file, Limits.STANDARD)) {
            case ReadResult.Read(DicomFile dicom) -> DicomJson.of(dicom.dataSet());
            case ReadResult.Refused refused ->
                throw new IllegalStateException("a film that was read is refused: " + refused.reason());
        };
    }
}
