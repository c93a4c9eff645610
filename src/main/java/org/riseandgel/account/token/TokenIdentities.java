package org.riseandgel.account.token;

import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.security.identity.AuthenticationRequestContext;
import io.quarkus.security.identity.IdentityProvider;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.runtime.QuarkusPrincipal;
import io.quarkus.security.runtime.QuarkusSecurityIdentity;
import io.smallrye.mutiny.Uni;
import jakarta.enterprise.context.ApplicationScoped;
import org.riseandgel.account.Viewer;
import org.riseandgel.account.token.AccessTokens.Bearer;
import org.riseandgel.platform.web.RequestGuards;

/** Makes the person behind an access token known to the framework; a token that opens nothing is refused. */
@ApplicationScoped
class TokenIdentities implements IdentityProvider<TokenRequest> {
    /** Attribute that holds the scopes of the token. */
    static final String SCOPES = "tokenScopes";

    private final AccessTokens tokens;

    TokenIdentities(AccessTokens tokens) {
        this.tokens = tokens;
    }

    @Override
    public Class<TokenRequest> getRequestType() {
        return TokenRequest.class;
    }

    @Override
    public Uni<SecurityIdentity> authenticate(TokenRequest request, AuthenticationRequestContext context) {
        return context.runBlocking(() -> tokens.use(request)
                .map(TokenIdentities::identity)
                .orElseThrow(() -> new AuthenticationFailedException("This access token opens nothing.")));
    }

    private static SecurityIdentity identity(Bearer bearer) {
        return QuarkusSecurityIdentity.builder()
                .setPrincipal(new QuarkusPrincipal(bearer.person().toString()))
                .addRoles(bearer.roles())
                .addAttribute(Viewer.DISPLAY_NAME, bearer.displayName())
                .addAttribute(Viewer.MUST_CHANGE, false)
                .addAttribute(RequestGuards.BY_TOKEN, true)
                .addAttribute(SCOPES, bearer.scopes())
                .build();
    }
}
