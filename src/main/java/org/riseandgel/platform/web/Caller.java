package org.riseandgel.platform.web;

import io.quarkus.arc.Arc;
import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Where a request comes from and over what kind of line. */
@ApplicationScoped
public class Caller {
    private static final int LONGEST_BROWSER = 200;

    private final CurrentVertxRequest current;
    private final boolean tlsAtProxy;

    Caller(
            CurrentVertxRequest current,
            @ConfigProperty(name = "riseandgel.tls-at-proxy", defaultValue = "false") boolean tlsAtProxy) {
        this.current = current;
        this.tlsAtProxy = tlsAtProxy;
    }

    /** The caller's network address; empty outside a request. */
    public String address() {
        return request()
                .map(HttpServerRequest::remoteAddress)
                .map(address -> address.hostAddress())
                .orElse("");
    }

    /** What the browser says it is, cut to a length that fits a table. */
    public String browser() {
        String said = request().map(r -> r.getHeader("User-Agent")).orElse("");
        return said.length() <= LONGEST_BROWSER ? said : said.substring(0, LONGEST_BROWSER);
    }

    /** Whether the line is TLS, here or at the proxy in front. */
    public boolean isSecure() {
        return request().map(this::isSecure).orElse(false);
    }

    /** Whether the line of this request is TLS, here or at the proxy in front. */
    public boolean isSecure(HttpServerRequest request) {
        return tlsAtProxy || request.isSSL() || "https".equalsIgnoreCase(request.scheme());
    }

    /** The scheme and authority that the browser sees, as it writes them in its Origin header. */
    public String origin(HttpServerRequest request) {
        String authority =
                request.authority() == null ? "" : request.authority().toString();
        return (isSecure(request) ? "https://" : "http://") + authority;
    }

    private Optional<HttpServerRequest> request() {
        if (!Arc.container().requestContext().isActive()) {
            return Optional.empty();
        }
        return Optional.ofNullable(current.getCurrent()).map(RoutingContext::request);
    }
}
