package org.riseandgel.account.setup;

import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.Response;
import java.util.Optional;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.riseandgel.platform.school.SchoolSettings;
import org.riseandgel.platform.web.SeeOther;

/** Before there is a school, every page leads to the one that says how to set it up. */
public class NotSetUpYet {
    private final SchoolSettings settings;

    NotSetUpYet(SchoolSettings settings) {
        this.settings = settings;
    }

    @ServerRequestFilter(priority = 250)
    public Optional<Response> check(ContainerRequestContext context) {
        String path = context.getUriInfo().getPath();
        boolean open = path.equals("/welcome") || path.equals("/set-up") || path.startsWith("/set-up/");
        return open || settings.school().isPresent() ? Optional.empty() : Optional.of(SeeOther.page("/welcome"));
    }
}
