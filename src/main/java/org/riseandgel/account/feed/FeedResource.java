package org.riseandgel.account.feed;

import io.quarkus.arc.All;
import jakarta.annotation.security.PermitAll;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import org.riseandgel.platform.calendar.CalendarEvent;
import org.riseandgel.platform.calendar.CalendarText;

/** A person's dates for a calendar program. The secret in the address lets in: calendar programs cannot sign in. */
@Path(FeedResource.ADDRESS)
public class FeedResource {
    static final String ADDRESS = "/calendar";

    private final CalendarAddresses addresses;
    private final List<CalendarSource> sources;
    private final Clock clock;

    FeedResource(CalendarAddresses addresses, @All List<CalendarSource> sources, Clock clock) {
        this.addresses = addresses;
        this.sources = sources;
        this.clock = clock;
    }

    @GET
    @Path("{secret}.ics")
    @PermitAll
    @Produces(CalendarText.MEDIA_TYPE)
    public String feed(@RestPath String secret) {
        UUID person = addresses.person(secret).orElseThrow(NotFoundException::new);
        List<CalendarEvent> events = sources.stream()
                .flatMap(source -> source.eventsFor(person).stream())
                .toList();
        return CalendarText.of("Rise and Gel", events, clock.instant());
    }
}
