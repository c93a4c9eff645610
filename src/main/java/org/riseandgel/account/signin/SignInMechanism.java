package org.riseandgel.account.signin;

import io.quarkus.security.identity.IdentityProviderManager;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.identity.request.AuthenticationRequest;
import io.quarkus.vertx.http.runtime.security.ChallengeData;
import io.quarkus.vertx.http.runtime.security.HttpAuthenticationMechanism;
import io.quarkus.vertx.http.runtime.security.HttpCredentialTransport;
import io.smallrye.mutiny.Uni;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Knows people by the sign-in cookie. A cookie that is unknown or ended leaves the request without a person. */
@ApplicationScoped
class SignInMechanism implements HttpAuthenticationMechanism {
    private static final List<String> STATIC = List.of("/css/", "/js/", "/img/", "/fonts/", "/webjars/", "/q/");
    private static final int SIGN_IN_FIRST = 401;

    private final SignInCookie cookie;

    SignInMechanism(SignInCookie cookie) {
        this.cookie = cookie;
    }

    @Override
    public Uni<SecurityIdentity> authenticate(RoutingContext routing, IdentityProviderManager people) {
        Optional<String> id = STATIC.stream().anyMatch(routing.normalizedPath()::startsWith)
                ? Optional.empty()
                : cookie.read(routing);
        if (id.isEmpty()) {
            return Uni.createFrom().nullItem();
        }
        return people.authenticate(new SignInRequest(SignInId.hash(id.get())))
                .map(identity -> identity.isAnonymous() ? null : identity);
    }

    @Override
    public Uni<ChallengeData> getChallenge(RoutingContext routing) {
        return Uni.createFrom().item(new ChallengeData(SIGN_IN_FIRST, null, null));
    }

    @Override
    public Set<Class<? extends AuthenticationRequest>> getCredentialTypes() {
        return Set.of(SignInRequest.class);
    }

    @Override
    public Uni<HttpCredentialTransport> getCredentialTransport(RoutingContext routing) {
        return Uni.createFrom()
                .item(new HttpCredentialTransport(HttpCredentialTransport.Type.COOKIE, "sign-in cookie"));
    }
}
