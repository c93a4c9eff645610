package org.riseandgel.account.signin;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.vertx.ext.web.RoutingContext;
import jakarta.annotation.security.PermitAll;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.account.Viewer;
import org.riseandgel.platform.audit.AuditLog;
import org.riseandgel.platform.web.FormToken;
import org.riseandgel.platform.web.House;
import org.riseandgel.platform.web.LocalPath;
import org.riseandgel.platform.web.Problem;
import org.riseandgel.platform.web.SeeOther;

/** Signing in. */
@Path("/sign-in")
public class SignInResource {
    private final PasswordCheck check;
    private final SignIns signIns;
    private final SignInCookie cookie;
    private final FormToken formToken;
    private final AuditLog audit;
    private final Viewer viewer;
    private final House house;

    SignInResource(
            PasswordCheck check,
            SignIns signIns,
            SignInCookie cookie,
            FormToken formToken,
            AuditLog audit,
            Viewer viewer,
            House house) {
        this.check = check;
        this.signIns = signIns;
        this.cookie = cookie;
        this.formToken = formToken;
        this.audit = audit;
        this.viewer = viewer;
        this.house = house;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance page(
                String name, String next, String done, List<Problem> problems, List<DemoPeople.DemoPerson> demoPeople);

        private Templates() {}
    }

    @GET
    @PermitAll
    public Response page(@RestQuery @DefaultValue("") String next, @RestQuery @DefaultValue("") String done) {
        String target = LocalPath.of(next).orElse("/");
        return viewer.isSignedIn()
                ? SeeOther.page(target)
                : Response.ok(page("", target, done, List.of())).build();
    }

    @POST
    @PermitAll
    public Response signIn(
            @RestForm @DefaultValue("") String name,
            @RestForm @DefaultValue("") String password,
            @RestForm @DefaultValue("") String next,
            RoutingContext routing) {
        String target = LocalPath.of(next).orElse("/");
        List<Problem> missing = missing(name, password);
        if (!missing.isEmpty()) {
            return refused(422, page(name, target, "", missing));
        }
        Attempt attempt = check.atSignIn(name, password);
        if (!attempt.isRight()) {
            TemplateInstance again = page(name, target, "", List.of(new Problem("password", attempt.message())));
            return waiting(attempt, refused(attempt.outcome() == Attempt.Outcome.WRONG ? 422 : 429, again));
        }
        open(attempt, routing);
        return SeeOther.page(target);
    }

    private void open(Attempt attempt, RoutingContext routing) {
        endOld(routing);
        cookie.give(routing, signIns.open(attempt.person()));
        formToken.renew();
        audit.note(attempt.person(), "signed-in", attempt.person().toString(), "");
    }

    private void endOld(RoutingContext routing) {
        cookie.read(routing).ifPresent(id -> signIns.end(id, EndReason.SIGNED_OUT));
    }

    private TemplateInstance page(String name, String next, String done, List<Problem> problems) {
        return Templates.page(name, next, done, problems, house.isDemo() ? DemoPeople.ALL : List.of());
    }

    private static Response refused(int status, TemplateInstance page) {
        return Response.status(status).entity(page).build();
    }

    private static Response waiting(Attempt attempt, Response response) {
        return attempt.waitSeconds() == 0
                ? response
                : Response.fromResponse(response)
                        .header("Retry-After", attempt.waitSeconds())
                        .build();
    }

    private static List<Problem> missing(String name, String password) {
        return Stream.of(
                        name.isBlank() ? new Problem("name", "Type your sign-in name.") : null,
                        password.isEmpty() ? new Problem("password", "Type your password.") : null)
                .filter(Objects::nonNull)
                .toList();
    }
}
