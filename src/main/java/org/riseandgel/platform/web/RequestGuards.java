package org.riseandgel.platform.web;

import io.quarkus.security.identity.SecurityIdentity;
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
    /** Attribute of an identity that came with a token of its own and not with a cookie. */
    public static final String BY_TOKEN = "byToken";

    private static final Set<String> SAFE = Set.of("GET", "HEAD", "OPTIONS");

    private final Caller caller;
    private final FormToken formToken;
    private final ErrorPages pages;
    private final SecurityIdentity identity;

    RequestGuards(Caller caller, FormToken formToken, ErrorPages pages, SecurityIdentity identity) {
        this.caller = caller;
        this.formToken = formToken;
        this.pages = pages;
        this.identity = identity;
    }

    /**
     * Whether a request shows by itself who sends it. No browser adds such a token on its own, so another site cannot
     * make one send it.
     */
    public static boolean isByToken(SecurityIdentity identity) {
        return Boolean.TRUE.equals(identity.getAttribute(BY_TOKEN));
    }

    /** Refuses a changing request that another site sent. */
    @ServerRequestFilter(priority = 100)
    public Optional<Response> fromThisSite(ContainerRequestContext context, RoutingContext routing) {
        boolean fine = isHarmless(context.getMethod()) || isSameOrigin(routing.request());
        return fine ? Optional.empty() : Optional.of(pages.foreignOrigin());
    }

    /** Refuses a changing request without the token of a form of ours. */
    @ServerRequestFilter(priority = 200)
    @WithFormRead
    public Optional<Response> withToken(ResteasyReactiveContainerRequestContext context) {
        boolean fine = isHarmless(context.getMethod()) || formToken.isRight(tokenOf(context));
        return fine ? Optional.empty() : Optional.of(pages.formOutOfDate());
    }

    private boolean isHarmless(String method) {
        return SAFE.contains(method) || isByToken(identity);
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
