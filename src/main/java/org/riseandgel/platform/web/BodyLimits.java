package org.riseandgel.platform.web;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpMethod;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.core.http.HttpVersion;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.Set;

/**
 * How large the body of a request may be. The server's own limit is one for all addresses and has to let the largest file
 * pass; here everything but the few addresses that take large files is held to the usual size. A body whose length is not
 * told in front is taken at none of the others, since it could grow past any limit.
 */
@ApplicationScoped
public class BodyLimits {
    private static final int TOO_LARGE = 413;
    private static final int LENGTH_REQUIRED = 411;
    private static final int AFTER_THE_LIMIT_FOR_ALL = 1;
    private static final Set<HttpMethod> BODILESS = Set.of(HttpMethod.GET, HttpMethod.HEAD, HttpMethod.OPTIONS);

    private final long usual;
    private final Set<String> large;

    BodyLimits(BodySettings settings) {
        this.usual = settings.usualBytes();
        this.large = Set.copyOf(settings.largeAt());
    }

    void watch(@Observes Filters filters) {
        filters.register(this::check, AFTER_THE_LIMIT_FOR_ALL);
    }

    private void check(RoutingContext routing) {
        int refused = large.contains(routing.request().path()) ? 0 : refusal(routing.request());
        if (refused == 0) {
            routing.next();
        } else {
            refuse(routing, refused);
        }
    }

    /** What is still on its way must not be read as the next request; HTTP/2 keeps requests apart by itself. */
    private static void refuse(RoutingContext routing, int status) {
        routing.response().setStatusCode(status);
        if (routing.request().version() != HttpVersion.HTTP_2) {
            routing.response()
                    .putHeader("Connection", "close")
                    .endHandler(ended -> routing.request().connection().close());
        }
        routing.response().end();
    }

    private int refusal(HttpServerRequest request) {
        String length = request.getHeader("Content-Length");
        if (length != null) {
            return Long.parseLong(length) > usual ? TOO_LARGE : 0;
        }
        boolean untold = request.getHeader("Transfer-Encoding") != null
                || request.version() == HttpVersion.HTTP_2 && !BODILESS.contains(request.method());
        return untold ? LENGTH_REQUIRED : 0;
    }
}
