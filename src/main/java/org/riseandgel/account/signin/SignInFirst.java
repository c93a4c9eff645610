package org.riseandgel.account.signin;

import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.security.UnauthorizedException;
import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.core.Response;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;
import org.riseandgel.platform.web.ErrorPages;
import org.riseandgel.platform.web.SeeOther;

/** What happens to a request that needs somebody signed in. */
public class SignInFirst {
    private final ErrorPages pages;
    private final RoutingContext routing;

    SignInFirst(ErrorPages pages, RoutingContext routing) {
        this.pages = pages;
        this.routing = routing;
    }

    @ServerExceptionMapper
    public Response notSignedIn(UnauthorizedException e) {
        String method = routing.request().method().name();
        boolean reads = method.equals("GET") || method.equals("HEAD");
        boolean page = !routing.normalizedPath().startsWith("/api/");
        return reads && page
                ? SeeOther.page(
                        "/sign-in?next=" + URLEncoder.encode(routing.request().uri(), StandardCharsets.UTF_8))
                : pages.signInFirst("/");
    }

    @ServerExceptionMapper
    public Response failed(AuthenticationFailedException e) {
        return pages.signInFirst("/");
    }
}
