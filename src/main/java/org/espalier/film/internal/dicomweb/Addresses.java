package org.espalier.film.internal.dicomweb;

import org.springframework.web.servlet.support.ServletUriComponentsBuilder;

/** The addresses under which an archive fetches what it found or sent. */
final class Addresses {

    private static final String ROOT = "/dicom-web";

    private Addresses() {}

    static String study(String study) {
        return ServletUriComponentsBuilder.fromCurrentContextPath()
                .path(ROOT + "/studies/")
                .path(study)
                .toUriString();
    }

    static String series(String study, String series) {
        return study(study) + "/series/" + series;
    }

    static String instance(Instance instance) {
        return series(instance.study(), instance.series()) + "/instances/" + instance.sopInstance();
    }
}
