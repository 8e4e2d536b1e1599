package org.espalier.film;

import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;
import org.springframework.util.unit.DataSize;

/**
 * Limits at the door.
 *
 * @param largestFile the most bytes one film may have
 * @param siteQuota the most bytes all films of one site may have together
 * @param photoPixels the most pixels a photo may have
 */
@ConfigurationProperties("espalier.film")
record FilmProperties(
        @DefaultValue("256MB") DataSize largestFile,
        @DefaultValue("4TB") DataSize siteQuota,
        @DefaultValue("36000000") int photoPixels) {}
