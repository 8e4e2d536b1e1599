package org.espalier.patient;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What was found by hand and eye at visits: one row a visit, a column for each angle and sign of each leg. */
@Repository
class JdbcClinicalExaminationRepository extends JdbcFindingRepository<ClinicalExamination> {

    private static final List<String> WHOLE =
            List.of("intercondylar_mm", "intermalleolar_mm", "hypermobility", "sleep", "note");

    JdbcClinicalExaminationRepository(JdbcClient jdbc) {
        super(jdbc, ClinicalExamination.class, "clinical_examination", "examined_on", columns());
    }

    private static List<String> columns() {
        var legs = Arrays.stream(Side.values())
                .flatMap(side -> Stream.concat(
                        Arrays.stream(LegAngle.values()).map(angle -> column(side, angle)),
                        Arrays.stream(LegSign.values()).map(sign -> column(side, sign))));
        return Stream.concat(WHOLE.stream(), legs).toList();
    }

    private static String column(Side side, LegAngle angle) {
        return (side + "_" + angle + "_deg").toLowerCase(Locale.ROOT);
    }

    private static String column(Side side, LegSign sign) {
        return (side + "_" + sign).toLowerCase(Locale.ROOT);
    }

    @Override
    Map<String, @Nullable Object> values(ClinicalExamination visit) {
        var values = new HashMap<String, @Nullable Object>();
        values.put("intercondylar_mm", millimetres(visit.intercondylar()));
        values.put("intermalleolar_mm", millimetres(visit.intermalleolar()));
        values.put("hypermobility", visit.hypermobility());
        values.put(
                "sleep",
                Optional.ofNullable(visit.sleep()).map(SleepSymptoms::name).orElse(null));
        values.put("note", visit.note());
        for (var side : Side.values()) {
            var leg = visit.leg(side);
            leg.angles().forEach((what, angle) -> values.put(column(side, what), Math.round(angle.degrees())));
            leg.signs().forEach((sign, answer) -> values.put(column(side, sign), answer.name()));
        }
        return values;
    }

    @Override
    ClinicalExamination finding(LocalDate on, ResultSet row) throws SQLException {
        var sleep = row.getString("sleep");
        return new ClinicalExamination(
                on,
                length(row.getObject("intercondylar_mm", Integer.class)),
                length(row.getObject("intermalleolar_mm", Integer.class)),
                leg(Side.RIGHT, row),
                leg(Side.LEFT, row),
                row.getObject("hypermobility", Integer.class),
                sleep == null ? null : SleepSymptoms.valueOf(sleep),
                row.getString("note"));
    }

    private static LegExamination leg(Side side, ResultSet row) throws SQLException {
        var angles = new EnumMap<LegAngle, Angle>(LegAngle.class);
        for (var what : LegAngle.values()) {
            var degrees = row.getObject(column(side, what), Integer.class);
            if (degrees != null) {
                angles.put(what, Angle.ofDegrees(degrees));
            }
        }
        var signs = new EnumMap<LegSign, LegAnswer>(LegSign.class);
        for (var sign : LegSign.values()) {
            var answer = row.getString(column(side, sign));
            if (answer != null) {
                signs.put(sign, sign.answer(answer));
            }
        }
        return new LegExamination(angles, signs);
    }

    private static @Nullable Long millimetres(@Nullable Length gap) {
        return gap == null ? null : Math.round(gap.millimetres());
    }

    private static @Nullable Length length(@Nullable Integer millimetres) {
        return millimetres == null ? null : Length.ofMillimetres(millimetres);
    }
}
