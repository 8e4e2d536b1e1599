package org.espalier.stock;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.espalier.access.SiteId;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Shelves of each hospital. */
@Repository
class JdbcShelfRepository {

    private static final String SELECT = "select " + StockRows.shelf("s", "s_") + " from stock_shelf s ";
    private static final String FIND = SELECT + "where s.id = :id";
    private static final String BOTH = SELECT + "where s.id in (:one, :other)";
    private static final String OF_SITE = SELECT + """
            where s.site_id = :site and s.kind <> 'IN_TRANSIT' order by array_position(
                array['STORE', 'TRAY', 'CONSIGNMENT', 'QUARANTINE', 'ANALYSIS', 'KEPT', 'DISPOSED'], s.kind), s.name
                    limit 500
            """;
    private static final String OPEN = "select open_stock(:site)";
    private static final String ADD = """
            insert into stock_shelf (id, site_id, kind, name, to_site, owner_name, back_by)
            values (:id, :site, :kind, :name, :to, :owner, :back)
            """;
    private static final String CHANGE = """
            update stock_shelf set version = version + 1, name = :name, owner_name = :owner, back_by = :back
            where id = :id and version = :version and kind = :kind
            """;
    private static final String CLOSE = """
            update stock_shelf s set version = version + 1, closed_on = :on
            where id = :id and version = :version and kind in ('STORE', 'TRAY', 'CONSIGNMENT') and not exists (
                select from stock_balance b where b.shelf_id = s.id and b.quantity > 0)
            """;
    private static final String STERILISING = """
            update stock_shelf set version = version + 1, sterilising = :sterilising,
                used_on = case when :sterilising then used_on end, used_for = case when :sterilising then used_for end
            where id = :id and kind = 'TRAY'
            """;
    private static final String USED_BY_OTHER = """
            select exists (select from stock_shelf where id = :id and kind = 'TRAY' and used_on = :today and used_for <>
                :holder)
            """;

    private final JdbcClient jdbc;

    JdbcShelfRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Optional<Shelf> find(ShelfId id) {
        return jdbc.sql(FIND)
                .param("id", id.value())
                .query(JdbcShelfRepository::row)
                .optional();
    }

    /** Those of both shelves that the caller may see. */
    Map<ShelfId, Shelf> find(ShelfId one, ShelfId other) {
        return jdbc
                .sql(BOTH)
                .param("one", one.value())
                .param("other", other.value())
                .query(JdbcShelfRepository::row)
                .list()
                .stream()
                .collect(Collectors.toMap(Shelf::id, Function.identity()));
    }

    /** All but goods on their way, those that operations take from first; the ends of the book last. */
    List<Shelf> of(SiteId site) {
        var shelves = select(site);
        if (shelves.stream().noneMatch(shelf -> shelf.kind() == ShelfKind.SUPPLIER)) {
            jdbc.sql(OPEN)
                    .param("site", site.value())
                    .query((row, number) -> true)
                    .list();
            return select(site);
        }
        return shelves;
    }

    private List<Shelf> select(SiteId site) {
        return jdbc.sql(OF_SITE)
                .param("site", site.value())
                .query(JdbcShelfRepository::row)
                .list();
    }

    /** The one shelf of its kind at a hospital where the caller may see the stock. */
    Optional<Shelf> one(SiteId site, ShelfKind kind) {
        return of(site).stream().filter(shelf -> shelf.kind() == kind).findFirst();
    }

    void add(ShelfId id, SiteId site, ShelfData data) {
        add(id, site, data.kind(), data.name(), null, data.owner(), data.backBy());
    }

    /** The shelf of goods on their way to another hospital. */
    void addTransit(ShelfId id, SiteId from, SiteId to) {
        add(id, from, ShelfKind.IN_TRANSIT, null, to, null, null);
    }

    private void add(
            ShelfId id,
            SiteId site,
            ShelfKind kind,
            @Nullable String name,
            @Nullable SiteId to,
            @Nullable String owner,
            @Nullable LocalDate backBy) {
        jdbc.sql(ADD)
                .param("id", id.value())
                .param("site", site.value())
                .param("kind", kind.name())
                .param("name", name)
                .param("to", to == null ? null : to.value())
                .param("owner", owner)
                .param("back", backBy)
                .update();
    }

    boolean change(Shelf old, ShelfData data) {
        return jdbc.sql(CHANGE)
                        .param("id", old.id().value())
                        .param("version", old.version())
                        .param("kind", data.kind().name())
                        .param("name", data.name())
                        .param("owner", data.owner())
                        .param("back", data.backBy())
                        .update()
                == 1;
    }

    boolean close(Shelf shelf, LocalDate on) {
        return jdbc.sql(CLOSE)
                        .param("id", shelf.id().value())
                        .param("version", shelf.version())
                        .param("on", on)
                        .update()
                == 1;
    }

    boolean setSterilising(ShelfId tray, boolean sterilising) {
        return jdbc.sql(STERILISING)
                        .param("id", tray.value())
                        .param("sterilising", sterilising)
                        .update()
                == 1;
    }

    /** Whether the tray was used that day for somebody else. */
    boolean isUsedByOther(ShelfId tray, LocalDate today, UUID holder) {
        return jdbc.sql(USED_BY_OTHER)
                .param("id", tray.value())
                .param("today", today)
                .param("holder", holder)
                .query(Boolean.class)
                .single();
    }

    private static Shelf row(ResultSet row, int number) throws SQLException {
        return StockRows.shelf(row, "s_");
    }
}
