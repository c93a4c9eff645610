package org.riseandgel.account;

import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import org.riseandgel.platform.web.SeeOther;

/** The bare address: sends everybody to the first page of their work. */
@Path("/")
public class HomeResource {
    private final Viewer viewer;

    HomeResource(Viewer viewer) {
        this.viewer = viewer;
    }

    @GET
    @Authenticated
    public Response home() {
        return SeeOther.page(firstPage());
    }

    private String firstPage() {
        if (viewer.isApprentice()) {
            return "/today";
        }
        if (viewer.isInstructor()) {
            return "/cohorts";
        }
        if (viewer.isSafetyLead()) {
            return "/register";
        }
        return viewer.isOffice() ? "/office/people" : "/course";
    }
}
