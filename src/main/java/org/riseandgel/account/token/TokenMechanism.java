package org.riseandgel.account.token;

import io.quarkus.security.identity.IdentityProviderManager;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.identity.request.AuthenticationRequest;
import io.quarkus.vertx.http.runtime.security.ChallengeData;
import io.quarkus.vertx.http.runtime.security.HttpAuthenticationMechanism;
import io.quarkus.vertx.http.runtime.security.HttpCredentialTransport;
import io.smallrye.mutiny.Uni;
import io.vertx.core.http.HttpHeaders;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import java.util.Set;

/**
 * Knows people by an access token in the Authorization header (RFC 6750), under /api alone. A request that carries one is
 * judged by it and by nothing else, also where a sign-in cookie came along.
 */
@ApplicationScoped
class TokenMechanism implements HttpAuthenticationMechanism {
    private static final String SCHEME = "Bearer ";
    private static final String API = "/api/";
    private static final int UNAUTHORIZED = 401;
    private static final int BEFORE_COOKIES = HttpAuthenticationMechanism.DEFAULT_PRIORITY + 100;

    @Override
    public Uni<SecurityIdentity> authenticate(RoutingContext routing, IdentityProviderManager people) {
        return token(routing)
                .map(token -> people.authenticate(new TokenRequest(
                        token,
                        routing.request().method().name(),
                        routing.normalizedPath(),
                        routing.request().remoteAddress().hostAddress())))
                .orElseGet(() -> Uni.createFrom().nullItem());
    }

    private static Optional<String> token(RoutingContext routing) {
        String header = routing.request().getHeader(HttpHeaders.AUTHORIZATION);
        boolean ours = header != null
                && routing.normalizedPath().startsWith(API)
                && header.regionMatches(true, 0, SCHEME, 0, SCHEME.length());
        return ours ? Optional.of(header.substring(SCHEME.length()).strip()) : Optional.empty();
    }

    @Override
    public Uni<ChallengeData> getChallenge(RoutingContext routing) {
        return token(routing).isPresent()
                ? Uni.createFrom().item(new ChallengeData(UNAUTHORIZED, "WWW-Authenticate", "Bearer"))
                : Uni.createFrom().nullItem();
    }

    @Override
    public Set<Class<? extends AuthenticationRequest>> getCredentialTypes() {
        return Set.of(TokenRequest.class);
    }

    @Override
    public Uni<HttpCredentialTransport> getCredentialTransport(RoutingContext routing) {
        return Uni.createFrom().item(new HttpCredentialTransport(HttpCredentialTransport.Type.AUTHORIZATION, "Bearer"));
    }

    @Override
    public int getPriority() {
        return BEFORE_COOKIES;
    }
}
