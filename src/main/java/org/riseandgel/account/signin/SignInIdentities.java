package org.riseandgel.account.signin;

import io.quarkus.security.identity.AuthenticationRequestContext;
import io.quarkus.security.identity.IdentityProvider;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.runtime.QuarkusPrincipal;
import io.quarkus.security.runtime.QuarkusSecurityIdentity;
import io.smallrye.mutiny.Uni;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import org.riseandgel.account.Viewer;

/** Makes the person behind a sign-in known to the framework; leaves the table alone while memory knows. */
@ApplicationScoped
class SignInIdentities implements IdentityProvider<SignInRequest> {
    /** Attribute that holds the sign-in's public id. */
    static final String SIGN_IN = "signIn";

    private static final SecurityIdentity NOBODY =
            QuarkusSecurityIdentity.builder().setAnonymous(true).build();

    private final SignIns signIns;

    SignInIdentities(SignIns signIns) {
        this.signIns = signIns;
    }

    @Override
    public Class<SignInRequest> getRequestType() {
        return SignInRequest.class;
    }

    @Override
    public Uni<SecurityIdentity> authenticate(SignInRequest request, AuthenticationRequestContext context) {
        Optional<SignIn> known = signIns.remembered(request.idHash());
        if (known != null) {
            return Uni.createFrom().item(identity(known));
        }
        return context.runBlocking(() -> identity(signIns.ask(request.idHash())));
    }

    private static SecurityIdentity identity(Optional<SignIn> signIn) {
        return signIn.map(SignInIdentities::identity).orElse(NOBODY);
    }

    private static SecurityIdentity identity(SignIn signIn) {
        return QuarkusSecurityIdentity.builder()
                .setPrincipal(new QuarkusPrincipal(signIn.personId().toString()))
                .addRoles(signIn.roles())
                .addAttribute(Viewer.DISPLAY_NAME, signIn.displayName())
                .addAttribute(Viewer.MUST_CHANGE, signIn.mustChange())
                .addAttribute(SIGN_IN, signIn.publicId())
                .build();
    }
}
