package org.espalier.demo;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.access.FirstPassword;
import org.espalier.access.Membership;
import org.espalier.access.NetworkFounder;
import org.espalier.access.PasswordProblem;
import org.espalier.access.PasswordService;
import org.espalier.access.Role;
import org.espalier.access.Site;
import org.espalier.access.SiteData;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.access.SiteTokenService;
import org.espalier.access.StaffId;
import org.espalier.access.StaffMember;
import org.espalier.access.StaffService;
import org.espalier.access.TokenScope;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** Sets up the network as its operator would: hospitals, staff with their roles and passwords, and one site token. */
@Component
@Profile("demo")
class DemoHouse {

    /** Login of the one who runs the network of the demonstration. */
    static final String OPERATOR = "operator";

    private static final StaffId OPERATOR_ID = new StaffId(DemoIds.of("operator"));
    private static final String TOKEN = "token." + DemoHospital.HARBOUR.code();

    private static final int YEARS_AT_WORK = 12;

    private final NetworkFounder founder;
    private final SiteService sites;
    private final StaffService staff;
    private final PasswordService passwords;
    private final SiteTokenService tokens;

    DemoHouse(
            NetworkFounder founder,
            SiteService sites,
            StaffService staff,
            PasswordService passwords,
            SiteTokenService tokens) {
        this.founder = founder;
        this.sites = sites;
        this.staff = staff;
        this.passwords = passwords;
        this.tokens = tokens;
    }

    /** Makes what is not there yet and says who works where. */
    Map<DemoHospital, DemoTeam> open(DemoState state) {
        makeOperator(state);
        return Callers.callAs(caller(OPERATOR_ID), () -> asOperator(state));
    }

    private void makeOperator(DemoState state) {
        String first = state.get("first." + OPERATOR, Passphrases::fresh);
        String own = state.get(password(OPERATOR), Passphrases::fresh);
        if (founder.found(OPERATOR_ID, OPERATOR, first)
                || state.find(settled(OPERATOR)).isEmpty()) {
            // a start that was cut short here may have changed it already
            change(OPERATOR_ID, first, own)
                    .filter(problem -> problem != PasswordProblem.CURRENT_WRONG)
                    .ifPresent(problem -> refuse(OPERATOR, problem));
            state.put(settled(OPERATOR), "yes");
        }
    }

    private Map<DemoHospital, DemoTeam> asOperator(DemoState state) {
        Map<DemoHospital, SiteId> places = new EnumMap<>(DemoHospital.class);
        for (DemoHospital hospital : DemoHospital.values()) {
            places.put(hospital, site(hospital));
        }
        Map<DemoPerson, StaffId> people = new EnumMap<>(DemoPerson.class);
        for (DemoPerson person : DemoPerson.values()) {
            people.put(person, hire(person, places, state));
        }
        state.get(TOKEN, () -> tokens.issue(
                        place(places, DemoHospital.HARBOUR), "Archive of the demonstration", TokenScope.all())
                .value());
        Map<DemoHospital, DemoTeam> teams = new EnumMap<>(DemoHospital.class);
        for (DemoHospital hospital : DemoHospital.values()) {
            teams.put(hospital, team(hospital, place(places, hospital), people));
        }
        return teams;
    }

    private SiteId site(DemoHospital hospital) {
        return sites.all().stream()
                .filter(site -> site.code().equals(hospital.code()))
                .findFirst()
                .map(Site::id)
                .orElseGet(() -> sites.add(new SiteData(
                                hospital.code(),
                                hospital.title(),
                                hospital.zone().getId()))
                        .id());
    }

    private StaffId hire(DemoPerson person, Map<DemoHospital, SiteId> places, DemoState state) {
        Optional<StaffMember> known = staff.all().stream()
                .filter(member -> member.login().equals(person.login()))
                .findFirst();
        StaffId id = known.filter(member -> isSettled(person, state))
                .map(StaffMember::id)
                .orElseGet(() -> welcome(person, known, state));
        List<Membership> held = known.map(StaffMember::memberships).orElse(List.of());
        LocalDate since = LocalDate.parse(state.find("first-day").orElseThrow()).minusYears(YEARS_AT_WORK);
        for (DemoHospital hospital : person.hospitals()) {
            for (Role role : person.roles()) {
                give(id, new Membership(place(places, hospital), role, since, null), held);
            }
        }
        return id;
    }

    private static boolean isSettled(DemoPerson person, DemoState state) {
        return state.find(settled(person.login())).isPresent();
    }

    /** Gives the person a first password and changes it, as they would at their first sign-in. */
    private StaffId welcome(DemoPerson person, Optional<StaffMember> known, DemoState state) {
        String own = state.get(password(person.login()), Passphrases::fresh);
        FirstPassword first = known.map(member -> staff.renewPassword(member.id()))
                .orElseGet(() -> staff.add(person.login(), person.fullName()));
        change(first.staff(), first.password(), own).ifPresent(problem -> refuse(person.login(), problem));
        state.put(settled(person.login()), "yes");
        return first.staff();
    }

    private void give(StaffId person, Membership membership, List<Membership> held) {
        boolean has =
                held.stream().anyMatch(one -> one.site().equals(membership.site()) && one.role() == membership.role());
        if (!has) {
            staff.give(person, membership);
        }
    }

    private Optional<PasswordProblem> change(StaffId person, String first, String own) {
        return Callers.callAs(caller(person), () -> passwords.change(first, own));
    }

    private static void refuse(String login, PasswordProblem problem) {
        throw new IllegalStateException("the password of " + login + " was not taken: " + problem);
    }

    private static DemoTeam team(DemoHospital hospital, SiteId site, Map<DemoPerson, StaffId> people) {
        return new DemoTeam(
                site,
                who(hospital, Role.NURSE, people),
                who(hospital, Role.RADIOGRAPHER, people),
                who(hospital, Role.SURGEON, people),
                all(hospital, Role.SURGEON, people).skip(1).findFirst());
    }

    private static StaffId who(DemoHospital hospital, Role role, Map<DemoPerson, StaffId> people) {
        return all(hospital, role, people).findFirst().orElseThrow();
    }

    private static Stream<StaffId> all(DemoHospital hospital, Role role, Map<DemoPerson, StaffId> people) {
        return people.entrySet().stream()
                .filter(one -> one.getKey().hospitals().contains(hospital)
                        && one.getKey().roles().contains(role))
                .map(Map.Entry::getValue);
    }

    private static SiteId place(Map<DemoHospital, SiteId> places, DemoHospital hospital) {
        return Optional.ofNullable(places.get(hospital)).orElseThrow();
    }

    private static Caller caller(StaffId person) {
        return new Caller.Staff(person.value());
    }

    static String password(String login) {
        return "password." + login;
    }

    static String token() {
        return TOKEN;
    }

    private static String settled(String login) {
        return "settled." + login;
    }
}
