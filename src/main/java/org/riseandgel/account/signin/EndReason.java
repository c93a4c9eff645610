package org.riseandgel.account.signin;

/** Why a sign-in was ended before its time. */
public enum EndReason {
    SIGNED_OUT("signed-out"),
    ENDED_ELSEWHERE("ended-elsewhere"),
    DISABLED("disabled"),
    PASSWORD_CHANGED("password-changed"),
    ROLE_CHANGED("role-changed");

    private final String word;

    EndReason(String word) {
        this.word = word;
    }

    String word() {
        return word;
    }
}
