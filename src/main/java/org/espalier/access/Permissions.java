package org.espalier.access;

import java.util.Optional;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Component;

/**
 * Answers from the table of permissions whether the caller may. It guards services, requests and routes; a screen may
 * ask it too, to leave out what would be refused.
 */
@Component
public class Permissions {

    private final PermissionTable table;
    private final CurrentStaff currentStaff;
    private final AccessLog log;

    Permissions(PermissionTable table, CurrentStaff currentStaff, AccessLog log) {
        this.table = table;
        this.currentStaff = currentStaff;
        this.log = log;
    }

    /** Whether the caller may call the service method, named {@code PatientService.register}. */
    public boolean allowsService(String name) {
        return isJob() || allows(table.service(name));
    }

    /** Whether the caller may take the route, by its template as Vaadin writes it, {@code course/:child}. */
    public boolean allowsRoute(String template) {
        return allows(table.route(template));
    }

    /** Whether the caller may send the request. */
    public boolean allowsRequest(String method, String path) {
        return allows(table.endpoint(method, path));
    }

    /** Refuses the call, and writes that down, unless the caller may. */
    void demandService(String name) {
        if (!allowsService(name)) {
            log.denied(name);
            throw new AccessDeniedException(name);
        }
    }

    private boolean allows(Optional<Permission> row) {
        return row.filter(this::opens).isPresent();
    }

    private boolean opens(Permission row) {
        if (StepsLeft.ofCaller().isPresent()) {
            return row.isPublic() || row.isForHalfway();
        }
        return row.isPublic()
                || (!isNewcomer() || row.isForNewcomers())
                        && currentStaff.standing().filter(row::opensTo).isPresent();
    }

    private static boolean isNewcomer() {
        var authentication = SecurityContextHolder.getContext().getAuthentication();
        return authentication != null
                && authentication.getPrincipal() instanceof SignedInStaff staff
                && staff.mustChangePassword();
    }

    private static boolean isJob() {
        return Callers.current().filter(Caller.SystemAtSite.class::isInstance).isPresent();
    }
}
