package org.espalier.access.internal;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Objects;
import java.util.Optional;
import org.espalier.access.RecoveryCodes;
import org.espalier.access.SecondFactorService;
import org.espalier.access.SecondStep;
import org.espalier.access.StepsLeft;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.security.core.authority.FactorGrantedAuthority;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.context.HttpSessionSecurityContextRepository;
import org.springframework.stereotype.Component;
import org.springframework.web.context.request.RequestContextHolder;
import org.springframework.web.context.request.ServletRequestAttributes;

/** Keeps in the session that a code was given, as one more factor of the caller; the session gets a new id with it. */
@Component
class SessionSecondStep implements SecondStep {

    private final SecondFactorService factors;
    private final JdbcSignInRepository signIns;
    private final Clock clock;

    SessionSecondStep(SecondFactorService factors, JdbcSignInRepository signIns, Clock clock) {
        this.factors = factors;
        this.signIns = signIns;
        this.clock = clock;
    }

    @Override
    public Optional<Kind> left() {
        return StepsLeft.ofCaller();
    }

    @Override
    public Answer give(String code) {
        var caller = caller();
        var account = ThrottledSignIn.key("code " + caller.getName());
        var source = ThrottledSignIn.key(request().getRemoteAddr());
        var wait = signIns.begin(account, source, clock.instant());
        if (wait.isPositive()) {
            return Answer.WAIT;
        }
        boolean right = factors.use(code);
        signIns.log(caller.getName(), right, clock.instant());
        if (right) {
            signIns.end(account, source);
            letIn(caller);
        }
        return right ? Answer.CONFIRMED : Answer.WRONG;
    }

    @Override
    public Optional<RecoveryCodes> setUp(String code) {
        var codes = factors.confirm(code);
        codes.ifPresent(told -> letIn(caller()));
        return codes;
    }

    private void letIn(Authentication caller) {
        var factorsGiven = new ArrayList<GrantedAuthority>(caller.getAuthorities());
        factorsGiven.add(FactorGrantedAuthority.withFactor(StepsLeft.CODE_FACTOR)
                .issuedAt(clock.instant())
                .build());
        var whole = UsernamePasswordAuthenticationToken.authenticated(
                Objects.requireNonNull(caller.getPrincipal()), null, factorsGiven);
        whole.setDetails(caller.getDetails());
        var context = SecurityContextHolder.createEmptyContext();
        context.setAuthentication(whole);
        SecurityContextHolder.setContext(context);
        var request = request();
        request.changeSessionId();
        request.getSession().setAttribute(HttpSessionSecurityContextRepository.SPRING_SECURITY_CONTEXT_KEY, context);
    }

    private static Authentication caller() {
        return Optional.ofNullable(SecurityContextHolder.getContext().getAuthentication())
                .orElseThrow(() -> new IllegalStateException("nobody is signed in"));
    }

    private static HttpServletRequest request() {
        if (RequestContextHolder.getRequestAttributes() instanceof ServletRequestAttributes attributes) {
            return attributes.getRequest();
        }
        throw new IllegalStateException("no screen asks");
    }
}
