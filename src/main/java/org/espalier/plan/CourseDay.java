package org.espalier.plan;

import java.time.LocalDate;
import org.espalier.prognosis.AngleSpread;

/** How bony HKA, mLDFA less mMPTA, + varus, is spread on a day. */
public record CourseDay(LocalDate day, AngleSpread bonyHka) {}
