package org.riseandgel.account.signin;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.riseandgel.Browserless;
import org.riseandgel.Browserless.Answer;
import org.riseandgel.SignedIn;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.account.TestPeople;
import org.riseandgel.account.password.Passwords;
import org.riseandgel.platform.sql.Sql;

@QuarkusTest
class SignInTest {
    private static final String NAME = DemoPeople.ALL.get(0).signInName();
    private static final String PASSWORD = DemoPeople.ALL.get(0).password();

    @Inject
    Passwords passwords;

    @Inject
    Sql sql;

    @Test
    void theRightPasswordOpensTheFirstPageOfTheRole() {
        assertThat(SignedIn.as("apprentice").get("/").location()).isEqualTo("/today");
        assertThat(SignedIn.as("instructor").get("/").location()).isEqualTo("/cohorts");
        assertThat(SignedIn.as("office").get("/").location()).isEqualTo("/office/people");
        assertThat(SignedIn.as("safety-lead").get("/").location()).isEqualTo("/register");
    }

    @Test
    void theNameMayBeTypedWithCapitalsAndOuterSpaces() {
        assertThat(Browserless.anonymous()
                        .signIn("  " + NAME.toUpperCase() + " ", PASSWORD)
                        .status())
                .isEqualTo(303);
    }

    @Test
    void theCookieCannotBeReadByScriptsNorSentFromOtherSites() {
        Answer answer = Browserless.anonymous().signIn(NAME, PASSWORD);
        String cookie = answer.headers("Set-Cookie").stream()
                .filter(c -> c.startsWith("rg-sign-in="))
                .findFirst()
                .orElseThrow();
        assertThat(cookie).contains("HTTPOnly").contains("SameSite=Strict").contains("Path=/");
        // 128 bits in base64 without padding are 22 letters (RFC 4648).
        assertThat(cookie.substring("rg-sign-in=".length()).split(";")[0]).hasSize(22);
    }

    @Test
    void aCopiedCookieIsDeadAfterSignOut() {
        Browserless person = SignedIn.as("apprentice");
        Browserless thief = Browserless.anonymous()
                .withCookie("rg-sign-in", person.cookie("rg-sign-in").orElseThrow());
        assertThat(thief.get("/account").status()).isEqualTo(200);
        Answer out = person.post("/sign-out");
        assertThat(out.location()).isEqualTo("/sign-in?done=signed-out");
        assertThat(out.header("Clear-Site-Data")).isEqualTo("\"cache\", \"storage\"");
        assertThat(person.cookie("rg-sign-in")).isEmpty();
        assertThat(thief.get("/account").location()).isEqualTo("/sign-in?next=%2Faccount");
    }

    @Test
    void aPlantedCookieIsNotTakenOver() {
        Browserless victim = Browserless.anonymous().withCookie("rg-sign-in", "AAAAAAAAAAAAAAAAAAAAAA");
        victim.signIn(NAME, PASSWORD);
        assertThat(victim.cookie("rg-sign-in").orElseThrow()).isNotEqualTo("AAAAAAAAAAAAAAAAAAAAAA");
        assertThat(Browserless.anonymous()
                        .withCookie("rg-sign-in", "AAAAAAAAAAAAAAAAAAAAAA")
                        .get("/account")
                        .status())
                .isEqualTo(303);
    }

    @Test
    void signingInAgainEndsTheSignInBefore() {
        Browserless browser = SignedIn.as("apprentice");
        String before = browser.cookie("rg-sign-in").orElseThrow();
        browser.signIn(NAME, PASSWORD);
        assertThat(Browserless.anonymous()
                        .withCookie("rg-sign-in", before)
                        .get("/account")
                        .status())
                .isEqualTo(303);
    }

    @Test
    void aWrongPasswordAndAnUnknownNameGetTheSameWords() {
        TestPeople.Added known = TestPeople.settled("apprentice");
        Answer wrong = Browserless.anonymous().signIn(known.signInName(), "not the right password");
        Answer unknown = Browserless.anonymous().signIn("nobody.at.all", "not the right password");
        assertThat(wrong.status()).isEqualTo(422);
        assertThat(unknown.status()).isEqualTo(422);
        assertThat(wrong.page().title()).startsWith("Error: ");
        assertThat(wrong.page().select(".error-summary").text())
                .isEqualTo(unknown.page().select(".error-summary").text())
                .contains("do not go together");
        assertThat(wrong.page().select("#name").val()).isEqualTo(known.signInName());
        assertThat(wrong.body()).doesNotContain("not the right password");
    }

    @Test
    void aPasswordStoredWithFewerRoundsIsStoredAnewAtSignIn() {
        TestPeople.Added person = TestPeople.settled("apprentice");
        sql.change(
                "UPDATE person SET password_hash = ? WHERE sign_in_name = ?",
                passwords.hashOneTime(TestPeople.PASSWORD),
                person.signInName());
        TestPeople.signIn(person);
        assertThat(sql.any(
                        "SELECT 1 FROM person WHERE sign_in_name = ? AND password_hash LIKE 'pbkdf2-sha512$210000$%'",
                        person.signInName()))
                .isTrue();
        TestPeople.signIn(person);
    }

    @Test
    void emptyFieldsAreAskedForAtTheField() {
        Answer answer = Browserless.anonymous().signIn("", "");
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.page().select(".error-summary a").eachAttr("href")).containsExactly("#name", "#password");
    }

    @Test
    void hostileTextInTheNameIsOnlyAWrongName() {
        for (String name : new String[] {"a\u0000b", "' OR 1=1 --", "\uD800", "x".repeat(10_000)}) {
            assertThat(Browserless.anonymous()
                            .signIn(name, "whatever it may be")
                            .status())
                    .isIn(422, 429);
        }
    }

    @Test
    void afterSigningInOneGoesOnWhereOneWanted() {
        Answer away = Browserless.anonymous().get("/account?done=ended");
        assertThat(away.location()).isEqualTo("/sign-in?next=%2Faccount%3Fdone%3Dended");
        Browserless browser = Browserless.anonymous();
        assertThat(browser.get(away.location())
                        .page()
                        .select("input[name=next]")
                        .first()
                        .val())
                .isEqualTo("/account?done=ended");
        assertThat(browser.post("/sign-in", Map.of("name", NAME, "password", PASSWORD, "next", "/account?done=ended"))
                        .location())
                .isEqualTo("/account?done=ended");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "https://elsewhere.example/",
                "//elsewhere.example/",
                "/\\elsewhere.example",
                "\\\\elsewhere.example",
                "javascript:alert(1)",
                "/a\r\nSet-Cookie: x=y",
                "account",
                ""
            })
    void nobodyIsSentToAnotherSite(String next) {
        Answer answer =
                Browserless.anonymous().post("/sign-in", Map.of("name", NAME, "password", PASSWORD, "next", next));
        assertThat(answer.location()).isEqualTo("/");
        assertThat(answer.header("Location")).startsWith(Browserless.origin());
    }

    @Test
    void aFormOfAnotherSiteIsRefused() {
        Browserless browser = Browserless.anonymous();
        Answer refused =
                browser.postFrom("https://elsewhere.example", "/sign-in", Map.of("name", NAME, "password", PASSWORD));
        assertThat(refused.status()).isEqualTo(403);
        assertThat(browser.cookie("rg-sign-in")).isEmpty();
        assertThat(browser.postFrom("null", "/sign-in", Map.of("name", NAME, "password", PASSWORD))
                        .status())
                .isEqualTo(403);
        assertThat(browser.postAsIs("/sign-in", Map.of("form-token", browser.token()), null)
                        .status())
                .isEqualTo(403);
    }

    @Test
    void withoutTheRightTokenNobodyIsSignedIn() {
        Browserless browser = Browserless.anonymous();
        browser.token();
        Map<String, String> fields = Map.of("name", NAME, "password", PASSWORD);
        Answer refused = browser.postWithoutToken("/sign-in", fields);
        assertThat(refused.status()).isEqualTo(400);
        assertThat(refused.page().select("h1").text()).isEqualTo("This form is out of date");
        String foreign = Browserless.anonymous().token();
        assertThat(browser.postWithoutToken(
                                "/sign-in", Map.of("name", NAME, "password", PASSWORD, "form-token", foreign))
                        .status())
                .isEqualTo(400);
        assertThat(browser.cookie("rg-sign-in")).isEmpty();
    }

    @Test
    void aFormOfTenThousandFieldsIsTooLargeAndBreaksNothing() {
        Map<String, String> fields = new HashMap<>(Map.of("name", NAME, "password", PASSWORD));
        IntStream.range(0, 10_000).forEach(i -> fields.put("field" + i, "x"));
        Browserless browser = Browserless.anonymous();
        Answer answer = browser.post("/sign-in", fields);
        assertThat(answer.status()).isEqualTo(413);
        assertThat(answer.page().text()).contains("too large").contains("Nothing was changed");
        assertThat(browser.cookie("rg-sign-in")).isEmpty();
    }

    @Test
    void formsInTwoTabsBothWork() {
        Browserless browser = SignedIn.as("apprentice");
        String first =
                browser.get("/account").page().select("input[name=form-token]").val();
        String second = browser.get("/account/password")
                .page()
                .select("input[name=form-token]")
                .val();
        assertThat(second).isEqualTo(first);
        assertThat(browser.postWithoutToken("/account/sign-ins/end-others", Map.of("form-token", first))
                        .status())
                .isEqualTo(303);
    }

    @Test
    void aFormOpenedByOnePersonIsNotSentAsAnother() {
        Browserless browser = SignedIn.as("apprentice");
        String old = browser.token();
        browser.post("/sign-out");
        browser.signIn(NAME, PASSWORD);
        assertThat(browser.postWithoutToken("/account/sign-ins/end-others", Map.of("form-token", old))
                        .status())
                .isEqualTo(400);
    }

    @Test
    void aFormSentAfterTheSignInEndedSaysThatNothingWasChanged() {
        Answer answer = Browserless.anonymous().post("/account/sign-ins/end-others");
        assertThat(answer.status()).isEqualTo(401);
        assertThat(answer.page().text()).contains("Nothing was changed");
    }

    @Test
    void whatOneMayNotSeeLooksLikeWhatIsNotThere() {
        Answer hidden = SignedIn.as("apprentice").get("/office/people");
        Answer missing = SignedIn.as("apprentice").get("/no-such-page");
        assertThat(hidden.status()).isEqualTo(404);
        assertThat(missing.status()).isEqualTo(404);
        assertThat(hidden.page().select("main").html())
                .isEqualTo(missing.page().select("main").html());
    }

    @Test
    void anUnknownAddressHasOurOwnPage() {
        Answer answer = Browserless.anonymous().get("/no-such-page");
        assertThat(answer.status()).isEqualTo(404);
        assertThat(answer.page().select("h1").text()).isEqualTo("There is nothing here for you");
        Answer api = Browserless.anonymous().get("/api/v1/no-such-thing");
        assertThat(api.status()).isEqualTo(404);
        assertThat(api.header("Content-Type")).startsWith("application/problem+json");
    }

    @Test
    void everyPageCarriesItsHeaders() {
        for (String path : new String[] {"/sign-in", "/no-such-page"}) {
            Answer page = Browserless.anonymous().get(path);
            assertThat(page.header("Content-Security-Policy"))
                    .isEqualTo("default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src"
                            + " 'self'; connect-src 'self'; manifest-src 'self'; form-action 'self'; frame-ancestors"
                            + " 'none'; base-uri 'none'; object-src 'none'");
            assertThat(page.header("X-Content-Type-Options")).isEqualTo("nosniff");
            assertThat(page.header("Referrer-Policy")).isEqualTo("same-origin");
            assertThat(page.header("Cross-Origin-Opener-Policy")).isEqualTo("same-origin");
            assertThat(page.header("Cache-Control")).isEqualTo("no-store");
            assertThat(page.page().select("style, [style], script:not([src])")).isEmpty();
        }
        assertThat(SignedIn.as("apprentice").get("/account").header("Cache-Control"))
                .isEqualTo("no-store");
        assertThat(Browserless.anonymous().get("/css/app.css").header("Cache-Control"))
                .doesNotContain("no-store");
    }
}
