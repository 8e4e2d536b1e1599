package org.espalier.platform;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** The tables of the house as the database knows them. */
final class Tables {

    /** Stored tables that are no partition, but the list of migrations, which restoring makes anew. */
    private static final String TABLES = """
            select c.relname, a.attname
            from pg_class c
            join pg_attribute a on a.attrelid = c.oid and a.attnum > 0 and not a.attisdropped and a.attgenerated = ''
            where c.relnamespace = 'espalier'::regnamespace and c.relkind in ('r', 'p') and not c.relispartition
                and c.relname <> 'flyway_schema_history'
            order by c.relname, a.attnum
            """;

    private static final String REFERENCES = """
            select distinct c.conrelid::regclass::text, c.confrelid::regclass::text
            from pg_constraint c
            where c.contype = 'f' and c.connamespace = 'espalier'::regnamespace
                and not c.condeferrable and c.conrelid <> c.confrelid
            """;

    private static final String VERSION = """
            select version from espalier.flyway_schema_history
            where success and version is not null
            order by installed_rank desc limit 1
            """;

    private Tables() {}

    /** The version the migrations have brought the schema to. */
    static String version(Connection connection) throws SQLException {
        try (var statement = connection.createStatement();
                var rows = statement.executeQuery(VERSION)) {
            if (!rows.next()) {
                throw new SQLException("no migration has run here");
            }
            return rows.getString(1);
        }
    }

    /** All tables, each after those it refers to. */
    static List<Table> inOrderOfReference(Connection connection) throws SQLException {
        var columns = pairs(connection, TABLES);
        var references = pairs(connection, REFERENCES);
        var ordered = new LinkedHashSet<String>();
        for (var name : columns.keySet()) {
            addAfterReferences(name, references, ordered, new TreeSet<>());
        }
        return ordered.stream()
                .map(name -> new Table(name, columns.getOrDefault(name, List.of())))
                .toList();
    }

    private static void addAfterReferences(
            String name, Map<String, List<String>> references, Set<String> ordered, Set<String> path) {
        if (!path.add(name)) {
            throw new IllegalStateException("tables refer to each other in a circle: " + path);
        }
        for (var other : references.getOrDefault(name, List.of())) {
            if (!ordered.contains(other)) {
                addAfterReferences(other, references, ordered, path);
            }
        }
        path.remove(name);
        ordered.add(name);
    }

    private static Map<String, List<String>> pairs(Connection connection, String query) throws SQLException {
        var pairs = new TreeMap<String, List<String>>();
        try (var statement = connection.createStatement();
                var rows = statement.executeQuery(query)) {
            while (rows.next()) {
                pairs.computeIfAbsent(rows.getString(1), name -> new ArrayList<>())
                        .add(rows.getString(2));
            }
        }
        return pairs;
    }
}
