package org.riseandgel.account.setup;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.PermitAll;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.platform.school.SchoolSettings;
import org.riseandgel.platform.web.SeeOther;

/** The one page there is before the school is set up. */
@Path("/welcome")
@PermitAll
public class WelcomeResource {
    private final SchoolSettings settings;

    WelcomeResource(SchoolSettings settings) {
        this.settings = settings;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance welcome(String done);

        private Templates() {}
    }

    @GET
    public Response welcome(@RestQuery @DefaultValue("") String done) {
        return settings.school().isPresent()
                ? SeeOther.page("/sign-in")
                : Response.ok(Templates.welcome(done)).build();
    }
}
