package org.riseandgel.platform.web;

import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MultivaluedMap;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;

/** Headers of every page: nothing personal is kept by browsers or proxies, and a TLS site stays one. */
public class ResponseHeaders {
    private static final String ONE_YEAR = "max-age=31536000";

    private final Caller caller;

    ResponseHeaders(Caller caller) {
        this.caller = caller;
    }

    @ServerResponseFilter
    public void add(ContainerResponseContext response, RoutingContext routing) {
        MultivaluedMap<String, Object> headers = response.getHeaders();
        headers.putIfAbsent(HttpHeaders.CACHE_CONTROL, java.util.List.of("no-store"));
        if (caller.isSecure(routing.request())) {
            headers.putSingle("Strict-Transport-Security", ONE_YEAR);
        }
    }
}
