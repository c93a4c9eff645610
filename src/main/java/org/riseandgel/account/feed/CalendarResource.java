package org.riseandgel.account.feed;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import org.jboss.resteasy.reactive.RestQuery;
import org.riseandgel.account.Viewer;
import org.riseandgel.platform.time.SchoolTime;
import org.riseandgel.platform.web.Caller;
import org.riseandgel.platform.web.SeeOther;

/** The secret address under which a calendar program reads a person's dates. */
@Path("/account/calendar")
@Authenticated
public class CalendarResource {
    private final CalendarAddresses addresses;
    private final Viewer viewer;
    private final SchoolTime time;
    private final Clock clock;
    private final Caller caller;
    private final RoutingContext routing;

    CalendarResource(
            CalendarAddresses addresses,
            Viewer viewer,
            SchoolTime time,
            Clock clock,
            Caller caller,
            RoutingContext routing) {
        this.addresses = addresses;
        this.viewer = viewer;
        this.time = time;
        this.clock = clock;
        this.caller = caller;
        this.routing = routing;
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance calendar(String since, String address, String done);

        private Templates() {}
    }

    @GET
    public TemplateInstance calendar(@RestQuery @DefaultValue("") String done) {
        String since = addresses.since(viewer.getId()).map(time::date).orElse("");
        return Templates.calendar(since, "", done);
    }

    /** Makes an address, which is on the page that answers and nowhere else. */
    @POST
    public TemplateInstance make() {
        String secret = addresses.renew(viewer.getId());
        String address = caller.origin(routing.request()) + FeedResource.ADDRESS + "/" + secret + ".ics";
        return Templates.calendar(time.date(clock.instant()), address, "");
    }

    @POST
    @Path("end")
    public Response end() {
        addresses.revoke(viewer.getId());
        return SeeOther.page("/account/calendar?done=ended");
    }
}
