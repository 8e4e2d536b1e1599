package org.espalier.film.internal.dicomweb;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.espalier.film.internal.dicom.Tag;
import org.jspecify.annotations.Nullable;

/**
 * What a search asks for (PS3.18 section 8.3.4): the keys it matches on, and the page.
 *
 * @param keys by keyword; a missing key matches everything
 * @param limit the most answers
 * @param offset answers passed over
 * @param ignored parameters that are not searched by here
 */
record Query(Map<String, String> keys, int limit, int offset, List<String> ignored) {

    static final int PAGE = 200;
    static final int LARGEST_PAGE = 1000;

    private static final List<String> SEARCHABLE = List.of(
            "StudyInstanceUID",
            "SeriesInstanceUID",
            "SOPInstanceUID",
            "SOPClassUID",
            "StudyDate",
            "AccessionNumber",
            "PatientID",
            "PatientName",
            "PatientBirthDate",
            "Modality",
            "ModalitiesInStudy");

    private static final List<String> ABOUT_THE_ANSWER = List.of("includefield", "fuzzymatching", "limit", "offset");

    private static final DateTimeFormatter DATE = DateTimeFormatter.BASIC_ISO_DATE;

    /**
     * Reads the parameters of a search.
     *
     * @throws IllegalArgumentException if a number or a date is none
     */
    static Query of(Map<String, String[]> parameters) {
        var keys = new HashMap<String, String>();
        var ignored = new ArrayList<String>();
        parameters.forEach((name, values) -> {
            var keyword = keyword(name);
            if (SEARCHABLE.contains(keyword)) {
                keys.put(keyword, String.join(",", values));
            } else if (!ABOUT_THE_ANSWER.contains(name)) {
                ignored.add(name);
            }
        });
        int limit = number(parameters, "limit", PAGE);
        var query =
                new Query(keys, Math.min(limit, LARGEST_PAGE), number(parameters, "offset", 0), List.copyOf(ignored));
        query.from();
        query.to();
        query.birthDate();
        return query;
    }

    /** This query for one study, or one series of it. */
    Query within(@Nullable String study, @Nullable String series) {
        var narrowed = new HashMap<>(keys);
        if (study != null) {
            narrowed.put("StudyInstanceUID", study);
        }
        if (series != null) {
            narrowed.put("SeriesInstanceUID", series);
        }
        return new Query(narrowed, limit, offset, ignored);
    }

    /** The values of a key of UIDs; null when it is not asked for. */
    String @Nullable [] uids(String keyword) {
        return key(keyword).map(text -> text.split("[,\\\\]")).orElse(null);
    }

    /** The pattern of a key with wild cards, for SQL; null when it is not asked for. */
    @Nullable
    String pattern(String keyword) {
        return key(keyword)
                .map(text -> text.replaceAll("([\\\\%_])", "\\\\$1")
                        .replace('*', '%')
                        .replace('?', '_'))
                .orElse(null);
    }

    /** The first day of the study dates asked for; null when any will do. */
    @Nullable
    LocalDate from() {
        return key("StudyDate")
                .map(text -> text.contains("-") ? text.substring(0, text.indexOf('-')) : text)
                .filter(text -> !text.isEmpty())
                .map(Query::date)
                .orElse(null);
    }

    /** The last day of the study dates asked for; null when any will do. */
    @Nullable
    LocalDate to() {
        return key("StudyDate")
                .map(text -> text.substring(text.indexOf('-') + 1))
                .filter(text -> !text.isEmpty())
                .map(Query::date)
                .orElse(null);
    }

    @Nullable
    LocalDate birthDate() {
        return key("PatientBirthDate").map(Query::date).orElse(null);
    }

    private Optional<String> key(String keyword) {
        return Optional.ofNullable(keys.get(keyword)).filter(text -> !text.isBlank() && !text.equals("*"));
    }

    private static String keyword(String name) {
        return name.matches("[0-9A-Fa-f]{8}")
                ? new Tag(Integer.parseUnsignedInt(name, 16)).keyword().orElse(name)
                : name;
    }

    private static LocalDate date(String text) {
        try {
            return LocalDate.parse(text, DATE);
        } catch (DateTimeException e) {
            throw new IllegalArgumentException("a date is written YYYYMMDD", e);
        }
    }

    private static int number(Map<String, String[]> parameters, String name, int otherwise) {
        return Arrays.stream(parameters.getOrDefault(name, new String[0]))
                .findFirst()
                .map(text -> {
                    if (!text.matches("\\d{1,9}")) {
                        throw new IllegalArgumentException(name + " is a whole number");
                    }
                    return Integer.valueOf(text);
                })
                .orElse(otherwise);
    }
}
