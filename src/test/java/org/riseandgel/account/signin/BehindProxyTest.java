package org.riseandgel.account.signin;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import io.restassured.RestAssured;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.riseandgel.Browserless;
import org.riseandgel.Browserless.Answer;
import org.riseandgel.account.DemoPeople;

/** What changes when a proxy in front encrypts: the browser then sees an https site. */
@QuarkusTest
@TestProfile(BehindProxyTest.Profile.class)
class BehindProxyTest {
    public static class Profile implements QuarkusTestProfile {
        @Override
        public Map<String, String> getConfigOverrides() {
            return Map.of("riseandgel.tls-at-proxy", "true");
        }
    }

    @Test
    void cookiesAreForTlsAndThisHostOnly() {
        Browserless browser = Browserless.anonymous();
        Answer answer = signIn(browser, "https://localhost:" + RestAssured.port);
        assertThat(answer.status()).as(answer.toString()).isEqualTo(303);
        for (String name : new String[] {"__Host-rg-sign-in", "__Host-rg-form"}) {
            assertThat(answer.headers("Set-Cookie")).anySatisfy(cookie -> assertThat(cookie)
                    .startsWith(name + "=")
                    .contains("Secure")
                    .contains("HTTPOnly")
                    .contains("SameSite=Strict")
                    .contains("Path=/")
                    .doesNotContainIgnoringCase("Domain="));
        }
        assertThat(browser.get("/account").header("Strict-Transport-Security")).isEqualTo("max-age=31536000");
        String id = browser.cookie("__Host-rg-sign-in").orElseThrow();
        assertThat(Browserless.anonymous()
                        .withCookie("rg-sign-in", id)
                        .get("/account")
                        .status())
                .as("the name without __Host- is worth nothing here")
                .isEqualTo(303);
    }

    @Test
    void thePlainTextSiteOfTheSameNameIsAnotherOrigin() {
        assertThat(signIn(Browserless.anonymous(), "http://localhost:" + RestAssured.port)
                        .status())
                .isEqualTo(403);
    }

    private static Answer signIn(Browserless browser, String origin) {
        DemoPeople.DemoPerson person = DemoPeople.ALL.get(0);
        return browser.postAsIs(
                "/sign-in",
                Map.of("name", person.signInName(), "password", person.password(), "form-token", browser.token()),
                origin);
    }
}
