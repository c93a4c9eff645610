package org.riseandgel.account.token;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.riseandgel.Browserless;
import org.riseandgel.Browserless.Answer;
import org.riseandgel.MutableClock;
import org.riseandgel.SignedIn;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.account.DemoPeople.DemoPerson;
import org.riseandgel.platform.sql.Sql;

/** Access tokens: shown once, kept as a hash, held to their scopes, ended at once, each use noted. */
@QuarkusTest
class TokenTest {
    private static final String BENCH = "/api/v1/bench";

    @Inject
    Sql sql;

    private Browserless program;

    @BeforeEach
    void program() {
        program = Browserless.anonymous();
    }

    @AfterEach
    void reset() {
        MutableClock.reset();
        sql.change("UPDATE person SET disabled_at = NULL");
    }

    @Test
    void aTokenIsShownOnceAndKeptAsAHash() {
        Browserless owner = SignedIn.as("instructor");
        String token = make(owner, DemoPeople.INSTRUCTOR, "tablet", "bench");
        assertThat(token).hasSize(43);
        assertThat(owner.get("/account/tokens").body()).contains("tablet").doesNotContain(token);
        assertThat(sql.any("SELECT 1 FROM access_token WHERE encode(id_hash, 'escape') LIKE '%' || ? || '%'", token))
                .isFalse();
    }

    @Test
    void aTokenOpensItsScopeWithoutFormTokenAndNothingElse() {
        String token = make(SignedIn.as("instructor"), DemoPeople.INSTRUCTOR, "bench only", "bench");
        assertThat(program.getWithToken(BENCH, token).status()).isEqualTo(200);
        Answer worked = program.postJsonWithToken(BENCH + "/foam-density", "{}", token);
        assertThat(worked.status()).isEqualTo(200);
        assertThat(program.getWithToken("/cohorts", token).status())
                .as("pages know no tokens")
                .isEqualTo(303);
        assertThat(program.getWithToken("/api/v1/benchmarks", token).status()).isIn(403, 404);
    }

    @Test
    void aTokenOutsideItsScopeIsRefusedAsAProblem() {
        String token = make(SignedIn.as("instructor"), DemoPeople.INSTRUCTOR, "door", "register-check");
        Answer refused = program.getWithToken(BENCH, token);
        assertThat(refused.status()).isEqualTo(403);
        assertThat(refused.header("Content-Type")).startsWith("application/problem+json");
        assertThat(refused.body()).contains("not for this address");
    }

    @Test
    void nobodyGivesATokenMoreThanTheirRolesAllow() {
        Browserless apprentice = SignedIn.asPerson(DemoPeople.ANOUK);
        Answer page = apprentice.post("/account/tokens", form(DemoPeople.ANOUK, "greedy", "cohort-progress"));
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.page().select(".error-summary").text()).contains("Tick at least one thing");
        assertThat(page.page().selectFirst("#name").attr("value")).isEqualTo("greedy");
    }

    @Test
    void makingOneTakesTheOwnPassword() {
        Browserless owner = SignedIn.as("instructor");
        Map<String, String> fields = form(DemoPeople.INSTRUCTOR, "no password", "bench");
        fields.put("password", "");
        Answer page = owner.post("/account/tokens", fields);
        assertThat(page.status()).isEqualTo(422);
        assertThat(sql.any("SELECT 1 FROM access_token WHERE name = 'no password'"))
                .isFalse();
    }

    @Test
    void anEndedTokenOpensNothing() {
        Browserless owner = SignedIn.as("instructor");
        String token = make(owner, DemoPeople.INSTRUCTOR, "to be ended", "bench");
        assertThat(owner.post("/account/tokens/" + id("to be ended") + "/end").status())
                .isEqualTo(303);
        assertThat(program.getWithToken(BENCH, token).status()).isEqualTo(401);
    }

    @Test
    void anotherPersonsTokenIsNotFound() {
        make(SignedIn.as("instructor"), DemoPeople.INSTRUCTOR, "not yours", "bench");
        Browserless stranger = SignedIn.asPerson(DemoPeople.ANOUK);
        assertThat(stranger.get("/account/tokens/" + id("not yours")).status()).isEqualTo(404);
        assertThat(stranger.post("/account/tokens/" + id("not yours") + "/end").status())
                .isEqualTo(404);
    }

    @Test
    void aTokenRunsOut() {
        String token = make(SignedIn.as("instructor"), DemoPeople.INSTRUCTOR, "short", "bench");
        MutableClock.advance(Duration.ofDays(30).minusMinutes(5));
        assertThat(program.getWithToken(BENCH, token).status()).isEqualTo(200);
        MutableClock.advance(Duration.ofMinutes(6));
        assertThat(program.getWithToken(BENCH, token).status()).isEqualTo(401);
    }

    @Test
    void aDisabledPersonsTokenOpensNothingAtOnce() {
        String token = make(SignedIn.as("instructor"), DemoPeople.INSTRUCTOR, "disabled", "bench");
        assertThat(program.getWithToken(BENCH, token).status()).isEqualTo(200);
        sql.change("UPDATE person SET disabled_at = now() WHERE id = ?", DemoPeople.INSTRUCTOR);
        assertThat(program.getWithToken(BENCH, token).status()).isEqualTo(401);
    }

    @Test
    void eachUseIsNoted() {
        Browserless owner = SignedIn.as("instructor");
        String token = make(owner, DemoPeople.INSTRUCTOR, "noted", "bench");
        program.getWithToken(BENCH, token);
        program.getWithToken(BENCH + "/foam-density", token);
        String uses = owner.get("/account/tokens/" + id("noted")).page().text();
        assertThat(uses).contains("GET /api/v1/bench/foam-density").contains("Uses 2");
    }

    @Test
    void anythingButARightTokenIsRefused() {
        for (String wrong : List.of("", "x", "a".repeat(43), "a".repeat(4_000), "%00")) {
            Answer answer = program.getWithToken(BENCH, wrong);
            assertThat(answer.status()).as(wrong).isEqualTo(401);
        }
    }

    @Test
    void aWrongTokenIsNotMadeGoodByACookie() {
        Browserless owner = SignedIn.as("instructor");
        String cookie = owner.cookie("rg-sign-in").orElse("");
        assertThat(owner.get(BENCH).status()).isEqualTo(200);
        Answer answer = Browserless.anonymous().withCookie("rg-sign-in", cookie).getWithToken(BENCH, "a".repeat(43));
        assertThat(answer.status()).isEqualTo(401);
    }

    private static String make(Browserless owner, java.util.UUID person, String name, String scope) {
        Answer made = owner.post("/account/tokens", form(person, name, scope));
        assertThat(made.status()).as(made.toString()).isEqualTo(200);
        Element code = made.page().selectFirst("code.secret");
        assertThat(code).isNotNull();
        return code.text();
    }

    private static Map<String, String> form(java.util.UUID person, String name, String scope) {
        Map<String, String> fields = new HashMap<>();
        fields.put("name", name);
        fields.put("scope", scope);
        fields.put("days", "30");
        fields.put(
                "password",
                DemoPeople.ALL.stream()
                        .filter(one -> one.id().equals(person))
                        .map(DemoPerson::password)
                        .findFirst()
                        .orElseThrow());
        return fields;
    }

    private String id(String name) {
        return sql.first("SELECT id::text AS id FROM access_token WHERE name = ?", row -> row.text("id"), name)
                .orElseThrow();
    }
}
