package org.espalier.film.internal.dicomweb;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A received film as an archive names it. What it does not say of itself is null. */
record Instance(
        UUID film,
        @Nullable UUID child,
        @Nullable String sopClass,
        String sopInstance,
        String study,
        String series,
        @Nullable String transferSyntax,
        @Nullable String modality,
        @Nullable LocalDate studyDate,
        @Nullable Integer rows,
        @Nullable Integer columns,
        @Nullable String patientName,
        @Nullable String patientId,
        @Nullable LocalDate birthDate,
        @Nullable String sex,
        @Nullable String accessionNumber,
        @Nullable String studyDescription,
        @Nullable String seriesDescription) {}
