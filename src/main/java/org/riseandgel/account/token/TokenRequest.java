package org.riseandgel.account.token;

import io.quarkus.security.identity.request.BaseAuthenticationRequest;

/** Asks who is behind an access token, and says what it is used for, so that the use can be noted. */
class TokenRequest extends BaseAuthenticationRequest {
    private final String token;
    private final String method;
    private final String path;
    private final String address;

    TokenRequest(String token, String method, String path, String address) {
        this.token = token;
        this.method = method;
        this.path = path;
        this.address = address;
    }

    String token() {
        return token;
    }

    String method() {
        return method;
    }

    String path() {
        return path;
    }

    String address() {
        return address;
    }
}
