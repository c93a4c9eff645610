package org.riseandgel.practice;

import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;
import org.riseandgel.platform.web.SeeOther;

/** Leads to the page that says who may. */
class NotAtTheBenchMapper {
    @ServerExceptionMapper
    Response toTheGate(NotAtTheBench not) {
        return SeeOther.page(not.address());
    }
}
