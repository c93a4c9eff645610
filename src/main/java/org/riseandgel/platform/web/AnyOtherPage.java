package org.riseandgel.platform.web;

import jakarta.annotation.security.PermitAll;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;

/** Addresses that nothing else answers, so that the wrong address gets our own page. */
@Path("/{any:.*}")
public class AnyOtherPage {
    @GET
    @PermitAll
    public String nothing() {
        throw new NotFoundException();
    }
}
