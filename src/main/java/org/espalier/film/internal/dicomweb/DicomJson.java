package org.espalier.film.internal.dicomweb;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.espalier.film.internal.dicom.DataSet;
import org.espalier.film.internal.dicom.Element;
import org.espalier.film.internal.dicom.Tag;
import org.espalier.film.internal.dicom.Vr;
import org.jspecify.annotations.Nullable;

/** A data set as the DICOM JSON Model (PS3.18 annex F) writes it: attributes by tag, in order. */
final class DicomJson {

    private static final List<String> NAME_GROUPS = List.of("Alphabetic", "Ideographic", "Phonetic");
    private static final DateTimeFormatter DATE = DateTimeFormatter.BASIC_ISO_DATE;

    private final Map<String, Object> attributes = new TreeMap<>();

    /** The attributes to be written. */
    Map<String, Object> attributes() {
        return attributes;
    }

    /** Adds values; an attribute without any is written empty. */
    DicomJson add(Tag tag, Vr vr, Collection<?> values) {
        var attribute = new LinkedHashMap<String, Object>();
        attribute.put("vr", vr.name());
        if (!values.isEmpty()) {
            attribute.put("Value", List.copyOf(values));
        }
        attributes.put(tag.toHex(), attribute);
        return this;
    }

    DicomJson add(Tag tag, Vr vr, @Nullable Object value) {
        return add(tag, vr, value == null ? List.of() : List.of(value));
    }

    DicomJson addName(Tag tag, @Nullable String name) {
        return add(tag, Vr.PN, name == null ? null : name(name));
    }

    DicomJson addDate(Tag tag, @Nullable LocalDate date) {
        return add(tag, Vr.DA, date == null ? null : DATE.format(date));
    }

    DicomJson addItems(Tag tag, List<DicomJson> items) {
        return add(tag, Vr.SQ, items.stream().map(DicomJson::attributes).toList());
    }

    /** The whole data set but for bytes in bulk, above all the pixels. */
    static DicomJson of(DataSet dataSet) {
        var json = new DicomJson();
        for (Element element : dataSet) {
            switch (element.value()) {
                case Element.Items(List<DataSet> items) ->
                    json.addItems(
                            element.tag(), items.stream().map(DicomJson::of).toList());
                case Element.Bytes bytes -> json.addValues(dataSet, element);
                case Element.Fragments pixels -> {}
            }
        }
        return json;
    }

    private void addValues(DataSet dataSet, Element element) {
        var tag = element.tag();
        switch (element.vr()) {
            case PN ->
                add(
                        tag,
                        Vr.PN,
                        dataSet.strings(tag).stream().map(DicomJson::name).toList());
            case IS, US, SS, UL, SL -> add(tag, element.vr(), dataSet.integers(tag));
            case DS, FL, FD -> add(tag, element.vr(), dataSet.decimals(tag));
            case OB, OD, OF, OL, OV, OW, UN, SQ, SV, UV -> {}
            default -> add(tag, element.vr(), withoutBlanks(dataSet.strings(tag)));
        }
    }

    /** An empty value among others is null (annex F.2.5). */
    private static List<Object> withoutBlanks(List<String> texts) {
        return texts.stream().allMatch(String::isEmpty) ? List.of() : new ArrayList<>(texts);
    }

    private static Map<String, String> name(String text) {
        var groups = new LinkedHashMap<String, String>();
        var parts = text.split("=", NAME_GROUPS.size());
        for (int i = 0; i < parts.length; i++) {
            if (!parts[i].isEmpty()) {
                groups.put(NAME_GROUPS.get(i), parts[i]);
            }
        }
        return groups;
    }
}
