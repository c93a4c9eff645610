package org.riseandgel.grading;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.platform.audit.AuditLog;
import org.riseandgel.platform.table.TableFile;

/** The results of all graded sets of a cohort, on one page and as tables that leave. Each download is noted. */
@Path("/cohorts/{cohort}/results")
@RolesAllowed({Roles.INSTRUCTOR, Roles.OFFICE})
public class CohortResultPages {
    private final GradingAccess access;
    private final CohortResults results;
    private final AuditLog audit;
    private final Viewer viewer;

    CohortResultPages(GradingAccess access, CohortResults results, AuditLog audit, Viewer viewer) {
        this.access = access;
        this.results = results;
        this.audit = audit;
        this.viewer = viewer;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance results(CohortResults.View view);

        private Templates() {}
    }

    @GET
    public TemplateInstance results(@RestPath UUID cohort) {
        return Templates.results(find(cohort));
    }

    @GET
    @Path("/export.{format}")
    public Response export(@RestPath UUID cohort, @RestPath String format) throws IOException {
        CohortResults.View view = find(cohort);
        TableFile.Format wanted = TableFile.Format.byEnding(format).orElseThrow(NotFoundException::new);
        TableFile file = TableFile.write(CohortResults.table(view), wanted);
        audit.note(viewer.getId(), "cohort-results-exported", cohort.toString(), format + " " + file.digest());
        return file.download("cohort-results", wanted);
    }

    private CohortResults.View find(UUID cohort) {
        return access.cohort(cohort).map(results::of).orElseThrow(NotFoundException::new);
    }
}
