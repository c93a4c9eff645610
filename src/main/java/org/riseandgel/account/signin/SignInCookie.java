package org.riseandgel.account.signin;

import io.vertx.core.http.Cookie;
import io.vertx.core.http.CookieSameSite;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import org.riseandgel.platform.web.Caller;

/** The cookie that carries the sign-in. It ends with the browser, and at the server's word before. */
@ApplicationScoped
class SignInCookie {
    private static final String NAME = "rg-sign-in";
    private static final String SECURE_NAME = "__Host-rg-sign-in";

    private final Caller caller;

    SignInCookie(Caller caller) {
        this.caller = caller;
    }

    Optional<String> read(RoutingContext routing) {
        Cookie cookie = routing.request().getCookie(name(routing));
        return Optional.ofNullable(cookie).map(Cookie::getValue).filter(SignInId::isPossible);
    }

    void give(RoutingContext routing, String id) {
        routing.response().addCookie(cookie(routing, id));
    }

    void takeBack(RoutingContext routing) {
        routing.response().addCookie(cookie(routing, "").setMaxAge(0));
    }

    private Cookie cookie(RoutingContext routing, String value) {
        return Cookie.cookie(name(routing), value)
                .setPath("/")
                .setHttpOnly(true)
                .setSecure(caller.isSecure(routing.request()))
                .setSameSite(CookieSameSite.STRICT);
    }

    private String name(RoutingContext routing) {
        return caller.isSecure(routing.request()) ? SECURE_NAME : NAME;
    }
}
