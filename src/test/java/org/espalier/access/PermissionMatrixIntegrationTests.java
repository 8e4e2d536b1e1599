package org.espalier.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import org.awaitility.Awaitility;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.TestWorld;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.aop.support.AopUtils;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Every service method, asked by every role at the hospital of a child and at another one, over the real database. The table
 * of permissions says who passes; the walls say what they see. A method that is about no child of one site is named in
 * {@link #ABOUT_NO_CHILD}, every other must tell something at the own site and nothing at the other.
 */
@IntegrationTest
class PermissionMatrixIntegrationTests {

    /**
     * Methods about the network, the caller, or what the caller hands in; and what serves a blind second
     * reading, which the first reader is refused: the readings' own tests ask for it from elsewhere.
     */
    private static final Set<String> ABOUT_NO_CHILD = Set.of(
            "AccessLogService.check",
            "AccessLogService.lastCheck",
            "AskService.colleagues",
            "BookingService.preview",
            "BookingService.take",
            "CatalogueService.add",
            "CatalogueService.addCode",
            "CatalogueService.byCode",
            "CatalogueService.change",
            "CatalogueService.codes",
            "CatalogueService.lot",
            "CatalogueService.lotOf",
            "CatalogueService.lots",
            "CatalogueService.product",
            "CatalogueService.removeCode",
            "CatalogueService.search",
            "CatalogueService.searchLots",
            "DraftService.answer",
            "DraftService.readBlind",
            "LabelService.read",
            "LabelService.readTogether",
            "OpinionService.calls",
            "OpinionService.fared",
            "OpinionService.handOn",
            "OpinionService.mine",
            "OpinionService.ownWords",
            "OpinionService.search",
            "OpinionService.take",
            "PanelService.add",
            "PanelService.all",
            "PanelService.make",
            "PanelService.remove",
            "PasswordService.change",
            "RatesService.choose",
            "RatesService.of",
            "ReadersService.unpaired",
            "ReadingService.answer",
            "SafetyService.all",
            "SafetyService.close",
            "SafetyService.lookAgain",
            "SafetyService.notice",
            "SafetyService.open",
            "SafetyService.progress",
            "SiteService.add",
            "SiteService.all",
            "SiteService.change",
            "SiteService.get",
            "SiteService.mine",
            "SiteService.today",
            "SiteTokenService.all",
            "SiteTokenService.issue",
            "SiteTokenService.revoke",
            "StaffService.add",
            "StaffService.all",
            "StaffService.end",
            "StaffService.give",
            "StaffService.letIn",
            "StaffService.renewPassword",
            "StaffService.shutOut",
            "StockService.check",
            "StockService.rebuild",
            "TodayService.askedOfMe");

    @Autowired
    ApplicationContext context;

    @Autowired
    PermissionTable table;

    @Autowired
    TestNetwork network;

    @Autowired
    TestWorld world;

    @Autowired
    TransactionTemplate transactions;

    Map<String, Call> calls = new TreeMap<>();

    private record Call(Object service, Method method) {}

    /** What came of a call: whether the guard refused it, and whether it told or did anything. */
    private record Outcome(boolean refused, boolean told) {}

    @BeforeEach
    void services() {
        context.getBeansWithAnnotation(Service.class).values().stream()
                .filter(service -> isModuleRoot(AopUtils.getTargetClass(service)))
                .forEach(service -> publicMethods(AopUtils.getTargetClass(service))
                        .forEach(method -> calls.put(name(method), new Call(service, method))));
    }

    private static boolean isModuleRoot(Class<?> type) {
        return type.getPackageName().matches("org\\.espalier\\.[a-z]+");
    }

    private static List<Method> publicMethods(Class<?> type) {
        return Arrays.stream(type.getDeclaredMethods())
                .filter(method -> Modifier.isPublic(method.getModifiers()))
                .filter(method -> !Modifier.isStatic(method.getModifiers()) && !method.isSynthetic())
                .toList();
    }

    private static String name(Method method) {
        return method.getDeclaringClass().getSimpleName() + "." + method.getName();
    }

    @Test
    void tableNamesEveryServiceMethodAndNoOther() {
        assertThat(table.of(Permission.Kind.SERVICE))
                .extracting(Permission::name)
                .containsExactlyInAnyOrderElementsOf(calls.keySet());
        assertThat(calls.values()).allMatch(call -> AopUtils.isAopProxy(call.service()));
        assertThat(calls.keySet()).containsAll(ABOUT_NO_CHILD);
    }

    @Test
    void guardLetsThroughTheRolesOfTheTableAndNoOther() {
        var site = network.site();
        var wrong = new ArrayList<String>();
        callers(site)
                .forEach((who, staff) -> calls.forEach((name, call) -> {
                    boolean expected = isExpected(name, who);
                    var outcome = ask(staff, call, nothings(call.method()), true, List.of());
                    if (outcome.refused() == expected) {
                        wrong.add(name + " by " + who + " should be " + (expected ? "allowed" : "denied"));
                    }
                }));
        assertThat(wrong).isEmpty();
    }

    @Test
    void toldAtTheOwnSiteNothingAtTheOther() {
        var hospital = world.hospital();
        var elsewhere = callers(network.site());
        var here = callers(hospital.site().value());
        here.put("SURGEON", hospital.surgeon());
        waitForJobs();
        var silent = new ArrayList<String>();
        var leaking = new ArrayList<String>();
        calls.forEach((name, call) -> {
            if (ABOUT_NO_CHILD.contains(name)) {
                return;
            }
            var arguments = hospital.argumentsOf(call.method());
            boolean toldHere = false;
            for (var caller : here.entrySet()) {
                toldHere |= isExpected(name, caller.getKey())
                        && ask(caller.getValue(), call, arguments, true, List.of())
                                .told();
            }
            if (!toldHere) {
                silent.add(name);
            }
            var before = contents(hospital.site().value());
            for (var caller : elsewhere.entrySet()) {
                if (isExpected(name, caller.getKey())
                        && ask(caller.getValue(), call, arguments, false, hospital.secrets())
                                .told()) {
                    leaking.add(name + " by " + caller.getKey());
                }
            }
            if (!contents(hospital.site().value()).equals(before)) {
                leaking.add(name + " changed rows");
            }
        });
        assertThat(silent).as("told nothing even at the own site").isEmpty();
        assertThat(leaking).as("told or changed something from another site").isEmpty();
    }

    /** What the hospital's signed readings ask of the jobs is done, so that only the callers change rows. */
    private void waitForJobs() {
        Awaitility.await().atMost(Duration.ofSeconds(60)).until(() -> network.owner()
                .sql("select count(*) = 0 from scheduled_tasks where task_instance <> 'recurring'")
                .query(Boolean.class)
                .single());
    }

    /** Arguments that no method can work with: only the guard's answer counts. */
    private static @Nullable Object[] nothings(Method method) {
        return Arrays.stream(method.getParameterTypes())
                .map(type -> type == int.class ? (Object) 0 : type == long.class ? (Object) 0L : null)
                .toArray();
    }

    /** Everybody who may ask at a site: each role, nobody's role, the operator, and nobody at all. */
    private Map<String, @Nullable UUID> callers(UUID site) {
        var callers = new LinkedHashMap<String, @Nullable UUID>();
        for (var role : Role.values()) {
            callers.put(role.name(), network.staff(site, role.name()));
        }
        callers.put("OPERATOR", network.operator());
        callers.put("NO ROLE", network.staff(site));
        callers.put("NOBODY", null);
        return callers;
    }

    /** Reads the file itself, so that a mistake in the code that reads it for the guard does not hide. */
    private boolean isExpected(String name, String who) {
        return rows().stream()
                .filter(row -> row[0].equals("service") && row[1].equals(name))
                .map(row -> List.of(row[2].split(" ")))
                .anyMatch(keys ->
                        keys.contains(who) || keys.contains("PUBLIC") || keys.contains("ANY") && !who.equals("NOBODY"));
    }

    private static List<String[]> rows() {
        try (var file = Permission.class.getResourceAsStream("permissions.csv")) {
            return new String(
                            java.util.Objects.requireNonNull(file).readAllBytes(),
                            java.nio.charset.StandardCharsets.UTF_8)
                    .lines()
                    .map(line -> line.split(","))
                    .toList();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private Outcome ask(@Nullable UUID staff, Call call, Object[] arguments, boolean undo, List<String> secrets) {
        return staff == null
                ? ask(call, arguments, undo, secrets)
                : Callers.callAs(new Caller.Staff(staff), () -> ask(call, arguments, undo, secrets));
    }

    private Outcome ask(Call call, Object[] arguments, boolean undo, List<String> secrets) {
        var outcome = new Outcome[1];
        try {
            transactions.executeWithoutResult(status -> {
                if (undo) {
                    status.setRollbackOnly();
                }
                outcome[0] = invoke(call, arguments, undo, secrets);
            });
        } catch (RuntimeException e) {
            return outcome[0] == null ? new Outcome(false, false) : outcome[0];
        }
        return outcome[0];
    }

    /** A method without an answer that did not complain counts as told where it may work; elsewhere the rows say. */
    private static Outcome invoke(Call call, Object[] arguments, boolean mayWork, List<String> secrets) {
        try {
            var result = call.method().invoke(call.service(), arguments);
            boolean silent = call.method().getReturnType() == void.class;
            return new Outcome(false, silent ? mayWork : tells(result, secrets));
        } catch (InvocationTargetException e) {
            boolean guard = e.getCause() instanceof AccessDeniedException denied
                    && name(call.method()).equals(denied.getMessage());
            return new Outcome(guard, false);
        } catch (IllegalAccessException | IllegalArgumentException e) {
            return new Outcome(false, false);
        }
    }

    /** A report or an answer in words tells when it names what is secret; any other result when there is one. */
    private static boolean tells(@Nullable Object result, List<String> secrets) {
        return switch (result) {
            case null -> false;
            case Boolean truth -> truth;
            case Optional<?> optional ->
                optional.filter(one -> tells(one, secrets)).isPresent();
            case Collection<?> collection -> collection.stream().anyMatch(one -> tells(one, secrets));
            case Record words when !secrets.isEmpty() -> secrets.stream().anyMatch(words.toString()::contains);
            default -> true;
        };
    }

    /** A digest of all rows of the site, the log of accesses apart: a refusal belongs there. */
    private String contents(UUID site) {
        return network.owner()
                .sql(contentsOfASite())
                .param("site", site)
                .query(String.class)
                .list()
                .toString();
    }

    private String contentsOfASite() {
        return network
                .owner()
                .sql("select table_name from information_schema.columns where table_schema = 'espalier'"
                        + " and column_name = 'site_id' and table_name <> 'access_entry' order by table_name")
                .query(String.class)
                .list()
                .stream()
                .map(name -> "select coalesce(md5(string_agg(t::text, ',' order by t::text)), '') from " + name
                        + " t where site_id = :site")
                .collect(Collectors.joining(" union all "));
    }
}
