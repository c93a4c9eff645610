package org.riseandgel.account.signin;

import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.Response;
import java.util.Optional;
import java.util.Set;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.riseandgel.account.Viewer;
import org.riseandgel.platform.web.SeeOther;

/** Whoever signed in with a one-time password gets nowhere before choosing an own one. */
public class ChangePasswordFirst {
    private static final Set<String> OPEN = Set.of("/account/password", "/sign-out", "/sign-in");

    private final Viewer viewer;

    ChangePasswordFirst(Viewer viewer) {
        this.viewer = viewer;
    }

    @ServerRequestFilter(priority = 300)
    public Optional<Response> check(ContainerRequestContext context) {
        boolean held = viewer.isSignedIn()
                && viewer.isMustChangePassword()
                && !OPEN.contains(context.getUriInfo().getPath());
        return held ? Optional.of(SeeOther.page("/account/password")) : Optional.empty();
    }
}
