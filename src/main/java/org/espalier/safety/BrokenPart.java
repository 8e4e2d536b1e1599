package org.espalier.safety;

import org.espalier.treatment.ImplantFinding;

/**
 * Something that was found broken.
 *
 * @param product what was put in, as far as it is known
 * @param lots the lot, or the lots it may be of; of what the stock does not know, that it is not known
 * @param reported whether there is a report of it
 */
public record BrokenPart(ImplantFinding finding, String product, String lots, boolean reported) {}
