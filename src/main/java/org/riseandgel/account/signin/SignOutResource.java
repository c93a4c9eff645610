package org.riseandgel.account.signin;

import io.vertx.ext.web.RoutingContext;
import jakarta.annotation.security.PermitAll;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import org.riseandgel.platform.web.FormToken;
import org.riseandgel.platform.web.SeeOther;

/** Signing out. */
@Path("/sign-out")
public class SignOutResource {
    private final SignIns signIns;
    private final SignInCookie cookie;
    private final FormToken formToken;

    SignOutResource(SignIns signIns, SignInCookie cookie, FormToken formToken) {
        this.signIns = signIns;
        this.cookie = cookie;
        this.formToken = formToken;
    }

    @POST
    @PermitAll
    public Response signOut(RoutingContext routing) {
        cookie.read(routing).ifPresent(id -> signIns.end(id, EndReason.SIGNED_OUT));
        cookie.takeBack(routing);
        formToken.renew();
        return Response.fromResponse(SeeOther.page("/sign-in?done=signed-out"))
                .header("Clear-Site-Data", "\"cache\", \"storage\"")
                .build();
    }
}
