package org.riseandgel.account.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.riseandgel.Browserless;
import org.riseandgel.Browserless.Answer;
import org.riseandgel.SignedIn;
import org.riseandgel.platform.school.SchoolSettings;
import org.riseandgel.platform.sql.Sql;

@QuarkusTest
class SetUpTest {
    private static final String PASSWORD = "violet hinge over gravel";

    @Inject
    Founding founding;

    @Inject
    SetUpKey key;

    @Inject
    Sql sql;

    @Inject
    SchoolSettings settings;

    /** Other tests find the demo school as they expect it. */
    @AfterEach
    void demoAgain() {
        sql.change("UPDATE school SET demo = true");
        if (founding.isFounded()) {
            founding.eraseDemo();
        }
        key.kill();
        founding.foundDemo();
    }

    @Test
    void theDemoIsErasedOnlyWhenConfirmedAndThenASchoolCanBeFounded() {
        Browserless office = SignedIn.as("office");
        Answer unsure = office.post("/office/demo/erase");
        assertThat(unsure.status()).isEqualTo(422);
        assertThat(unsure.page().select(".error-summary a").attr("href")).isEqualTo("#sure");
        assertThat(founding.isFounded()).isTrue();
        assertThat(office.postWithoutToken("/office/demo/erase", Map.of("sure", "yes"))
                        .status())
                .isEqualTo(400);
        assertThat(founding.isFounded()).isTrue();

        assertThat(office.post("/office/demo/erase", Map.of("sure", "yes")).location())
                .isEqualTo("/welcome?done=erased");
        assertThat(sql.any("SELECT 1 FROM person UNION ALL SELECT 1 FROM sign_in UNION ALL SELECT 1 FROM cohort"))
                .isFalse();
        assertThat(office.get("/account").followAll().page().select("h1").text())
                .isEqualTo("This school has not been set up yet");
        assertThat(Browserless.anonymous().get("/sign-in").location()).isEqualTo("/welcome");
        assertThat(Browserless.anonymous().get("/sign-in").follow().page().text())
                .contains("shows an address");

        foundAndSignIn(key.address().replaceFirst("http://[^/]+", ""));
    }

    private void foundAndSignIn(String address) {
        assertThat(address).matches("/set-up\\?key=[A-Za-z0-9_-]{22}");
        Browserless browser = Browserless.anonymous();
        assertThat(browser.get(address).page().select("select#zone option")).hasSizeGreaterThan(300);
        Answer founded = browser.postAsIs("/set-up", fields(browser, Map.of()), Browserless.origin());
        assertThat(founded.location()).as(founded.toString()).isEqualTo("/sign-in?done=founded");
        assertThat(settings.school()).hasValueSatisfying(school -> {
            assertThat(school.name()).isEqualTo("Harbour Street School");
            assertThat(school.demo()).isFalse();
        });
        assertThat(browser.get(address).status()).as("the key is dead").isEqualTo(404);
        assertThat(browser.postAsIs("/set-up", fields(browser, Map.of()), Browserless.origin())
                        .status())
                .isEqualTo(404);
        assertThat(browser.get("/sign-in").page().text()).doesNotContain("demo school");
        assertThat(browser.signIn("first.office", PASSWORD).location()).isEqualTo("/");
        assertThat(browser.get("/office/people").status()).isEqualTo(200);
        assertThat(browser.get("/office/demo").status()).isEqualTo(404);
        assertThat(browser.post("/office/demo/erase", Map.of("sure", "yes")).status())
                .isEqualTo(404);
        assertThatThrownBy(founding::eraseDemo).hasMessageContaining("not the demo school");
        assertThatThrownBy(founding::foundDemo).as("a second school").isInstanceOf(IllegalStateException.class);
        assertThat(sql.list("SELECT name FROM school", row -> row.text("name")))
                .containsExactly("Harbour Street School");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "school         | '  '            | school",
                "zone           | Middle/Earth    | zone",
                "mark           | BOTH            | mark-point",
                "emergency      | ''              | emergency",
                "name           | ''              | name",
                "sign-in-name   | Ö               | sign-in-name",
                "password       | short           | password",
                "password       | Harbour Street School | password",
                "password-again | something else  | password-again"
            })
    void whatIsWrongIsShownAtItsFieldAndNothingIsFounded(String field, String value, String at) {
        founding.eraseDemo();
        key.make();
        Browserless browser = Browserless.anonymous();
        Answer answer = browser.postAsIs("/set-up", fields(browser, Map.of(field, value)), Browserless.origin());
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.page().title()).startsWith("Error: ");
        assertThat(answer.page().select(".error-summary a").eachAttr("href")).contains("#" + at);
        assertThat(answer.page().select("#" + at)).isNotEmpty();
        assertThat(answer.page().select("#emergency").val()).isEqualTo(field.equals("emergency") ? "" : "Bell 112");
        assertThat(answer.body()).doesNotContain(PASSWORD);
        assertThat(founding.isFounded()).isFalse();
    }

    @Test
    void withoutTheKeyNothingIsFounded() {
        founding.eraseDemo();
        key.make();
        Browserless browser = Browserless.anonymous();
        for (String wrong : new String[] {"", "AAAAAAAAAAAAAAAAAAAAAA"}) {
            assertThat(browser.get("/set-up?key=" + wrong).status()).isEqualTo(404);
            assertThat(browser.get("/set-up?key=" + wrong).page().text()).contains("does not work");
            assertThat(browser.postAsIs("/set-up", fields(browser, Map.of("key", wrong)), Browserless.origin())
                            .status())
                    .isEqualTo(404);
            assertThat(browser.postAsIs("/set-up/demo", fields(browser, Map.of("key", wrong)), Browserless.origin())
                            .status())
                    .isEqualTo(404);
        }
        Map<String, String> tokenless = fields(browser, Map.of());
        tokenless.remove("form-token");
        assertThat(browser.postWithoutToken("/set-up", tokenless).status()).isEqualTo(400);
        assertThat(founding.isFounded()).isFalse();
    }

    @Test
    void aNewKeyReplacesTheOld() {
        founding.eraseDemo();
        key.make();
        String old = realKey();
        key.make();
        assertThat(Browserless.anonymous().get("/set-up?key=" + old).status()).isEqualTo(404);
        assertThat(Browserless.anonymous().get("/set-up?key=" + realKey()).status())
                .isEqualTo(200);
    }

    @Test
    void theDemoCanBeFilledInFromTheSetUpPage() {
        founding.eraseDemo();
        key.make();
        Browserless browser = Browserless.anonymous();
        assertThat(browser.postAsIs("/set-up/demo", fields(browser, Map.of()), Browserless.origin())
                        .location())
                .isEqualTo("/sign-in?done=demo");
        assertThat(browser.get("/sign-in").page().select(".demo-banner")).isNotEmpty();
        SignedIn.as("instructor");
    }

    @Test
    void theDemoIsRefusedWhereOthersCouldReachIt() {
        Founding reachable = new Founding(null, null, null, null, null, null, "0.0.0.0");
        assertThat(reachable.mayBeDemo()).isFalse();
        assertThatThrownBy(reachable::foundDemo)
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("this computer only");
        assertThat(Loopback.is("127.0.0.1")).isTrue();
        assertThat(Loopback.is("localhost")).isTrue();
        assertThat(Loopback.is("::1")).isTrue();
        assertThat(Loopback.is("192.168.1.4")).isFalse();
    }

    private String realKey() {
        return key.address().replaceFirst(".*key=", "");
    }

    private Map<String, String> fields(Browserless browser, Map<String, String> changed) {
        Map<String, String> fields = new HashMap<>(Map.of(
                "school", "Harbour Street School",
                "zone", "Europe/Lisbon",
                "mark", "COMMA",
                "emergency", "Bell 112",
                "name", "First Office",
                "sign-in-name", "first.office",
                "password", PASSWORD,
                "password-again", PASSWORD,
                "form-token", tokenFromSetUpPage(browser)));
        fields.put("key", realKey());
        fields.putAll(changed);
        return fields;
    }

    private String tokenFromSetUpPage(Browserless browser) {
        String page = founding.isFounded() ? "/sign-in" : "/set-up?key=" + realKey();
        return browser.get(page).page().select("input[name=form-token]").first().val();
    }
}
