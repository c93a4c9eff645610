package org.riseandgel.practice;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import org.jboss.resteasy.reactive.RestPath;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;

/** One skill: where somebody stands on its ladder, when it comes back, and what is left to do. */
@Path("/practice/skills")
@RolesAllowed({Roles.APPRENTICE, Roles.INSTRUCTOR})
public class SkillPages {
    private final SkillViews views;
    private final Viewer viewer;

    SkillPages(SkillViews views, Viewer viewer) {
        this.views = views;
        this.viewer = viewer;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance skill(SkillView view);

        private Templates() {}
    }

    @GET
    @Path("/{skill}")
    public TemplateInstance skill(@RestPath String skill) {
        return views.of(viewer.getId(), skill).map(Templates::skill).orElseThrow(NotFoundException::new);
    }
}
