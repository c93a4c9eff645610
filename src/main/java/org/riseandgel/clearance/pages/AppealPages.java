package org.riseandgel.clearance.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.clearance.Appeals;
import org.riseandgel.clearance.Decisions;
import org.riseandgel.clearance.PersonRecord;
import org.riseandgel.clearance.RegisterProblem;
import org.riseandgel.platform.web.Problem;

/** An appeal, decided by somebody who was not in the decision that it is against. Both stay on record. */
@Path("/register/appeals/{appeal}")
@RolesAllowed({Roles.INSTRUCTOR, Roles.SAFETY_LEAD})
public class AppealPages {
    private final Appeals appeals;
    private final Decisions decisions;
    private final PersonRecord records;
    private final Viewer viewer;

    AppealPages(Appeals appeals, Decisions decisions, PersonRecord records, Viewer viewer) {
        this.appeals = appeals;
        this.decisions = decisions;
        this.records = records;
        this.viewer = viewer;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance appeal(AppealView appeal, String upheld, String reason, List<Problem> problems);

        private Templates() {}
    }

    @GET
    public TemplateInstance appeal(@RestPath UUID appeal) {
        return Templates.appeal(AppealView.of(find(appeal), records), "", "", List.of());
    }

    @POST
    public Response decide(
            @RestPath UUID appeal,
            @RestForm @DefaultValue("") String upheld,
            @RestForm @DefaultValue("") String reason) {
        Appeals.Waiting waiting = find(appeal);
        return Acted.then(
                "/register/waiting?done=appeal",
                () -> {
                    if (!List.of("yes", "no").contains(upheld)) {
                        throw RegisterProblem.with("upheld", "Choose who is right.");
                    }
                    decisions.decideAppeal(viewer.getId(), waiting.person(), appeal, "yes".equals(upheld), reason);
                },
                problems -> Templates.appeal(AppealView.of(waiting, records), upheld, reason, problems));
    }

    private Appeals.Waiting find(UUID appeal) {
        return appeals.open(appeal).orElseThrow(NotFoundException::new);
    }
}
