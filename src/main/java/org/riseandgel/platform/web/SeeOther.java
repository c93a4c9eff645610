package org.riseandgel.platform.web;

import jakarta.ws.rs.core.Response;
import java.net.URI;

/** After a change the browser is sent to look at the result, so that reloading changes nothing again. */
public final class SeeOther {
    private SeeOther() {}

    /** A 303 answer to a path on this server. */
    public static Response page(String path) {
        return Response.status(Response.Status.SEE_OTHER)
                .location(URI.create(path))
                .build();
    }
}
