package org.espalier.followup;

import org.espalier.patient.Bone;
import org.espalier.patient.BoneEnd;
import org.espalier.science.quantity.Side;

/** A growth plate of a child by its place. */
public record GrowthPlate(Side side, Bone bone, BoneEnd end) {}
