package org.riseandgel;

import org.riseandgel.account.DemoPeople;
import org.riseandgel.account.DemoPeople.DemoPerson;

/**
 * People of the demo school, signed in through the sign-in page. Tests run with the demo school filled in, so nothing
 * has to be prepared: {@code SignedIn.as("instructor").get("/cohorts")}.
 */
public final class SignedIn {
    private SignedIn() {}

    /** The first demo person with this role: apprentice, instructor, safety-lead or office. */
    public static Browserless as(String role) {
        return as(DemoPeople.ALL.stream()
                .filter(p -> p.role().equals(role))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no demo person is " + role)));
    }

    /** One demo person, such as {@code SignedIn.asPerson(DemoPeople.ESME)}. */
    public static Browserless asPerson(java.util.UUID id) {
        return as(DemoPeople.ALL.stream()
                .filter(p -> p.id().equals(id))
                .findFirst()
                .orElseThrow());
    }

    /** The password of the one whom {@link #as(String)} signs in, for pages that ask for it again. */
    public static java.util.Map<String, String> passwordOf(String role) {
        return java.util.Map.of(
                "password",
                DemoPeople.ALL.stream()
                        .filter(p -> p.role().equals(role))
                        .findFirst()
                        .orElseThrow()
                        .password());
    }

    private static Browserless as(DemoPerson person) {
        Browserless browser = Browserless.anonymous();
        Browserless.Answer answer = browser.signIn(person.signInName(), person.password());
        if (answer.status() != 303) {
            throw new AssertionError(person.signInName() + " could not sign in: " + answer);
        }
        return browser;
    }
}
