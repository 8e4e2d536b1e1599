package org.espalier.prognosis;

import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;

/**
 * The forecasts of a child were made anew, as its facts or the centre's rates changed. Told in the transaction that
 * keeps them.
 */
public record ForecastsRenewed(ChildId child, SiteId site) {}
