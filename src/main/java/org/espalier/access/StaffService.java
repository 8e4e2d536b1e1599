package org.espalier.access;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.espalier.platform.Ids;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The operator's work on people: who is in the network, what they are where, and how they get in the first time. */
@Service
public class StaffService {

    private static final Pattern LOGIN = Pattern.compile("[a-z0-9][a-z0-9._@-]{2,119}");

    private final JdbcStaffRepository staff;
    private final JdbcPasswordRepository passwords;
    private final SessionService sessions;
    private final PasswordEncoder encoder;
    private final AccessLog log;
    private final Ids ids;
    private final Clock clock;

    StaffService(
            JdbcStaffRepository staff,
            JdbcPasswordRepository passwords,
            SessionService sessions,
            PasswordEncoder encoder,
            AccessLog log,
            Ids ids,
            Clock clock) {
        this.staff = staff;
        this.passwords = passwords;
        this.sessions = sessions;
        this.encoder = encoder;
        this.log = log;
        this.ids = ids;
        this.clock = clock;
    }

    /** Whether the text may be a login: 3 to 120 letters, digits and {@code . _ @ -}, small letters alone. */
    static boolean isLogin(String login) {
        return LOGIN.matcher(login).matches();
    }

    /** Everybody, by name; archives are not people. */
    @Transactional
    public List<StaffMember> all() {
        return staff.all();
    }

    /**
     * Adds a person, who may sign in once with the password told here.
     *
     * @throws DuplicateKeyException when the login is taken
     */
    @Transactional
    public FirstPassword add(String login, String name) {
        var normal = login.strip().toLowerCase(Locale.ROOT);
        if (!isLogin(normal) || name.isBlank()) {
            throw new IllegalArgumentException("not a login and a name: " + login + ", " + name);
        }
        var id = new StaffId(ids.next());
        staff.add(id, normal, name.strip());
        log.managed("staff added", null, id);
        return firstPassword(id);
    }

    /** Gives somebody a new password, which they must change when they use it; their sessions end. */
    @Transactional
    public FirstPassword renewPassword(StaffId person) {
        logAtTheirSites("password renewed", person);
        sessions.endAllOf(person);
        return firstPassword(person);
    }

    /** Gives somebody a role at a site. */
    @Transactional
    public void give(StaffId person, Membership membership) {
        staff.give(person, membership);
        log.managed("role given: " + membership.role(), membership.site(), person);
    }

    /** Ends a role; from today on it is not held. */
    @Transactional
    public void end(StaffId person, Membership membership) {
        staff.end(person, membership, today());
        log.managed("role ended: " + membership.role(), membership.site(), person);
    }

    /** Shuts somebody out at once: their roles end and they cannot sign in. */
    @Transactional
    public void shutOut(StaffId person) {
        logAtTheirSites("shut out", person);
        staff.of(person).memberships().forEach(membership -> staff.end(person, membership, today()));
        staff.setActive(person, false);
        sessions.endAllOf(person);
    }

    /** Lets somebody sign in again; roles are given anew. */
    @Transactional
    public void letIn(StaffId person) {
        staff.setActive(person, true);
        log.managed("let in", null, person);
    }

    private FirstPassword firstPassword(StaffId person) {
        var first = FirstPassword.of(person);
        passwords.set(person, PasswordService.hash(encoder, first.password()), clock.instant());
        return first;
    }

    private void logAtTheirSites(String deed, StaffId person) {
        var sites = staff.of(person).memberships().stream()
                .map(Membership::site)
                .distinct()
                .toList();
        sites.forEach(site -> log.managed(deed, site, person));
        if (sites.isEmpty()) {
            log.managed(deed, null, person);
        }
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC);
    }
}
