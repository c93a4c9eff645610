package org.riseandgel.account.signin;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.riseandgel.Browserless;
import org.riseandgel.Browserless.Answer;
import org.riseandgel.SignedIn;

@QuarkusTest
class SignInTest {
    @Test
    void theRightPasswordOpensTheFirstPageOfTheRole() {
        assertThat(SignedIn.as("apprentice").get("/").location()).isEqualTo("/today");
        assertThat(SignedIn.as("instructor").get("/").location()).isEqualTo("/cohorts");
        assertThat(SignedIn.as("office").get("/").location()).isEqualTo("/office/people");
        assertThat(SignedIn.as("safety-lead").get("/").location()).isEqualTo("/course");
    }

    @Test
    void aCopiedCookieIsDeadAfterSignOut() {
        Browserless person = SignedIn.as("apprentice");
        String copy = person.cookie("rg-sign-in").orElseThrow();
        Browserless thief = Browserless.anonymous().withCookie("rg-sign-in", copy);
        assertThat(thief.get("/account").status()).isEqualTo(200);
        Answer out = person.post("/sign-out");
        assertThat(out.location()).isEqualTo("/sign-in?done=signed-out");
        assertThat(thief.get("/account").location()).isEqualTo("/sign-in?next=%2Faccount");
    }

    @Test
    void withoutTheTokenNobodyIsSignedIn() {
        Browserless browser = Browserless.anonymous();
        Answer refused = browser.postWithoutToken("/sign-in", Map.of("name", "anouk", "password", "x"));
        assertThat(refused.status()).isEqualTo(400);
        assertThat(refused.page().select("h1").text()).isEqualTo("This form is out of date");
        assertThat(browser.cookie("rg-sign-in")).isEmpty();
    }

    @Test
    void anUnknownAddressHasOurOwnPage() {
        Answer answer = Browserless.anonymous().get("/no-such-page");
        assertThat(answer.status()).isEqualTo(404);
        assertThat(answer.page().select("h1").text()).isEqualTo("There is nothing here for you");
    }
}
