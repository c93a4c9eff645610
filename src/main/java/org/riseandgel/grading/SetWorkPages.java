package org.riseandgel.grading;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.platform.web.SeeOther;

/** An apprentice's graded sets: what is to be done and until when. */
@Path("/set-work")
@RolesAllowed(Roles.APPRENTICE)
public class SetWorkPages {
    private final LearnerSets sets;
    private final WorkDesk desk;
    private final Viewer viewer;

    SetWorkPages(LearnerSets sets, WorkDesk desk, Viewer viewer) {
        this.sets = sets;
        this.desk = desk;
        this.viewer = viewer;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance sets(List<LearnerSets.SetView> sets);

        static native TemplateInstance set(LearnerSets.SetView view);

        private Templates() {}
    }

    @GET
    public TemplateInstance sets() {
        return Templates.sets(sets.of(viewer.getId()));
    }

    @GET
    @Path("/{set}")
    public TemplateInstance set(@RestPath UUID set) {
        return sets.view(viewer.getId(), set).map(Templates::set).orElseThrow(NotFoundException::new);
    }

    /** Begins a try, or takes up the open one; where none may be begun, the set's page says why. */
    @POST
    @Path("/{set}/begin")
    public Response begin(@RestPath UUID set) {
        GradedSet found = sets.set(viewer.getId(), set).orElseThrow(NotFoundException::new);
        return desk.begin(viewer.getId(), found)
                .map(work -> SeeOther.page(TryPages.address(work)))
                .orElseGet(() -> SeeOther.page("/set-work/" + set));
    }
}
