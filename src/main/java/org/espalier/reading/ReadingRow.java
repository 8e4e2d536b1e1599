package org.espalier.reading;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.access.StaffId;
import org.espalier.film.FilmId;
import org.espalier.patient.ChildId;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Calibration;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.PixelScale;
import org.espalier.science.quantity.Side;
import tools.jackson.databind.json.JsonMapper;

/** Turns rows of the tables into readings. */
final class ReadingRow {

    private static final String BOTH = "BOTH";

    private ReadingRow() {}

    /** The reading of a row, its numbers still to come. */
    static Reading reading(ResultSet row, JsonMapper json) throws SQLException {
        return new Reading(
                new ReadingId(row.getObject("id", UUID.class)),
                new SiteId(row.getObject("site_id", UUID.class)),
                new ChildId(row.getObject("child_id", UUID.class)),
                new FilmId(row.getObject("film_id", UUID.class)),
                new StaffId(row.getObject("reader", UUID.class)),
                row.getString("reader_name"),
                row.getObject("started_at", OffsetDateTime.class).toInstant(),
                row.getObject("signed_at", OffsetDateTime.class).toInstant(),
                limbs(row.getString("limbs")),
                calibration(row),
                Optional.ofNullable(row.getObject("ball_diameter_px", Double.class)),
                json.readValue(row.getString("taken"), FilmTaken.class),
                List.of(json.readValue(row.getString("screws"), ScrewSeen[].class)),
                Optional.ofNullable(row.getObject("second_of", UUID.class)).map(ReadingId::new),
                superseding(row),
                Optional.ofNullable(row.getObject("superseded_by", UUID.class)).map(ReadingId::new),
                List.of());
    }

    /** The number of a row: reading, side, quantity, value, whether in doubt. */
    static ReadNumber number(ResultSet row) throws SQLException {
        return ReadNumber.ofSigned(
                Side.valueOf(row.getString(2)),
                Quantity.ofCode(row.getString(3)).orElseThrow(),
                row.getDouble(4),
                row.getBoolean(5));
    }

    static String limbs(List<Side> limbs) {
        return limbs.size() > 1 ? BOTH : limbs.getFirst().name();
    }

    private static List<Side> limbs(String limbs) {
        return limbs.equals(BOTH) ? List.of(Side.RIGHT, Side.LEFT) : List.of(Side.valueOf(limbs));
    }

    private static Calibration calibration(ResultSet row) throws SQLException {
        var origin = Calibration.Origin.valueOf(row.getString("calibration"));
        if (origin == Calibration.Origin.NONE) {
            return Calibration.none();
        }
        var scale = PixelScale.of(row.getDouble("mm_per_px_x"), row.getDouble("mm_per_px_y"));
        var diameter = Optional.ofNullable(row.getObject("ball_diameter_mm", Double.class))
                .map(Length::ofMillimetres);
        return new Calibration(origin, Optional.of(scale), diameter);
    }

    private static Optional<Reading.Superseding> superseding(ResultSet row) throws SQLException {
        var before = row.getObject("supersedes", UUID.class);
        return before == null
                ? Optional.empty()
                : Optional.of(new Reading.Superseding(new ReadingId(before), row.getString("reason")));
    }
}
