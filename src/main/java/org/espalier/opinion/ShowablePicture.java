package org.espalier.opinion;

import org.espalier.film.ClinicalPicture;
import org.jspecify.annotations.Nullable;

/** A photo or clip that can be shown, and how many months after the child's first film it was taken. */
public record ShowablePicture(
        ClinicalPicture picture, @Nullable Integer months) {}
