package org.riseandgel.platform.web;

import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Optional;
import java.util.Set;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.jboss.resteasy.reactive.server.WithFormRead;
import org.jboss.resteasy.reactive.server.core.ResteasyReactiveRequestContext;
import org.jboss.resteasy.reactive.server.spi.ResteasyReactiveContainerRequestContext;

/** What every request that may change something must show: that it comes from a page of this server. */
public class RequestGuards {
    private static final Set<String> SAFE = Set.of("GET", "HEAD", "OPTIONS");

    private final Caller caller;
    private final FormToken formToken;
    private final ErrorPages pages;

    RequestGuards(Caller caller, FormToken formToken, ErrorPages pages) {
        this.caller = caller;
        this.formToken = formToken;
        this.pages = pages;
    }

    /** Refuses a changing request that another site sent. */
    @ServerRequestFilter(priority = 100)
    public Optional<Response> fromThisSite(ContainerRequestContext context, RoutingContext routing) {
        boolean fine = SAFE.contains(context.getMethod()) || isSameOrigin(routing.request());
        return fine ? Optional.empty() : Optional.of(pages.foreignOrigin());
    }

    /** Refuses a changing request without the token of a form of ours. */
    @ServerRequestFilter(priority = 200)
    @WithFormRead
    public Optional<Response> withToken(ResteasyReactiveContainerRequestContext context) {
        boolean fine = SAFE.contains(context.getMethod()) || formToken.isRight(tokenOf(context));
        return fine ? Optional.empty() : Optional.of(pages.formOutOfDate());
    }

    private String tokenOf(ResteasyReactiveContainerRequestContext context) {
        String header = context.getHeaderString(formToken.getHeaderName());
        if (header != null || !context.hasEntity()) {
            return header;
        }
        ResteasyReactiveRequestContext request = (ResteasyReactiveRequestContext) context.getServerRequestContext();
        return request.getFormData() == null
                ? null
                : (String) request.getFormParameter(formToken.getParameterName(), true, false);
    }

    /** Origin decides; where a browser sends none, its own word on the site, and at last the page it came from. */
    private boolean isSameOrigin(HttpServerRequest request) {
        String expected = caller.origin(request);
        String origin = request.getHeader("Origin");
        if (origin != null) {
            return origin.equalsIgnoreCase(expected);
        }
        String site = request.getHeader("Sec-Fetch-Site");
        if (site != null) {
            return site.equals("same-origin");
        }
        return originOf(request.getHeader("Referer")).equalsIgnoreCase(expected);
    }

    private static String originOf(String referer) {
        try {
            URI uri = URI.create(referer == null ? "" : referer);
            return uri.getScheme() + "://" + uri.getRawAuthority();
        } catch (IllegalArgumentException e) {
            return "";
        }
    }
}
