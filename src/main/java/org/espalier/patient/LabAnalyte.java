package org.espalier.patient;

import java.util.Arrays;
import java.util.List;

/** What a laboratory measured, with the units it is reported in. */
public enum LabAnalyte {
    /** 25-hydroxyvitamin D in serum. */
    VITAMIN_D(LabUnit.NMOL_PER_L, LabUnit.NG_PER_ML),
    ALKALINE_PHOSPHATASE(LabUnit.U_PER_L, LabUnit.UKAT_PER_L),
    /** Inorganic phosphate in serum. */
    PHOSPHATE(LabUnit.MMOL_PER_L, LabUnit.MG_PER_DL),
    PARATHYROID_HORMONE(LabUnit.PMOL_PER_L, LabUnit.PG_PER_ML, LabUnit.NG_PER_L);

    private final List<LabUnit> units;

    LabAnalyte(LabUnit... units) {
        this.units = List.copyOf(Arrays.asList(units));
    }

    public List<LabUnit> units() {
        return units;
    }
}
