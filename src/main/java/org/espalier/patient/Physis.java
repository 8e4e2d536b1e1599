package org.espalier.patient;

import org.espalier.science.quantity.Side;

/** A growth plate: what is followed, tethered and released. */
public record Physis(PhysisId id, LimbId limb, Side side, Bone bone, BoneEnd end) {}
