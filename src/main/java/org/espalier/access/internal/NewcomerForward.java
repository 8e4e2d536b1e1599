package org.espalier.access.internal;

import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterListener;
import com.vaadin.flow.router.ListenerPriority;
import com.vaadin.flow.server.ServiceInitEvent;
import com.vaadin.flow.server.VaadinServiceInitListener;
import org.espalier.access.SignedInStaff;
import org.espalier.access.StepsLeft;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Component;

/**
 * Leads somebody who still has a first password, or must still give a second factor, to the only screen they may see,
 * before the guard refuses the others.
 */
@Component
@ListenerPriority(NewcomerForward.BEFORE_THE_GUARD)
class NewcomerForward implements VaadinServiceInitListener, BeforeEnterListener {

    static final int BEFORE_THE_GUARD = 100;

    private static final long serialVersionUID = 1;
    private static final String ACCOUNT = "account";
    private static final String SECOND_STEP = "login/code";

    @Override
    public void serviceInit(ServiceInitEvent event) {
        event.getSource().addUIInitListener(init -> init.getUI().addBeforeEnterListener(this));
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        if (StepsLeft.ofCaller().isPresent()) {
            if (!event.getLocation().getPath().equals(SECOND_STEP)) {
                event.forwardTo(SECOND_STEP);
            }
        } else if (isNewcomer() && !event.getLocation().getPath().equals(ACCOUNT)) {
            event.forwardTo(ACCOUNT);
        }
    }

    private static boolean isNewcomer() {
        var authentication = SecurityContextHolder.getContext().getAuthentication();
        return authentication != null
                && authentication.getPrincipal() instanceof SignedInStaff staff
                && staff.mustChangePassword();
    }
}
