package org.espalier.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.TestScreens;
import org.espalier.TestSession;
import org.espalier.TestWorld;
import org.espalier.TestWorld.Hospital;
import org.espalier.kit.Texts;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/**
 * Every screen and every endpoint of the table, asked for over HTTP by every role at the hospital of a child and at
 * another one. The table says who gets through the door; behind it only the own hospital and only those with need are
 * told who the child is. A new row is tried as it is; a new kind of place in an address gets its line in
 * {@link TestWorld}.
 */
@IntegrationTest
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PermissionDoorsIntegrationTests {

    /** The answer of an endpoint that knows the child and lacks something of it, such as the date of a visit. */
    private static final int NOT_YET = 409;

    /** What some endpoints cannot do without, beside the child. */
    private static final Map<String, String> WANTED = Map.of(
            "/api/children/*/letter", "?kind=PLEASE_CALL&language=FRENCH",
            "/api/children/*/calendar", "?language=FRENCH",
            "/api/children/*/plate-card", "?language=FRENCH");

    private static final Set<String> WITH_NEED_OF_NAMES = Set.of("SURGEON", "NURSE", "RADIOGRAPHER");

    /** Refused by what it is asked about: only the owner of a passkey may remove it. */
    private static final String OWN_PASSKEY = "DELETE /webauthn/register/*";

    private static final String NOT_THERE = "There is no such page here";

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    TestWorld world;

    Hospital hospital;
    List<Caller> callers;
    final List<String> wrong = new ArrayList<>();

    /** A row of the table, read from the file itself. */
    private record Row(String kind, String name, List<String> keys) {

        boolean isAboutAChild() {
            return name.contains("{") || name.contains("/*");
        }

        String method() {
            return name.split(" ")[0];
        }

        String path() {
            return name.substring(name.indexOf('/'));
        }

        boolean opensTo(Caller caller) {
            if (caller.key().equals("HALFWAY")) {
                return keys.contains("HALFWAY") || keys.contains("PUBLIC") && !kind.equals("route");
            }
            return keys.contains("PUBLIC") && !(caller.key().equals("NEWCOMER") && kind.equals("route"))
                    || caller.key().equals("NEWCOMER") && keys.contains("NEWCOMER")
                    || keys.contains(caller.key()) && caller.hasKeyFor(path())
                    || keys.contains("ANY")
                            && caller.isPerson()
                            && !caller.key().equals("NEWCOMER");
        }
    }

    /** Somebody who asks, at the child's hospital or at another. */
    private record Caller(
            String key,
            boolean here,
            TestSession session,
            @Nullable String token) {

        boolean isPerson() {
            return token == null && !key.equals("NOBODY");
        }

        /** An archive has its own door and no other. */
        boolean hasKeyFor(String path) {
            return (token != null) == path.startsWith("/dicom-web");
        }

        boolean mayKnowNames() {
            return here && (WITH_NEED_OF_NAMES.contains(key) || token != null);
        }

        HttpResponse<String> ask(String method, String path) {
            var request = session.request(path)
                    .method(method, method.equals("POST") ? BodyPublishers.ofString("{}") : BodyPublishers.noBody());
            if (token != null) {
                request.header("Authorization", "Bearer " + token);
            }
            return session.send(request);
        }

        @Override
        public String toString() {
            return key + (here ? " at the child's hospital" : " at another hospital");
        }
    }

    @BeforeAll
    void aHospitalAndEverybodyWhoMayAsk() {
        network.owner().sql("delete from sign_in_throttle").update();
        hospital = world.hospital();
        callers = callers();
    }

    @BeforeEach
    void nothingWrongYet() {
        wrong.clear();
    }

    @Test
    void everyEndpointLetsThroughTheRolesOfTheTableAndTellsNobodyElsewhere() {
        var rows = rows("endpoint");
        callers()
                .forEach(caller -> rows.forEach(row -> {
                    var address = hospital.addressOf(row.path()) + WANTED.getOrDefault(row.path(), "");
                    var answer = caller.ask(row.method(), address);
                    judge(row, caller, isLetThrough(answer), answer.body());
                    if (answer.statusCode() >= 500) {
                        wrong.add(row.name() + " fails for " + caller);
                    }
                    if (row.isAboutAChild()
                            && !row.path().endsWith("**")
                            && row.method().equals("GET")) {
                        boolean told = answer.statusCode() == 200 || answer.statusCode() == NOT_YET;
                        if (told != (row.opensTo(caller) && caller.here())) {
                            wrong.add(row.name() + " answers " + answer.statusCode() + " to " + caller);
                        }
                    }
                }));
        assertThat(wrong).isEmpty();
        assertThat(rows).anyMatch(Row::isAboutAChild);
    }

    @Test
    void everyScreenOpensToTheRolesOfTheTableAndShowsNothingElsewhere() {
        var rows = rows("route");
        callers.stream().filter(Caller::isPerson).forEach(caller -> {
            rows.forEach(row -> {
                var shown = new TestScreens(caller.session())
                        .open(hospital.addressOf(row.path()).substring(1));
                boolean mayOpen = row.opensTo(caller) && (caller.here() || !row.isAboutAChild());
                boolean open = isShown(shown, caller, row);
                if (open != mayOpen) {
                    wrong.add(row.name() + " is " + (open ? "" : "not ") + "shown to " + caller);
                }
                judge(row, caller, row.opensTo(caller), shown);
            });
        });
        assertThat(wrong).isEmpty();
    }

    @Test
    void namesTheChildOnEveryScreenAboutItToThoseWithNeed() {
        callers.stream()
                .filter(caller -> caller.here() && WITH_NEED_OF_NAMES.contains(caller.key()))
                .forEach(caller -> {
                    var screens = new TestScreens(caller.session());
                    rows("route").stream()
                            .filter(row -> row.isAboutAChild() && row.opensTo(caller) && !isNameless(row))
                            .filter(row -> !screens.open(
                                            hospital.addressOf(row.path()).substring(1))
                                    .contains(hospital.who().localNumber()))
                            .forEach(row -> wrong.add(row.name() + " does not say to " + caller + " who it is about"));
                });
        assertThat(wrong).isEmpty();
    }

    @Test
    void nobodyIsLedToTheWayInFromEveryScreenThatIsNotPublic() {
        var nobody = new TestSession(port);
        rows("route").forEach(row -> {
            var answer = nobody.get(hospital.addressOf(row.path()).substring(1));
            if (row.keys().contains("PUBLIC") != (answer.statusCode() == 200)) {
                wrong.add(row.name() + " answers nobody with " + answer.statusCode());
            }
        });
        assertThat(wrong).isEmpty();
    }

    @Test
    void whatIsNotInTheTableIsDeniedToEverybody() {
        callers.forEach(caller -> {
            for (var path : List.of("/api/nothing-here", "/dicom-web/nothing-here")) {
                if (isLetThrough(caller.ask("GET", path))) {
                    wrong.add(path + " lets through " + caller);
                }
            }
            if (caller.isPerson()
                    && !Set.of("NEWCOMER", "HALFWAY").contains(caller.key())
                    && !new TestScreens(caller.session()).open("nothing-here").contains(NOT_THERE)) {
                wrong.add("a screen that is not there is shown to " + caller);
            }
        });
        assertThat(wrong).isEmpty();
    }

    private void judge(Row row, Caller caller, boolean letThrough, String told) {
        boolean decidesItself = row.keys().contains("PUBLIC") || row.name().equals(OWN_PASSKEY) && caller.isPerson();
        if (!decidesItself && letThrough != row.opensTo(caller)) {
            wrong.add(row.name() + (letThrough ? " lets through " : " refuses ") + caller);
        }
        if (!caller.mayKnowNames()) {
            secretsFor(caller).stream()
                    .filter(secret -> !hospital.addressOf(row.path()).contains(secret))
                    .filter(secret -> told.toLowerCase(Locale.ROOT).contains(secret.toLowerCase(Locale.ROOT)))
                    .forEach(secret -> wrong.add(row.name() + " tells " + caller + " of " + secret));
        }
    }

    /** A privacy officer reads the log of accesses by the numbers of children, and never their names. */
    private List<String> secretsFor(Caller caller) {
        var name = hospital.who().familyName();
        if (!caller.here()) {
            return hospital.secrets();
        }
        return caller.key().equals("PRIVACY_OFFICER")
                ? List.of(name)
                : List.of(name, String.valueOf(hospital.who().localNumber()));
    }

    private static boolean isLetThrough(HttpResponse<?> answer) {
        boolean ledAway = answer.statusCode() == 302
                && answer.headers().firstValue("Location").orElse("").contains("login");
        return !ledAway && answer.statusCode() != 401 && answer.statusCode() != 403;
    }

    /** A discussion shows frozen copies without a name, also to those who asked. */
    private static boolean isNameless(Row row) {
        return row.path().startsWith("/opinion/");
    }

    private static boolean isShown(String screen, Caller caller, Row row) {
        boolean ledToTheAccount = caller.key().equals("NEWCOMER")
                && !row.path().equals("/account")
                && screen.contains(Texts.text("shell.account.newcomer"));
        boolean ledToTheCode = caller.key().equals("HALFWAY")
                && !row.path().equals("/login/code")
                && screen.contains("\"login/code\"");
        boolean isNotThere = screen.contains(NOT_THERE) || screen.contains(Texts.text("opinion.not-there"));
        return !ledToTheAccount && !ledToTheCode && !isNotThere;
    }

    private List<Caller> callers() {
        var callers = new ArrayList<Caller>();
        var elsewhere = network.site();
        for (var role : Role.values()) {
            if (role == Role.ARCHIVE) {
                callers.add(archive(hospital.site().value(), true));
                callers.add(archive(elsewhere, false));
            } else {
                var own = role == Role.SURGEON
                        ? hospital.surgeon()
                        : network.staff(hospital.site().value(), role.name());
                callers.add(person(role.name(), true, own));
                callers.add(person(role.name(), false, network.staff(elsewhere, role.name())));
            }
        }
        callers.add(person("OPERATOR", false, network.operator()));
        callers.add(person("NO ROLE", false, network.staff(hospital.site().value())));
        callers.add(newcomer());
        callers.add(halfway());
        callers.add(new Caller("NOBODY", false, new TestSession(port), null));
        return callers;
    }

    private Caller person(String key, boolean here, UUID staff) {
        var session = new TestSession(port).signIn(network.login(staff), network.password(staff));
        return new Caller(key, here, session, null);
    }

    private Caller newcomer() {
        var staff = network.staff(hospital.site().value(), "SURGEON");
        var password = network.password(staff);
        network.owner()
                .sql("update staff_password set must_change = true where staff_id = ?")
                .param(staff)
                .update();
        return new Caller("NEWCOMER", false, new TestSession(port).signIn(network.login(staff), password), null);
    }

    /** A surgeon of the child's hospital whose password was right and whose code is not given yet. */
    private Caller halfway() {
        var staff = network.staff(hospital.site().value(), "SURGEON");
        network.owner()
                .sql("insert into second_factor (staff_id, secret, set_at) values (?, 'unread', current_timestamp)")
                .param(staff)
                .update();
        return person("HALFWAY", false, staff);
    }

    private Caller archive(UUID site, boolean here) {
        return new Caller("ARCHIVE", here, new TestSession(port), network.token(site));
    }

    private static List<Row> rows(String kind) {
        try (var file = Permission.class.getResourceAsStream("permissions.csv")) {
            var text = new String(Objects.requireNonNull(file).readAllBytes(), StandardCharsets.UTF_8);
            Map<String, Row> rows = new LinkedHashMap<>();
            text.lines()
                    .map(line -> line.split(","))
                    .filter(cells -> cells[0].equals(kind))
                    .forEach(cells -> rows.put(cells[1], new Row(kind, cells[1], List.of(cells[2].split(" ")))));
            return List.copyOf(rows.values());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
