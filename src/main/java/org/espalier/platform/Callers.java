package org.espalier.platform;

import java.util.Optional;
import java.util.function.Supplier;
import org.springframework.security.core.context.SecurityContextHolder;

/** The caller of the running work: one bound to it explicitly, else the signed-in principal. */
public final class Callers {

    private static final ScopedValue<Caller> BOUND = ScopedValue.newInstance();

    private Callers() {}

    /** The caller of the running work; empty when nobody is signed in and nothing is bound. */
    public static Optional<Caller> current() {
        if (BOUND.isBound()) {
            return Optional.of(BOUND.get());
        }
        var authentication = SecurityContextHolder.getContext().getAuthentication();
        return authentication != null && authentication.getPrincipal() instanceof CallerPrincipal principal
                ? Optional.of(principal.caller())
                : Optional.empty();
    }

    /** Does the work as the given caller and returns its result. */
    public static <T> T callAs(Caller caller, Supplier<T> work) {
        return ScopedValue.where(BOUND, caller).call(work::get);
    }

    /** Does the work as the given caller. */
    public static void runAs(Caller caller, Runnable work) {
        ScopedValue.where(BOUND, caller).run(work);
    }
}
