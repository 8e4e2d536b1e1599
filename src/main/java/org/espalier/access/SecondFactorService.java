package org.espalier.access;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The caller's own codes by time and recovery codes; where they must be, and removing lost ones, for the operator. */
@Service
@Transactional
public class SecondFactorService {

    /** As many bits as the RFC wants at least for HMAC-SHA-1 (RFC 4226, section 4, R6). */
    private static final int SECRET_BYTES = 20;

    private final JdbcSecondFactorRepository factors;
    private final CurrentStaff currentStaff;
    private final SecretBox box;
    private final SignAgain signAgain;
    private final SessionService sessions;
    private final AccessLog log;
    private final Clock clock;
    private final TimeCodes codes = new TimeCodes();

    SecondFactorService(
            JdbcSecondFactorRepository factors,
            CurrentStaff currentStaff,
            SecretBox box,
            SignAgain signAgain,
            SessionService sessions,
            AccessLog log,
            Clock clock) {
        this.factors = factors;
        this.currentStaff = currentStaff;
        this.box = box;
        this.signAgain = signAgain;
        this.sessions = sessions;
        this.log = log;
        this.clock = clock;
    }

    /** Whether the caller has codes. */
    public SecondFactorState state() {
        return factors.mine()
                .filter(mine -> mine.secret() != null)
                .map(mine -> new SecondFactorState(true, mine.recoveryCodes()))
                .orElseGet(() -> new SecondFactorState(false, 0));
    }

    /**
     * Begins to set up codes; nothing changes until the first was given. Whoever has codes gives one of them first.
     *
     * @throws AccessDeniedException when it is long since the caller proved who they are
     */
    public SecondFactorSetUp begin() {
        demandIn();
        signAgain.prove();
        var secret = SecretBox.random(SECRET_BYTES);
        factors.begin(box.close(currentStaff.id(), secret), clock.instant());
        var text = Base32.of(secret);
        var label =
                URLEncoder.encode(currentStaff.name(), StandardCharsets.UTF_8).replace("+", "%20");
        return new SecondFactorSetUp(text, "otpauth://totp/Espalier:" + label + "?secret=" + text + "&issuer=Espalier");
    }

    /**
     * Takes the first code of what was set up and tells the recovery codes, which replace all before; other sessions
     * end.
     *
     * @throws AccessDeniedException when it is long since the caller proved who they are: the picture may have been
     *     left open for somebody else
     */
    public Optional<RecoveryCodes> confirm(String code) {
        demandIn();
        signAgain.prove();
        var mine = factors.mine();
        var pending = mine.map(JdbcSecondFactorRepository.Mine::pending);
        if (pending.isEmpty()) {
            return Optional.empty();
        }
        var given = codes.step(box.open(currentStaff.id(), pending.get()), code, clock.instant(), 0);
        if (given.isEmpty()) {
            return Optional.empty();
        }
        var fresh = RecoveryCodes.fresh();
        var hashes = fresh.codes().stream().map(RecoveryCodes::hash).toList();
        factors.confirm(given.getAsLong(), hashes, clock.instant());
        sessions.endAllButThis(currentStaff.id());
        log.managed("second factor set up", null, currentStaff.id());
        return Optional.of(fresh);
    }

    /** Whether the code is the caller's of this moment, or a recovery code; neither is taken twice. */
    public boolean use(String code) {
        var mine = factors.mine().filter(one -> one.secret() != null);
        if (mine.isEmpty()) {
            return false;
        }
        var secret = java.util.Objects.requireNonNull(mine.get().secret());
        var given = codes.step(
                box.open(currentStaff.id(), secret),
                code,
                clock.instant(),
                mine.get().lastStep());
        return given.isPresent()
                ? factors.use(given.getAsLong())
                : factors.useRecovery(RecoveryCodes.hash(code), clock.instant());
    }

    /**
     * Takes away the caller's codes; their other sessions end.
     *
     * @throws AccessDeniedException when it is long since the caller proved who they are
     */
    public void remove() {
        signAgain.prove();
        factors.remove(currentStaff.id());
        sessions.endAllButThis(currentStaff.id());
        log.managed("second factor removed", null, currentStaff.id());
    }

    /**
     * Takes away everything of somebody who lost it: codes, recovery codes, passkeys. The password is given anew, too.
     */
    public void reset(StaffId person) {
        factors.remove(person);
        sessions.endAllOf(person);
        log.managed("second factor removed", null, person);
    }

    /** By hospital the roles that need a second factor there; a hospital that asks it of none is not named. */
    public Map<SiteId, Set<Role>> demanded() {
        return factors.demanded();
    }

    /** Demands a second factor of these roles at the hospital, from their next sign-in on. */
    public void demandAt(SiteId site, Set<Role> roles) {
        factors.demandAt(site, List.copyOf(roles));
        log.managed("second factor demanded", site, null);
    }

    /** Whether operators need a second factor. */
    public boolean isDemandedOfOperators() {
        return factors.isDemandedOfOperators();
    }

    /** Demands a second factor of operators, or no more. */
    public void demandOfOperators(boolean demanded) {
        factors.demandOfOperators(demanded);
        log.managed("second factor of operators", null, null);
    }

    /** Whoever has codes and gave none yet must not put others in their place. */
    private void demandIn() {
        if (StepsLeft.ofCaller().filter(left -> left != SecondStep.Kind.SET_UP).isPresent()) {
            throw new AccessDeniedException("a code comes first");
        }
    }
}
