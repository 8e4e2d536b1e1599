package org.espalier.today;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.followup.Happening;
import org.espalier.followup.VisitService;
import org.espalier.patient.ChildData;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.platform.Drafts;
import org.espalier.platform.Ids;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@IntegrationTest
class TodayServiceIntegrationTests {

    @Autowired
    TodayService service;

    @Autowired
    PatientService patients;

    @Autowired
    VisitService visits;

    @Autowired
    SiteService sites;

    @Autowired
    Drafts drafts;

    @Autowired
    TestNetwork network;

    @Autowired
    Ids ids;

    @Autowired
    Clock clock;

    SiteId site;
    UUID surgeon;

    @BeforeEach
    void aHospital() {
        site = new SiteId(network.site());
        surgeon = network.staff(site.value(), "SURGEON");
    }

    @Test
    void findsNothingWhereNothingWaits() {
        assertThat(open(surgeon).isEmpty()).isTrue();
    }

    @Test
    void putsTheFilmTakenFirstFirst() {
        var child = child("Waiting");
        var later = film(child, "READY", LocalDate.of(2026, 9, 2));
        var earlier = film(child, "READY", LocalDate.of(2026, 9, 1));
        film(child, "RECEIVED", LocalDate.of(2026, 8, 1));
        assertThat(open(surgeon).toRead().shown())
                .extracting(film -> film.film().value())
                .containsExactly(earlier, later);
        assertThat(open(surgeon).toRead().all()).isEqualTo(2);
    }

    @Test
    void asksNobodyButASurgeonToRead() {
        film(child("Waiting"), "READY", LocalDate.of(2026, 9, 1));
        assertThat(open(network.staff(site.value(), "NURSE")).toRead().isEmpty())
                .isTrue();
    }

    @Test
    void countsWhatLiesInTheTray() {
        film(null, "READY", null);
        film(null, "RECEIVED", null);
        film(null, "KEPT_ASIDE", null);
        assertThat(open(surgeon).tray()).isEqualTo(new Tray(2, 1));
    }

    @Test
    void putsAChildNeverFilmedBeforeTheLongestWithout() {
        var recent = child("Recent");
        film(recent, "READY", LocalDate.now(clock).minusMonths(5));
        var longest = child("Longest");
        film(longest, "READY", LocalDate.of(2024, 1, 1));
        var longAgo = child("Long");
        film(longAgo, "READY", LocalDate.of(2025, 1, 1));
        var never = child("Never");
        registeredLongAgo(never);
        child("Just registered");
        assertThat(open(surgeon).withoutFilm().shown())
                .extracting(one -> one.child().id())
                .containsExactly(never, longest, longAgo);
    }

    @Test
    void namesWhatTheReaderBegan() {
        var child = child("Begun");
        network.as(surgeon, () -> drafts.start("child-edit", child.value(), "{}"));
        network.as(
                surgeon,
                () -> drafts.start(
                        "child-new",
                        ids.next(),
                        "{\"site\": \"" + site.value() + "\", \"familyName\": \"New\", \"givenName\": \"Nora\"}"));
        var found = open(surgeon).drafts();
        assertThat(found)
                .extracting(OpenDraft::kind)
                .containsExactly(OpenDraft.Kind.CHILD_NEW, OpenDraft.Kind.CHILD_EDIT);
        assertThat(found.getFirst().typedName()).isEqualTo("New Nora");
        assertThat(found.getLast().child().orElseThrow().id()).isEqualTo(child);
    }

    @Test
    void namesEveryFormOfAnExaminationThatWasBegunAndPassesOverWhatItDoesNotKnow() {
        var child = child("Forms");
        var forms = List.of("visit", "body-size", "bone-age", "diagnosis", "stage", "lab", "bone-disease", "imaging");
        forms.forEach(form -> network.as(surgeon, () -> drafts.start(form, child.value(), "{}")));
        network.as(surgeon, () -> drafts.start("of-a-later-version", child.value(), "{}"));
        assertThat(open(surgeon).drafts())
                .extracting(
                        draft -> draft.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'))
                .containsExactlyInAnyOrderElementsOf(forms);
    }

    @Test
    void namesAttemptsAndFormsOfTheFamilyThatWereBegunWhileTheVisitIsOpen() {
        var child = child("Late");
        var visit = network.as(surgeon, () -> visits.of(child)).open().orElseThrow();
        network.as(surgeon, () -> drafts.start("attempt", visit.id().value(), "{}"));
        network.as(surgeon, () -> drafts.start("next-visit-date", visit.id().value(), "{}"));
        network.as(surgeon, () -> drafts.start("family", child.value(), "{}"));
        assertThat(open(surgeon).drafts())
                .allSatisfy(
                        draft -> assertThat(draft.child().orElseThrow().id()).isEqualTo(child))
                .extracting(OpenDraft::kind)
                .containsExactly(OpenDraft.Kind.FAMILY, OpenDraft.Kind.NEXT_VISIT_DATE, OpenDraft.Kind.ATTEMPT);
        var came = new Happening.Arrived(network.as(surgeon, () -> sites.today(site)), Optional.empty());
        network.as(surgeon, () -> visits.record(visit, came));
        assertThat(open(surgeon).drafts()).extracting(OpenDraft::kind).containsExactly(OpenDraft.Kind.FAMILY);
    }

    @Test
    void showsNothingOfAnotherHospital() {
        film(child("Walled"), "READY", LocalDate.of(2024, 1, 1));
        film(null, "READY", null);
        assertThat(open(network.staff(network.site(), "SURGEON")).isEmpty()).isTrue();
        var storekeeper = network.staff(site.value(), "STOREKEEPER");
        assertThat(network.as(storekeeper, service::open)).isEmpty();
    }

    @Test
    void writesDownWhomItShowed() {
        var child = child("Shown");
        film(child, "READY", LocalDate.of(2024, 1, 1));
        open(surgeon);
        assertThat(network.owner()
                        .sql("select count(*) from access_entry where staff_id = ? and subject = 'today'"
                                + " and ? = any(children)")
                        .params(surgeon, child.value())
                        .query(Long.class)
                        .single())
                .isEqualTo(1);
    }

    private SiteToday open(UUID staff) {
        return network.as(staff, service::open).getFirst();
    }

    private ChildId child(String name) {
        var id = new ChildId(ids.next());
        var data = new ChildData(name, null, LocalDate.of(2019, 7, 14), null, null);
        network.as(surgeon, () -> patients.register(site, id, data));
        return id;
    }

    private void registeredLongAgo(ChildId child) {
        network.owner()
                .sql("update child set recorded_at = '2025-01-01' where id = ?")
                .param(child.value())
                .update();
    }

    private UUID film(@Nullable ChildId child, String state, @Nullable LocalDate takenOn) {
        return TodayFilms.add(network, ids, site, child, state, takenOn);
    }
}
