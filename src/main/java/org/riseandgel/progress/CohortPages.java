package org.riseandgel.progress;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import org.riseandgel.account.CohortView;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;

/** Cohorts and their boards: an instructor's own, and all of them for the office. */
@Path("/cohorts")
@RolesAllowed({Roles.INSTRUCTOR, Roles.OFFICE})
public class CohortPages {
    private final Boards boards;
    private final Viewer viewer;

    CohortPages(Boards boards, Viewer viewer) {
        this.boards = boards;
        this.viewer = viewer;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance cohorts(List<CohortView> cohorts, boolean office);

        static native TemplateInstance board(Boards.Board board);

        private Templates() {}
    }

    @GET
    public TemplateInstance cohorts() {
        return Templates.cohorts(boards.cohorts(asker()), viewer.isOffice());
    }

    @GET
    @Path("/{cohort}")
    public TemplateInstance board(@RestPath UUID cohort) {
        return boards.board(asker(), cohort).map(Templates::board).orElseThrow(NotFoundException::new);
    }

    private Boards.Asker asker() {
        return new Boards.Asker(viewer.getId(), viewer.isOffice());
    }
}
