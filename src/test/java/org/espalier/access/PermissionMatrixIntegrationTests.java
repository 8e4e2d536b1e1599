package org.espalier.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Method;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicReference;
import org.awaitility.Awaitility;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.TestWorld;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.aop.support.AopUtils;
import org.springframework.beans.factory.annotation.Autowired;

/**
 * Every service method, asked by every role at the hospital of a child and at another one, over the real database. The
 * table of permissions says who passes; the walls say what they see. A method that is about no child of one site is
 * named in {@link #ABOUT_NO_CHILD}, every other must tell something at the own site and nothing at the other.
 */
@IntegrationTest
class PermissionMatrixIntegrationTests {

    /**
     * Methods about the network, the caller, or what the caller hands in; what serves a blind second reading, which
     * the first reader is refused, and a hospital's own wait, which takes ten operations to tell: their own tests ask
     * for them from elsewhere.
     */
    static final Set<String> ABOUT_NO_CHILD = Set.of(
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
            "DueByService.ownWait",
            "EmergencyService.mine",
            "EmergencyService.take",
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
            "PasskeyService.mine",
            "PasskeyService.remove",
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
            "SecondFactorService.begin",
            "SecondFactorService.confirm",
            "SecondFactorService.demandAt",
            "SecondFactorService.demandOfOperators",
            "SecondFactorService.demanded",
            "SecondFactorService.isDemandedOfOperators",
            "SecondFactorService.remove",
            "SecondFactorService.reset",
            "SecondFactorService.state",
            "SecondFactorService.use",
            "SessionService.end",
            "SessionService.endAllOf",
            "SessionService.endOthers",
            "SessionService.mine",
            "SignOnService.isOffered",
            "SignOnService.link",
            "SignOnService.subjectOf",
            "SignOnService.unlink",
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
    ServiceCalls services;

    @Autowired
    PermissionTable table;

    @Autowired
    TestNetwork network;

    @Autowired
    TestWorld world;

    Map<String, ServiceCalls.Call> calls = Map.of();

    @BeforeEach
    void services() {
        calls = services.all();
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
                    boolean expected = ServiceCalls.isExpected(name, who);
                    var outcome = services.ask(staff, call, nothings(call.method()), true, List.of());
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
        var before = new AtomicReference<>(services.contents(hospital.site().value()));
        calls.forEach((name, call) -> {
            if (ABOUT_NO_CHILD.contains(name)) {
                return;
            }
            var arguments = hospital.argumentsOf(call.method());
            boolean toldHere = false;
            for (var caller : here.entrySet()) {
                toldHere |= ServiceCalls.isExpected(name, caller.getKey())
                        && services.ask(caller.getValue(), call, arguments, true, List.of())
                                .told();
            }
            if (!toldHere) {
                silent.add(name);
            }
            for (var caller : elsewhere.entrySet()) {
                if (ServiceCalls.isExpected(name, caller.getKey())
                        && services.ask(caller.getValue(), call, arguments, false, hospital.secrets())
                                .told()) {
                    leaking.add(name + " by " + caller.getKey());
                }
            }
            var after = services.contents(hospital.site().value());
            if (!after.equals(before.getAndSet(after))) {
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
        Map<Class<?>, Object> primitives = Map.of(int.class, 0, long.class, 0L, boolean.class, false);
        return Arrays.stream(method.getParameterTypes()).map(primitives::get).toArray();
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
}
