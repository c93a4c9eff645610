package org.riseandgel.practice;

import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;
import org.riseandgel.platform.web.SeeOther;

/** Leads to the checks, where the open one can be finished. */
class WaitsForCheckMapper {
    @ServerExceptionMapper
    Response toTheChecks(WaitsForCheck waits) {
        return SeeOther.page(WaitsForCheck.ADDRESS);
    }
}
