package org.espalier.patient;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.espalier.science.quantity.Angle;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reports of pictures in layers. */
@Repository
class JdbcImagingReportRepository extends JdbcFindingRepository<ImagingReport> {

    private static final List<String> COLUMNS = List.of(
            "modality",
            "sides",
            "bar",
            "bar_share_percent",
            "femoral_torsion_deg",
            "tibial_torsion_deg",
            "reported_by",
            "report");

    JdbcImagingReportRepository(JdbcClient jdbc) {
        super(jdbc, ImagingReport.class, "imaging_report", "imaged_on", COLUMNS);
    }

    @Override
    Map<String, @Nullable Object> values(ImagingReport report) {
        var values = new HashMap<String, @Nullable Object>();
        var bar = report.bar();
        values.put("modality", report.modality().name());
        values.put("sides", report.sides().name());
        values.put("bar", bar == null ? null : bar.name());
        values.put("bar_share_percent", report.barShare());
        values.put("femoral_torsion_deg", degrees(report.femoralTorsion()));
        values.put("tibial_torsion_deg", degrees(report.tibialTorsion()));
        values.put("reported_by", report.reportedBy());
        values.put("report", report.report());
        return values;
    }

    @Override
    ImagingReport finding(LocalDate on, ResultSet row) throws SQLException {
        var bar = row.getString("bar");
        return new ImagingReport(
                on,
                ImagingReport.Modality.valueOf(row.getString("modality")),
                AffectedSides.valueOf(row.getString("sides")),
                bar == null ? null : ImagingReport.Bar.valueOf(bar),
                row.getObject("bar_share_percent", Integer.class),
                angle(row.getObject("femoral_torsion_deg", Integer.class)),
                angle(row.getObject("tibial_torsion_deg", Integer.class)),
                row.getString("reported_by"),
                row.getString("report"));
    }

    private static @Nullable Long degrees(@Nullable Angle angle) {
        return angle == null ? null : Math.round(angle.degrees());
    }

    private static @Nullable Angle angle(@Nullable Integer degrees) {
        return degrees == null ? null : Angle.ofDegrees(degrees);
    }
}
