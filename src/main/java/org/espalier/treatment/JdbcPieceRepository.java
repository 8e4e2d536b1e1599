package org.espalier.treatment;

import java.sql.Array;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.espalier.patient.ChildId;
import org.espalier.stock.LotId;
import org.espalier.stock.ProductId;
import org.espalier.stock.ShelfId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The pieces of acts. */
@Repository
class JdbcPieceRepository {

    private static final String ADD = """
            insert into procedure_piece (session_id, act_number, number, site_id, recorded_site, child_id, role,
                product_id,
                what, lot_numbers, expires_on, lots, shelf_id, outside, movement_id)
            select :session, :act, :number, c.site_id, c.site_id, c.id, :role, :product,
                :what, :numbers, :expires, cast(:lots as uuid[]), :shelf, :outside, :movement
            from child c where c.id = :child
            """;
    private static final String ALL = """
            select session_id, act_number, role, product_id, what, lot_numbers, expires_on, lots, shelf_id, outside,
                movement_id
            from procedure_piece where child_id = :child
            order by session_id, act_number, number
            """;

    private final JdbcClient jdbc;

    JdbcPieceRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The place of an act: its procedure and its number there, from 1. */
    record ActPlace(UUID session, int number) {}

    void add(ChildId child, ActPlace place, List<Piece> pieces) {
        for (int at = 0; at < pieces.size(); at++) {
            add(child, place, at + 1, pieces.get(at));
        }
    }

    private void add(ChildId child, ActPlace place, int number, Piece piece) {
        var product = piece.product();
        var shelf = piece.shelf();
        var outside = piece.outside();
        jdbc.sql(ADD)
                .param("child", child.value())
                .param("session", place.session())
                .param("act", place.number())
                .param("number", number)
                .param("role", piece.role().name())
                .param("product", product == null ? null : product.value())
                .param("what", piece.what())
                .param("numbers", piece.lotNumbers())
                .param("expires", piece.expires())
                .param("lots", piece.lots().stream().map(LotId::value).toArray(UUID[]::new))
                .param("shelf", shelf == null ? null : shelf.value())
                .param("outside", outside == null ? null : outside.name())
                .param("movement", piece.movement())
                .update();
    }

    /** All pieces that were recorded of a child, by their acts. */
    Map<ActPlace, List<Piece>> all(ChildId child) {
        Map<ActPlace, List<Piece>> pieces = new HashMap<>();
        jdbc.sql(ALL).param("child", child.value()).query(row -> {
            var place = new ActPlace(row.getObject("session_id", UUID.class), row.getInt("act_number"));
            pieces.computeIfAbsent(place, none -> new ArrayList<>()).add(piece(row));
        });
        return pieces;
    }

    private static Piece piece(ResultSet row) throws SQLException {
        var product = row.getObject("product_id", UUID.class);
        var shelf = row.getObject("shelf_id", UUID.class);
        return new Piece(
                Piece.Role.valueOf(row.getString("role")),
                product == null ? null : new ProductId(product),
                row.getString("what"),
                row.getString("lot_numbers"),
                row.getObject("expires_on", LocalDate.class),
                lots(row.getArray("lots")),
                shelf == null ? null : new ShelfId(shelf),
                FactTable.constant(row, "outside", Piece.Outside.class),
                row.getObject("movement_id", UUID.class));
    }

    private static List<LotId> lots(Array array) throws SQLException {
        return Stream.of((Object[]) array.getArray())
                .map(id -> new LotId((UUID) id))
                .toList();
    }
}
