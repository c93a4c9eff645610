package org.riseandgel.practice;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.RestForm;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.platform.web.SeeOther;

/** Mixed practice: a session of items from what was begun on earlier days, and what became of them. */
@Path("/practice/mixed")
@RolesAllowed({Roles.APPRENTICE, Roles.INSTRUCTOR})
public class MixedPages {
    private final MixedPractice mixed;
    private final Viewer viewer;

    MixedPages(MixedPractice mixed, Viewer viewer) {
        this.mixed = mixed;
        this.viewer = viewer;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance mixed(MixedPractice.Overview view);

        private Templates() {}
    }

    @GET
    public TemplateInstance mixed() {
        return Templates.mixed(mixed.overview(viewer.getId()));
    }

    /** Goes on to the next item; "another" begins another session when today's is over. */
    @POST
    public Response next(@RestForm String another) {
        return mixed.next(viewer.getId(), another != null)
                .map(draw -> SeeOther.page(DrawPages.address(draw)))
                .orElseGet(() -> SeeOther.page("/practice/mixed"));
    }
}
