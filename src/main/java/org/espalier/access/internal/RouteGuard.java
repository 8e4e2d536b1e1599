package org.espalier.access.internal;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.server.auth.AccessCheckResult;
import com.vaadin.flow.server.auth.NavigationAccessChecker;
import com.vaadin.flow.server.auth.NavigationContext;
import java.util.Optional;
import org.espalier.access.AccessLog;
import org.espalier.access.Permissions;

/** Asks the table of permissions about each screen. */
final class RouteGuard implements NavigationAccessChecker {

    private static final long serialVersionUID = 1;

    private final transient Permissions permissions;
    private final transient AccessLog log;

    RouteGuard(Permissions permissions, AccessLog log) {
        this.permissions = permissions;
        this.log = log;
    }

    @Override
    public AccessCheckResult check(NavigationContext context) {
        if (context.isErrorHandling()) {
            return context.allow();
        }
        var route = template(context);
        if (route.filter(permissions::allowsRoute).isPresent()) {
            return context.allow();
        }
        if (context.isNavigating()) {
            log.denied("/" + route.orElse(""));
        }
        return context.deny("not in the table of permissions for the caller");
    }

    private static Optional<String> template(NavigationContext context) {
        return context.getRouter()
                .getRegistry()
                .getTemplate(context.getNavigationTarget().asSubclass(Component.class));
    }
}
