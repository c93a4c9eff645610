package org.riseandgel.account.signin;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.account.People;
import org.riseandgel.account.PersonView;
import org.riseandgel.account.Viewer;
import org.riseandgel.platform.audit.AuditLog;
import org.riseandgel.platform.time.SchoolTime;
import org.riseandgel.platform.web.SeeOther;

/** A person's own data and own sign-ins. */
@Path("/account")
@Authenticated
public class AccountResource {
    private final People people;
    private final SignIns signIns;
    private final SchoolTime time;
    private final AuditLog audit;
    private final Viewer viewer;
    private final SecurityIdentity identity;

    AccountResource(
            People people, SignIns signIns, SchoolTime time, AuditLog audit, Viewer viewer, SecurityIdentity identity) {
        this.people = people;
        this.signIns = signIns;
        this.time = time;
        this.audit = audit;
        this.viewer = viewer;
        this.identity = identity;
    }

    /** A sign-in as the page shows it. */
    record Line(UUID id, String since, String lastSeen, String address, String browser, boolean thisOne) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance account(PersonView person, List<Line> lines, String done);

        private Templates() {}
    }

    @GET
    public TemplateInstance account(@RestQuery @DefaultValue("") String done) {
        PersonView person = people.find(viewer.getId()).orElseThrow(NotFoundException::new);
        List<Line> lines =
                signIns.openOf(viewer.getId()).stream().map(this::line).toList();
        return Templates.account(person, lines, done);
    }

    /** Asked by a page that is about to be left alone for too long; being asked is what keeps the sign-in. */
    @GET
    @Path("still-here")
    public Response stillHere() {
        return Response.noContent().build();
    }

    @POST
    @Path("sign-ins/{id}/end")
    public Response end(@RestPath UUID id) {
        if (!signIns.endOne(viewer.getId(), id)) {
            throw new NotFoundException();
        }
        audit.note(viewer.getId(), "sign-in-ended", viewer.getId().toString(), id.toString());
        return SeeOther.page("/account?done=ended");
    }

    @POST
    @Path("sign-ins/end-others")
    public Response endOthers() {
        int ended = signIns.endOthersOf(viewer.getId(), current(), EndReason.ENDED_ELSEWHERE);
        audit.note(viewer.getId(), "sign-ins-ended", viewer.getId().toString(), "" + ended);
        return SeeOther.page("/account?done=ended");
    }

    private Line line(OwnSignIn s) {
        return new Line(
                s.id(),
                time.dateAndTime(s.since()),
                time.dateAndTime(s.lastSeen()),
                s.address(),
                s.browser(),
                s.id().equals(current()));
    }

    private UUID current() {
        return identity.getAttribute(SignInIdentities.SIGN_IN);
    }
}
