package org.espalier.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import org.awaitility.Awaitility;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.TestScreens;
import org.espalier.TestSession;
import org.espalier.TestWorld;
import org.espalier.TestWorld.Hospital;
import org.espalier.followup.TransferService;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.core.io.ClassPathResource;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Every table that holds rows of a child, in SQL as the application's role, every service method that is about one,
 * asked by every role in every {@link Situation}, and every screen and request about one, by a surgeon. What is seen
 * must keep the rules of the situations and equal the committed table {@code situations.csv}; the one that was found
 * lies in {@code target/situations.csv}.
 */
@IntegrationTest
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SituationTableIntegrationTests {

    private static final String TABLES_OF_CHILDREN = """
            select distinct g.table_name from information_schema.column_privileges g
            where g.table_schema = 'espalier' and g.grantee = 'espalier_app' and g.privilege_type = 'SELECT'
                and (g.column_name = 'child_id' or g.table_name = 'child' and g.column_name = 'id')
            order by 1""";
    private static final Path FOUND = Path.of("target", "situations.csv");

    @LocalServerPort
    int port;

    @Autowired
    PermissionTable table;

    @Autowired
    ServiceCalls services;

    @Autowired
    TestNetwork network;

    @Autowired
    TestWorld world;

    @Autowired
    TransferService transfers;

    @Autowired
    JdbcClient jdbc;

    Hospital hospital;
    Hospital moved;
    final Map<Situation, Map<Role, UUID>> people = new EnumMap<>(Situation.class);

    @BeforeAll
    void everybodyInEverySituation() {
        hospital = world.hospital();
        moved = world.hospital();
        untilTheHouseRests();
        for (var one : List.of(hospital, moved)) {
            EveryRow.add(network, one.site().value(), one.child().value(), one.surgeon());
        }
        for (var situation : Situation.values()) {
            var site = siteOf(situation);
            var byRole = new EnumMap<Role, UUID>(Role.class);
            for (var role : Role.values()) {
                byRole.put(role, network.staff(site, role.name()));
            }
            network.owner()
                    .sql("update staff set kind = 'archive' where id = ?")
                    .param(byRole.get(Role.ARCHIVE))
                    .update();
            people.put(situation, byRole);
            byRole.values().forEach(who -> arrange(situation, who));
            arrangeSite(situation, site);
        }
        var there = network.site();
        var asked =
                network.as(moved.surgeon(), () -> transfers.ask(moved.child(), new SiteId(there), "the family moved"));
        network.as(network.staff(there, "NURSE"), () -> transfers.accept(asked.id()));
        untilTheHouseRests();
    }

    /** Jobs tell some rows anew. */
    private void untilTheHouseRests() {
        Awaitility.await().atMost(Duration.ofSeconds(60)).until(() -> network.owner()
                .sql("select count(*) = 0 from scheduled_tasks where task_instance <> 'recurring'")
                .query(Boolean.class)
                .single());
    }

    private UUID siteOf(Situation situation) {
        return switch (situation) {
            case OWN -> hospital.site().value();
            case TRANSFERRED -> moved.site().value();
            default -> network.site();
        };
    }

    private Hospital worldOf(Situation situation) {
        return situation == Situation.TRANSFERRED ? moved : hospital;
    }

    private void arrange(Situation situation, UUID who) {
        switch (situation) {
            case GRANTED -> grant(who, "tstzrange(now(), null)");
            case EMERGENCY -> emergency(who, "tstzrange(now(), now() + interval '24 hours')");
            case ENDED -> {
                grant(who, "tstzrange(now() - interval '2 days', now() - interval '1 day')");
                emergency(who, "tstzrange(now() - interval '2 days', now() - interval '1 day')");
            }
            default -> {}
        }
    }

    private void arrangeSite(Situation situation, UUID site) {
        switch (situation) {
            case SHARED -> share(site, "ACCEPTED", "null");
            case ENDED -> share(site, "ENDED", "now()");
            default -> {}
        }
    }

    private void grant(UUID who, String valid) {
        network.owner()
                .sql("insert into access_grant values (uuidv7(), ?, ?, " + valid + ", 'to advise')")
                .params(who, hospital.child().value())
                .update();
    }

    private void emergency(UUID who, String valid) {
        network.owner()
                .sql("insert into emergency_access values (uuidv7(), ?, ?, ?, 'cannot wait at all', now(), " + valid
                        + ")")
                .params(hospital.site().value(), hospital.child().value(), who)
                .update();
    }

    private void share(UUID site, String state, String ended) {
        network.owner()
                .sql("insert into shared_care (id, site_id, to_site, child_id, child_name, birth_date, why, state,"
                        + " asked_at, answered_at, ended_at) values (uuidv7(), ?, ?, ?, 'x', '2016-05-20',"
                        + " 'seen there', ?, now(), now(), " + ended + ")")
                .params(hospital.site().value(), site, hospital.child().value(), state)
                .update();
    }

    /** What the tables that keep a situation tell those in it is theirs to know. */
    private static boolean isOfTheSituation(String what) {
        return List.of("table,emergency_access", "table,shared_care", "table,transfer", "table,access_grant")
                .contains(what);
    }

    @Test
    void isTheCommittedOneAndKeepsTheRulesOfEachSituation() throws IOException {
        var lines = new TreeSet<String>();
        var wrong = new ArrayList<String>();
        for (var situation : Situation.values()) {
            var seen = new TreeMap<String, List<String>>();
            people.getOrDefault(situation, Map.of()).forEach((role, who) -> {
                var told = new TreeSet<String>(rows(who, worldOf(situation)));
                told.addAll(answers(situation, role, who, wrong));
                told.addAll(doors(situation, role, who));
                told.forEach(what -> {
                    seen.computeIfAbsent(what, name -> new ArrayList<>()).add(role.name());
                    if (!isOfTheSituation(what) && !situation.mayTell(role)) {
                        wrong.add(what + " tells " + role + " in " + situation);
                    }
                });
            });
            seen.forEach((what, roles) -> lines.add(what + "," + situation + "," + String.join(" ", roles)));
        }
        Files.write(FOUND, lines);
        assertThat(wrong).isEmpty();
        assertThat(lines).noneMatch(line -> line.startsWith("table,child_identity,GRANTED"));
        assertThat(ofKnownNames(lines)).isEqualTo(String.join("\n", committed()));
    }

    /** A new method, screen or request keeps the rules above; a new table is written down before it is used. */
    private static String ofKnownNames(TreeSet<String> lines) throws IOException {
        var known =
                committed().stream().map(SituationTableIntegrationTests::name).collect(Collectors.toSet());
        return lines.stream()
                .filter(line -> line.startsWith("table,") || known.contains(name(line)))
                .collect(Collectors.joining("\n"));
    }

    private static String name(String line) {
        return line.replaceFirst("^([^,]+,[^,]+),.*", "$1");
    }

    private static TreeSet<String> committed() throws IOException {
        return new ClassPathResource("org/espalier/access/situations.csv")
                .getContentAsString(StandardCharsets.UTF_8)
                .lines()
                .skip(1)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /**
     * The screens and requests about the child that answer a surgeon over HTTP. A discussion shows frozen copies behind
     * walls of its own, which its own tests try.
     */
    private List<String> doors(Situation situation, Role role, UUID who) {
        if (role != Role.SURGEON) {
            return List.of();
        }
        network.owner().sql("delete from sign_in_throttle").update();
        var session = new TestSession(port).signIn(network.login(who), network.password(who));
        var screens = new TestScreens(session);
        var at = worldOf(situation);
        var open = new ArrayList<String>();
        for (var row : table.of(Permission.Kind.ROUTE)) {
            if (row.name().matches(".*[{](child|film)}.*")
                    && !row.name().contains("{thread}")
                    && !screens.open(at.addressOf(row.name()).substring(1)).contains("There is no such page here")) {
                open.add("route," + row.name());
            }
        }
        for (var row : table.of(Permission.Kind.ENDPOINT)) {
            if (row.name().startsWith("GET /api/")
                    && session.get(at.addressOf(row.name().substring("GET /".length())))
                                    .statusCode()
                            == 200) {
                open.add("endpoint," + row.name());
            }
        }
        return open;
    }

    /** A wall before an empty table is a wall that nobody tried. */
    @Test
    void everyTableOfChildrenHoldsARowOfTheChild() {
        var owner = network.owner();
        assertThat(tables()).allSatisfy(table -> assertThat(owner.sql("select exists (select from " + table + " where "
                                + (table.equals("child") ? "id" : "child_id") + " in (?, ?))")
                        .params(hospital.child().value(), moved.child().value())
                        .query(Boolean.class)
                        .single())
                .as(table)
                .isTrue());
    }

    @Test
    void operatorSeesNoRowOfAnyChild() {
        assertThat(rows(network.operator(), hospital)).isEmpty();
        assertThat(rows(network.staff(hospital.site().value()), hospital)).isEmpty();
    }

    /** The tables in which the person sees a row of the child. */
    private List<String> rows(UUID who, Hospital world) {
        var sql = tables().stream()
                .map(table -> "select 'table," + table + "' where exists (select from " + table + " where "
                        + (table.equals("child") ? "id" : "child_id") + " = :child)")
                .collect(Collectors.joining(" union all "));
        return network.as(who, () -> jdbc.sql(sql)
                .param("child", world.child().value())
                .query(String.class)
                .list());
    }

    private List<String> tables() {
        return network.owner().sql(TABLES_OF_CHILDREN).query(String.class).list();
    }

    /**
     * The methods that tell the person anything secret of the child; from abroad none may change a row of its hospital.
     */
    private List<String> answers(Situation situation, Role role, UUID who, List<String> wrong) {
        if (situation == Situation.OWN) {
            return List.of();
        }
        var at = worldOf(situation);
        var told = new ArrayList<String>();
        var before = services.contents(at.site().value());
        services.all().forEach((name, call) -> {
            boolean about = !PermissionMatrixIntegrationTests.ABOUT_NO_CHILD.contains(name);
            if (about
                    && ServiceCalls.isExpected(name, role.name())
                    && services.ask(who, call, at.argumentsOf(call.method()), false, at.secrets())
                            .told()) {
                told.add("service," + name);
            }
        });
        if (situation != Situation.TRANSFERRED
                && !services.contents(at.site().value()).equals(before)) {
            wrong.add(role + " changed rows in " + situation);
        }
        return told;
    }
}
