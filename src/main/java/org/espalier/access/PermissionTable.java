package org.espalier.access;

import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.springframework.core.io.ClassPathResource;
import org.springframework.http.server.PathContainer;
import org.springframework.stereotype.Component;
import org.springframework.web.util.pattern.PathPattern;
import org.springframework.web.util.pattern.PathPatternParser;

/** The table of permissions. What is not in it is denied. */
@Component
class PermissionTable {

    private static final CSVFormat FORMAT =
            CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();

    private final List<Permission> rows;
    private final Map<String, Permission> services;
    private final Map<String, Permission> routes;
    private final List<Endpoint> endpoints;

    private record Endpoint(String method, PathPattern pattern, Permission permission) {

        static Endpoint of(Permission row) {
            var parts = row.name().split(" ", 2);
            return new Endpoint(parts[0], PathPatternParser.defaultInstance.parse(parts[1]), row);
        }

        boolean matches(String asked, PathContainer path) {
            return method.equals(asked) && pattern.matches(path);
        }
    }

    PermissionTable() throws IOException {
        rows = read();
        services = byName(Permission.Kind.SERVICE, Permission::name);
        routes = byName(Permission.Kind.ROUTE, row -> shape(row.name()));
        endpoints = of(Permission.Kind.ENDPOINT).stream().map(Endpoint::of).toList();
    }

    List<Permission> of(Permission.Kind kind) {
        return rows.stream().filter(row -> row.kind() == kind).toList();
    }

    /** The row of a service method, {@code PatientService.find}. */
    Optional<Permission> service(String name) {
        return Optional.ofNullable(services.get(name));
    }

    /** The row of a route by its template as Vaadin writes it, {@code course/:child}. */
    Optional<Permission> route(String template) {
        return Optional.ofNullable(routes.get(shape("/" + template)));
    }

    /** The row of a request; the most specific one where several match. */
    Optional<Permission> endpoint(String method, String path) {
        var parsed = PathContainer.parsePath(path);
        return endpoints.stream()
                .filter(endpoint -> endpoint.matches(method, parsed))
                .min((one, other) -> PathPattern.SPECIFICITY_COMPARATOR.compare(one.pattern(), other.pattern()))
                .map(Endpoint::permission);
    }

    /** A route with its parameters unnamed, so that a screen's own name for one does not matter. */
    private static String shape(String route) {
        return route.replaceAll(":[^/]+|\\{[^/]+}", "{}");
    }

    private Map<String, Permission> byName(Permission.Kind kind, Function<Permission, String> name) {
        return of(kind).stream().collect(Collectors.toUnmodifiableMap(name, row -> row));
    }

    private static List<Permission> read() throws IOException {
        var resource = new ClassPathResource("permissions.csv", PermissionTable.class);
        try (var reader = new InputStreamReader(resource.getInputStream(), StandardCharsets.UTF_8);
                var csv = FORMAT.parse(reader)) {
            return csv.stream()
                    .map(row -> Permission.of(row.get("kind"), row.get("name"), row.get("roles")))
                    .distinct()
                    .toList();
        }
    }
}
