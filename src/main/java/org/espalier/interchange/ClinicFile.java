package org.espalier.interchange;

import java.util.List;

/** The files of a clinic's records, in the order in which they are taken: a later one rests on those before it. */
public enum ClinicFile {
    CHILDREN("children", "local_number", "family_name", "given_name", "birth_date", "sex"),
    EXAMINATIONS("examinations", "local_number", "date", "kind", "entry", "item", "side", "value"),
    FILMS("films", "film", "local_number", "taken_on", "file", "side", "physis"),
    STOCK(
            "stock",
            "shelf",
            "shelf_kind",
            "owner",
            "back_by",
            "reference",
            "product_kind",
            "product",
            "diameter_mm",
            "core_mm",
            "length_mm",
            "build",
            "material",
            "driver",
            "magnet",
            "traced",
            "sterile",
            "lot",
            "expires",
            "pieces"),
    PLANS(
            "plans",
            "local_number",
            "date",
            "kind",
            "side",
            "bone",
            "end",
            "plate_side",
            "deformity",
            "implants",
            "intent",
            "expectation",
            "asked_on",
            "theatre_on",
            "past_target_deg"),
    IMPLANTS("implants", "local_number", "implant", "description", "pieces"),
    PROCEDURES(
            "procedures",
            "local_number",
            "procedure",
            "date",
            "elsewhere",
            "surgeon",
            "note",
            "next_date",
            "next_why",
            "theatre_minutes",
            "anaesthesia_minutes",
            "kind",
            "side",
            "bone",
            "end",
            "plate_side",
            "implant",
            "description",
            "pieces",
            "lots",
            "fate",
            "answers"),
    TARGETS("targets", "local_number", "date", "side", "bone", "end", "degrees", "because"),
    CLOSURES("closures", "local_number", "date", "side", "bone", "end", "reader", "retained_told_on", "remove_by"),
    COMPLICATIONS("complications", "local_number", "date", "kind", "grade", "side", "note"),
    READINGS(
            "readings",
            "local_number",
            "film",
            "reading",
            "reader",
            "started_at",
            "signed_at",
            "second_of",
            "item",
            "side",
            "x_px",
            "y_px",
            "value"),
    VISITS("visits", "local_number", "state", "date", "time", "booking", "reason", "note", "asked_by", "asked_why"),
    CARE("care", "local_number", "date", "side", "step", "reason", "note"),
    FAMILIES(
            "families",
            "local_number",
            "language",
            "interpreter",
            "transport",
            "school",
            "do_not_contact",
            "safeguarding_lead"),
    PHONES("phones", "local_number", "number", "owner", "language");

    private final String fileName;
    private final List<String> columns;

    ClinicFile(String name, String... columns) {
        fileName = name + ".csv";
        this.columns = List.of(columns);
    }

    public String fileName() {
        return fileName;
    }

    public List<String> columns() {
        return columns;
    }
}
