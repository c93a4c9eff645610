package org.riseandgel.platform.web;

import io.vertx.core.http.Cookie;
import io.vertx.core.http.CookieSameSite;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Named;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * The token that every form carries. It is an HMAC-SHA-256, under the server's key, of a random cookie that only this
 * browser has; another site can neither read the cookie nor work out the token. The cookie stays the same while a
 * person is signed in, so that forms open in two tabs both work, and is replaced at sign-in and sign-out, so that a
 * form opened by one person is never sent as another.
 */
@RequestScoped
@Named("csrf")
public class FormToken {
    private static final String COOKIE = "rg-form";
    private static final String SECURE_COOKIE = "__Host-rg-form";
    private static final int COOKIE_BYTES = 16;
    private static final int SHORTEST_KEY = 32;

    private static final SecureRandom RANDOM = new SecureRandom();

    private final RoutingContext routing;
    private final Caller caller;
    private final byte[] key;
    private String fresh;

    FormToken(RoutingContext routing, Caller caller, @ConfigProperty(name = "riseandgel.form-key") String key) {
        this.routing = routing;
        this.caller = caller;
        if (key.length() < SHORTEST_KEY) {
            throw new IllegalStateException("riseandgel.form-key must have at least " + SHORTEST_KEY + " characters");
        }
        this.key = key.getBytes(StandardCharsets.UTF_8);
    }

    /** The name of the hidden field. */
    public String getParameterName() {
        return "form-token";
    }

    /** The name of the header that carries the token where there is no form. */
    public String getHeaderName() {
        return "X-Form-Token";
    }

    /** The token for the forms of this page; gives the browser its cookie if it has none. */
    public String getToken() {
        String cookie = cookie();
        return of(cookie == null ? renew() : cookie);
    }

    /** Gives the browser another cookie, so that no form opened before works any more. */
    public String renew() {
        byte[] bytes = new byte[COOKIE_BYTES];
        RANDOM.nextBytes(bytes);
        fresh = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
        boolean secure = caller.isSecure(routing.request());
        routing.response()
                .addCookie(Cookie.cookie(name(secure), fresh)
                        .setPath("/")
                        .setHttpOnly(true)
                        .setSecure(secure)
                        .setSameSite(CookieSameSite.STRICT));
        return fresh;
    }

    /** Whether the token belongs to the cookie that came with this request. */
    public boolean isRight(String token) {
        String cookie = cookie();
        return cookie != null
                && token != null
                && MessageDigest.isEqual(
                        of(cookie).getBytes(StandardCharsets.UTF_8), token.getBytes(StandardCharsets.UTF_8));
    }

    private String cookie() {
        if (fresh != null) {
            return fresh;
        }
        Cookie cookie = routing.request().getCookie(name(caller.isSecure(routing.request())));
        return cookie == null || cookie.getValue().isEmpty() ? null : cookie.getValue();
    }

    private static String name(boolean secure) {
        return secure ? SECURE_COOKIE : COOKIE;
    }

    private String of(String cookie) {
        return Hmac.sha256(key, cookie);
    }
}
