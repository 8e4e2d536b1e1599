package org.espalier.demo.drawn;

import java.time.LocalDate;

/**
 * What the modality writes beside the pixels; everything in it is invented.
 *
 * @param patientId local number at the hospital
 * @param familyName of the invented child
 * @param givenName of the invented child
 * @param sex M, F or O
 * @param institution invented hospital
 * @param spacing which plane the pixel spacing speaks of
 */
public record DrawnLabel(
        String patientId,
        String familyName,
        String givenName,
        LocalDate birthDate,
        String sex,
        LocalDate takenOn,
        String institution,
        Spacing spacing) {

    /** What the file says about the size of a pixel. */
    public enum Spacing {
        /** At the detector only, as most machines write it. */
        DETECTOR,
        /** In the plane of the bones, calibrated by the ball. */
        FIDUCIAL
    }

    public DrawnLabel {
        for (String text : new String[] {patientId, familyName, givenName, institution}) {
            if (text.length() > 60 || text.matches(".*[\\\\^=\\p{Cntrl}].*")) {
                throw new IllegalArgumentException("not writable into a film's label: " + text);
            }
        }
    }

    /** Same child, same day, same picture, same UIDs; the films of a day are one study. */
    String key(String level, String title) {
        String day = String.join("|", "espalier drawn film", level, institution, patientId, takenOn.toString());
        return level.equals("study") ? day : day + "|" + title;
    }
}
