package org.riseandgel.practice;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;

/** Where an apprentice begins: one thing to do next, and what else there is. */
@Path("/today")
@RolesAllowed(Roles.APPRENTICE)
public class TodayPage {
    private final Today today;
    private final Viewer viewer;

    TodayPage(Today today, Viewer viewer) {
        this.today = today;
        this.viewer = viewer;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance today(Today.Home home, String name);

        private Templates() {}
    }

    @GET
    public TemplateInstance today() {
        return Templates.today(today.of(viewer.getId()), viewer.getDisplayName());
    }
}
