package org.espalier.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.security.access.AccessDeniedException;

@IntegrationTest
class ServiceGuardIntegrationTests {

    @Autowired
    SiteService sites;

    @Autowired
    CurrentStaff currentStaff;

    @Autowired
    TestNetwork network;

    @Test
    void refusesACallForNobody() {
        assertThatThrownBy(() -> sites.all()).isInstanceOf(AccessDeniedException.class);
    }

    @Test
    void refusesACallForAnybodyWhoIsNotInTheNetwork() {
        assertThatThrownBy(() -> network.as(UUID.randomUUID(), () -> sites.all()))
                .isInstanceOf(AccessDeniedException.class);
    }

    @Test
    void letsStaffSeeTheirSites() {
        var site = network.site();
        network.site();
        var nurse = network.staff(site, "NURSE");
        assertThat(network.as(nurse, () -> sites.mine())).extracting(Site::id).containsExactly(new SiteId(site));
    }

    @Test
    void letsAJobOfTheHouseWork() {
        var site = network.site();
        var seen = Callers.callAs(new Caller.SystemAtSite(site, "test"), () -> sites.mine());
        assertThat(seen).extracting(Site::id).containsExactly(new SiteId(site));
    }

    @Test
    void forgetsARoleTheDayItEnds() {
        var site = network.site();
        var person = network.staff(site, "SURGEON");
        assertThat(network.as(person, () -> currentStaff.has(Role.SURGEON))).isTrue();
        network.owner()
                .sql("update membership set valid = daterange(date '2000-01-01', current_date) where staff_id = ?")
                .param(person)
                .update();
        assertThat(network.as(person, () -> currentStaff.has(Role.SURGEON))).isFalse();
    }
}
