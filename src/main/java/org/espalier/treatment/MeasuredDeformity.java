package org.espalier.treatment;

import java.time.LocalDate;
import org.espalier.science.quantity.Angle;

/**
 * Which way a physis is bent by its latest signed reading.
 *
 * @param angle as read: mLDFA, mMPTA or LDTA
 * @param filmOn the day of the film
 */
public record MeasuredDeformity(Deformity deformity, Angle angle, LocalDate filmOn) {}
