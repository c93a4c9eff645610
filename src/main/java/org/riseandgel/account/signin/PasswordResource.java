package org.riseandgel.account.signin;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.jboss.resteasy.reactive.RestForm;
import org.riseandgel.account.Viewer;
import org.riseandgel.platform.web.Problem;
import org.riseandgel.platform.web.SeeOther;

/** Choosing another password. */
@Path("/account/password")
@Authenticated
public class PasswordResource {
    private final PasswordChange change;
    private final Viewer viewer;
    private final SecurityIdentity identity;

    PasswordResource(PasswordChange change, Viewer viewer, SecurityIdentity identity) {
        this.change = change;
        this.viewer = viewer;
        this.identity = identity;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance password(boolean oneTime, List<Problem> problems);

        private Templates() {}
    }

    @GET
    public TemplateInstance password() {
        return Templates.password(viewer.isMustChangePassword(), List.of());
    }

    @POST
    public Response change(
            @RestForm @DefaultValue("") String current,
            @RestForm("new-password") @DefaultValue("") String chosen,
            @RestForm("new-password-again") @DefaultValue("") String again) {
        List<Problem> problems =
                change.change(viewer.getId(), identity.getAttribute(SignInIdentities.SIGN_IN), current, chosen, again);
        return problems.isEmpty()
                ? SeeOther.page(viewer.isMustChangePassword() ? "/" : "/account?done=password")
                : Response.status(422)
                        .entity(Templates.password(viewer.isMustChangePassword(), problems))
                        .build();
    }
}
