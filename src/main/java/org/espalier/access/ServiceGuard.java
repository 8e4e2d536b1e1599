package org.espalier.access;

import org.aspectj.lang.JoinPoint;
import org.aspectj.lang.annotation.Aspect;
import org.aspectj.lang.annotation.Before;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Stands before every public method of a module's services, ahead of its transaction. */
@Aspect
@Component
@Order(0)
class ServiceGuard {

    private final Permissions permissions;

    ServiceGuard(Permissions permissions) {
        this.permissions = permissions;
    }

    @Before("execution(public * org.espalier.*.*.*(..)) && @within(org.springframework.stereotype.Service)")
    void check(JoinPoint call) {
        var method = call.getSignature();
        permissions.demandService(method.getDeclaringType().getSimpleName() + "." + method.getName());
    }
}
