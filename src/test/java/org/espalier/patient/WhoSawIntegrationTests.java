package org.espalier.patient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.access.AccessLogService;
import org.espalier.access.Look;
import org.espalier.access.SiteId;
import org.espalier.access.WhoSaw;
import org.espalier.followup.TransferService;
import org.espalier.reading.TestReader;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.security.access.AccessDeniedException;

@IntegrationTest
class WhoSawIntegrationTests {

    @Autowired
    AccessLogService log;

    @Autowired
    PatientService patients;

    @Autowired
    TransferService transfers;

    @Autowired
    TestNetwork network;

    @Autowired
    TestReader reader;

    UUID site;
    UUID surgeon;
    Child child;

    @BeforeEach
    void aChildThatANurseOpenedTwice() {
        var sender = reader.surgeon();
        site = sender.site().value();
        surgeon = sender.staff();
        var id = reader.child(sender, LocalDate.of(2018, 3, 4));
        child = network.as(surgeon, () -> patients.open(id, "course").orElseThrow());
        var nurse = network.staff(site, "NURSE");
        opens(nurse);
        opens(nurse);
    }

    private void opens(UUID who) {
        network.as(who, () -> patients.open(child.id(), "visits"));
    }

    private List<Look> seenBy(UUID who) {
        return network.as(who, () -> log.whoSaw(child.id().value()))
                .map(WhoSaw::looks)
                .orElse(List.of());
    }

    @Test
    void tellsThoseWhoTreatTheChildAndThePrivacyOfficerWhoLookedTheNewestFirst() {
        for (var role : List.of("SURGEON", "NURSE", "PRIVACY_OFFICER")) {
            var looks = seenBy(network.staff(site, role));
            assertThat(looks).as(role).hasSizeGreaterThanOrEqualTo(3);
            assertThat(looks)
                    .isSortedAccordingTo(
                            java.util.Comparator.comparing(Look::at).reversed());
            assertThat(looks).allMatch(look -> look.worksAt().equals(List.of(new SiteId(site))));
        }
    }

    @Test
    void namesEachPersonOnce() {
        var people = network.as(surgeon, () -> log.whoSaw(child.id().value()))
                .map(WhoSaw::people)
                .orElseThrow();
        assertThat(people).hasSize(2);
        assertThat(people.getFirst().times()).isEqualTo(2);
        assertThat(people.getFirst().first()).isBefore(people.getFirst().last());
    }

    @Test
    void tellsNobodyElsewhereAndNobodyWithoutTheRole() {
        var there = network.site();
        assertThat(seenBy(network.staff(there, "SURGEON"))).isEmpty();
        assertThat(seenBy(network.staff(there, "PRIVACY_OFFICER"))).isEmpty();
        assertThatThrownBy(() -> seenBy(network.staff(site, "STOREKEEPER"))).isInstanceOf(AccessDeniedException.class);
        assertThatThrownBy(() -> seenBy(network.operator())).isInstanceOf(AccessDeniedException.class);
        assertThat(seenBy(surgeon)).noneMatch(look -> look.worksAt().contains(new SiteId(there)));
    }

    @Test
    void passesOnWithTheChildAndLeavesTheOldHospitalsOfficerWhatWasThen() {
        var there = network.site();
        var taking = network.staff(there, "NURSE");
        var asked = network.as(surgeon, () -> transfers.ask(child.id(), new SiteId(there), "the family moved"));
        network.as(taking, () -> transfers.accept(asked.id()));
        assertThat(seenBy(taking)).anyMatch(look -> look.worksAt().contains(new SiteId(site)));
        assertThat(seenBy(surgeon)).isEmpty();
        assertThat(seenBy(network.staff(site, "PRIVACY_OFFICER")))
                .isNotEmpty()
                .noneMatch(look ->
                        look.subject().equals("who saw") && look.worksAt().contains(new SiteId(there)));
    }
}
