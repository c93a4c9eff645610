package org.riseandgel.practice;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.platform.web.Problem;
import org.riseandgel.platform.web.SeeOther;

/** How long answers of practice are kept, and what may become counts now. */
@Path("/office/old-answers")
@RolesAllowed(Roles.OFFICE)
public class OldAnswersPage {
    private static final int UNPROCESSABLE = 422;

    private final OldAnswers old;
    private final Viewer viewer;

    OldAnswersPage(OldAnswers old, Viewer viewer) {
        this.old = old;
        this.viewer = viewer;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance answers(OldAnswers.Due due, String done, List<Problem> problems);

        private Templates() {}
    }

    @GET
    public TemplateInstance answers(@RestQuery @DefaultValue("") String done) {
        return Templates.answers(old.due(), done, List.of());
    }

    /** What is erased does not come back, so it takes a tick besides the button. */
    @POST
    public Response purge(@RestForm @DefaultValue("") String sure) {
        if (!"yes".equals(sure)) {
            return Response.status(UNPROCESSABLE)
                    .entity(Templates.answers(
                            old.due(),
                            "",
                            List.of(new Problem("sure", "Tick that you mean it: what is erased does not come back."))))
                    .build();
        }
        old.purge(viewer.getId());
        return SeeOther.page("/office/old-answers?done=purged");
    }
}
