package org.riseandgel.account.signin;

import io.quarkus.security.identity.request.BaseAuthenticationRequest;

/** Asks who is behind a sign-in cookie. */
class SignInRequest extends BaseAuthenticationRequest {
    private final byte[] idHash;

    SignInRequest(byte[] idHash) {
        this.idHash = idHash;
    }

    byte[] idHash() {
        return idHash;
    }
}
