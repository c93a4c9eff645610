package org.riseandgel.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import org.riseandgel.Browserless;
import org.riseandgel.Browserless.Answer;
import org.riseandgel.SignedIn;

/** People whom a test adds through the office's pages, so that it may disable or change them. */
public final class TestPeople {
    /** A password that keeps all rules; invented. */
    public static final String PASSWORD = "violet hinge over gravel";

    private static final AtomicInteger COUNT = new AtomicInteger();
    private static final String OFFICE_PASSWORD = DemoPeople.ALL.stream()
            .filter(p -> p.role().equals(Roles.OFFICE))
            .findFirst()
            .orElseThrow()
            .password();

    private TestPeople() {}

    /** Somebody who was added by the office. */
    public record Added(String id, String signInName, String oneTimePassword) {}

    /** The demo office's password, which some of its pages ask for again. */
    public static String officePassword() {
        return OFFICE_PASSWORD;
    }

    /** Adds a person who has not signed in yet. */
    public static Added add(String role) {
        String name = "test" + COUNT.incrementAndGet() + "." + Long.toString(System.nanoTime(), 36);
        Answer answer = SignedIn.as(Roles.OFFICE)
                .post(
                        "/office/people/new",
                        Map.of(
                                "name",
                                "Test Person",
                                "sign-in-name",
                                name,
                                "role",
                                role,
                                "cohort",
                                "",
                                "password",
                                OFFICE_PASSWORD));
        assertThat(answer.status()).as(answer.toString()).isEqualTo(200);
        String id = answer.page()
                .selectFirst("a.button[href^=/office/people/]")
                .attr("href")
                .substring(15);
        return new Added(id, name, answer.page().selectFirst("code").text());
    }

    /** Adds a person who has chosen {@link #PASSWORD}. */
    public static Added settled(String role) {
        Added added = add(role);
        Browserless browser = Browserless.anonymous();
        browser.signIn(added.signInName(), added.oneTimePassword());
        Answer changed = browser.post(
                "/account/password",
                Map.of("current", added.oneTimePassword(), "new-password", PASSWORD, "new-password-again", PASSWORD));
        assertThat(changed.status()).as(changed.toString()).isEqualTo(303);
        browser.post("/sign-out");
        return added;
    }

    /** Signs a settled person in. */
    public static Browserless signIn(Added person) {
        Browserless browser = Browserless.anonymous();
        Answer answer = browser.signIn(person.signInName(), PASSWORD);
        assertThat(answer.status()).as(answer.toString()).isEqualTo(303);
        return browser;
    }
}
