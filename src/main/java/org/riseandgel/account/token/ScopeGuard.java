package org.riseandgel.account.token;

import io.quarkus.security.identity.SecurityIdentity;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.Response;
import java.util.Optional;
import java.util.Set;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.riseandgel.platform.web.ApiProblem;
import org.riseandgel.platform.web.RequestGuards;

/** Keeps a token within its scopes: an address that none of them covers is refused, whatever its person may do. */
public class ScopeGuard {
    private static final int FORBIDDEN = 403;

    private final SecurityIdentity identity;

    ScopeGuard(SecurityIdentity identity) {
        this.identity = identity;
    }

    @ServerRequestFilter(priority = 150)
    public Optional<Response> withinScope(ContainerRequestContext context) {
        if (!RequestGuards.isByToken(identity)) {
            return Optional.empty();
        }
        Set<TokenScope> scopes = identity.getAttribute(TokenIdentities.SCOPES);
        String path = context.getUriInfo().getPath();
        return scopes.stream().anyMatch(scope -> scope.covers(path))
                ? Optional.empty()
                : Optional.of(ApiProblem.of(
                                FORBIDDEN,
                                "This access token is not for this address.",
                                "Make a token with the scope that you need, on the page of your account.")
                        .response());
    }
}
