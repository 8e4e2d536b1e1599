package org.espalier.access.internal;

import java.time.Clock;
import org.espalier.access.SecondPerson;
import org.springframework.security.authentication.AuthenticationProvider;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.authentication.dao.DaoAuthenticationProvider;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.security.web.authentication.WebAuthenticationDetails;
import org.springframework.stereotype.Component;
import org.springframework.web.context.request.RequestContextHolder;
import org.springframework.web.context.request.ServletRequestAttributes;

/** Looks at the second person's password through the same throttle as the door. */
@Component
class PasswordOfSecond implements SecondPerson {

    private final AuthenticationProvider passwords;

    PasswordOfSecond(UserDetailsService staff, PasswordEncoder encoder, JdbcSignInRepository signIns, Clock clock) {
        var provider = new DaoAuthenticationProvider(staff);
        provider.setPasswordEncoder(encoder);
        passwords = new ThrottledSignIn(provider, signIns, clock);
    }

    @Override
    public Answer confirm(String login, String password) {
        var attempt = UsernamePasswordAuthenticationToken.unauthenticated(login.strip(), password);
        if (RequestContextHolder.getRequestAttributes() instanceof ServletRequestAttributes request) {
            attempt.setDetails(new WebAuthenticationDetails(request.getRequest()));
        }
        try {
            var second = passwords.authenticate(attempt);
            return second != null && second.getPrincipal() instanceof StaffPrincipal staff
                    ? new Answer.Confirmed(staff.staff())
                    : new Answer.Wrong();
        } catch (TooManyAttempts wait) {
            return new Answer.Wait();
        } catch (AuthenticationException wrong) {
            return new Answer.Wrong();
        }
    }
}
