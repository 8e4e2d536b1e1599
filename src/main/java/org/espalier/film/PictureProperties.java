package org.espalier.film;

import java.time.Duration;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;
import org.springframework.util.unit.DataSize;

/**
 * Limits of photos and clips.
 *
 * @param largestFile the most bytes a photo or clip may have
 * @param longestClip how long a clip may last
 * @param photoPixels the most pixels a photo may have
 */
@ConfigurationProperties("espalier.picture")
record PictureProperties(
        @DefaultValue("64MB") DataSize largestFile,
        @DefaultValue("30s") Duration longestClip,
        @DefaultValue("36000000") int photoPixels) {}
