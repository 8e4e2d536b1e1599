package org.espalier.film.internal.dicomweb;

import org.springframework.http.MediaType;

/** Media types of DICOM (PS3.18 section 8.7). */
final class DicomTypes {

    static final MediaType DICOM = MediaType.parseMediaType("application/dicom");
    static final MediaType JSON = MediaType.parseMediaType("application/dicom+json");
    static final MediaType MULTIPART_RELATED = MediaType.parseMediaType("multipart/related");

    private DicomTypes() {}
}
