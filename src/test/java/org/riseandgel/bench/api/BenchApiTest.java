package org.riseandgel.bench.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.test.junit.QuarkusTest;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.riseandgel.Browserless;
import org.riseandgel.Browserless.Answer;
import org.riseandgel.SignedIn;
import org.riseandgel.bench.Calculation;
import org.riseandgel.bench.Catalogue;
import org.riseandgel.bench.Input;
import org.riseandgel.bench.Result;

@QuarkusTest
class BenchApiTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String BENCH = "/api/v1/bench";

    @Test
    void theListIsTheCatalogueInItsOrder() {
        JsonNode list = json(SignedIn.as("apprentice").get(BENCH), 200);
        assertThat(list.findValuesAsText("id"))
                .isEqualTo(
                        Catalogue.standard().all().stream().map(Calculation::id).toList());
        assertThat(list.get(0).get("address").asText())
                .isEqualTo(BENCH + "/" + list.get(0).get("id").asText());
    }

    @Test
    void everyCalculationIsDescribedAndWorksWithItsDefaults() {
        Browserless apprentice = SignedIn.as("apprentice");
        for (Calculation calculation : Catalogue.standard().all()) {
            JsonNode described = json(apprentice.get(BENCH + "/" + calculation.id()), 200);
            assertThat(described.get("inputs").findValuesAsText("name"))
                    .isEqualTo(calculation.inputs().stream().map(Input::name).toList());
            assertThat(described.get("cautions")).hasSameSizeAs(calculation.cautions());
            JsonNode worked = json(apprentice.postJson(BENCH + "/" + calculation.id(), "{}"), 200);
            assertThat(worked.get("results").findValuesAsText("name"))
                    .isSubsetOf(calculation.results().stream().map(Result::name).toList());
            assertThat(worked.get("results").findValuesAsText("text")).noneMatch(String::isBlank);
            assertThat(worked.get("cautions")).hasSameSizeAs(calculation.cautions());
            assertThat(worked.has("slips")).as("no slips").isFalse();
        }
    }

    @Test
    void textsAndNumbersAreReadAsOnTheSheet() {
        // by hand: (50 − 12) g ÷ 200 mL = 0.19 g/mL and 1.02 ÷ 0.19 = 5.368421
        String body = "{\"emptyCup\": 12, \"fullCup\": \"50 g\", \"cupVolume\": \"0.2 L\", \"liquidDensity\": 1.02}";
        JsonNode worked = json(SignedIn.as("instructor").postJson(BENCH + "/foam-density", body), 200);
        JsonNode density = worked.get("results").get(0);
        assertThat(density.get("value").asDouble()).isCloseTo(0.19, within(1e-12));
        assertThat(density.get("unit").asText()).isEqualTo("g/mL");
        assertThat(density.get("text").asText()).isEqualTo("0.190\u00a0g/mL");
        assertThat(worked.get("results").get(1).get("value").asDouble()).isCloseTo(5.368421, within(5e-7));
        assertThat(worked.get("steps")).isNotEmpty();
    }

    @Test
    void everyBadValueIsToldInTheWordsOfTheSheet() {
        Browserless apprentice = SignedIn.as("apprentice");
        Answer page = apprentice.get("/bench/foam-density?emptyCup=12..5&cupVolume=30+g");
        Answer answer =
                apprentice.postJson(BENCH + "/foam-density", "{\"emptyCup\": \"12..5\", \"cupVolume\": \"30 g\"}");
        JsonNode problem = problem(answer, 400);
        assertThat(problem.get("errors").findValuesAsText("field")).containsExactly("emptyCup", "cupVolume");
        assertThat(problem.get("errors").findValuesAsText("detail"))
                .isEqualTo(page.page().select(".error-summary a").eachText());
        assertThat(problem.get("status").asInt()).isEqualTo(400);
    }

    @Test
    void valuesThatMakeNoSenseTogetherAreRefusedAtTheirField() {
        JsonNode problem = problem(SignedIn.as("apprentice").postJson(BENCH + "/stick-marks", "{\"ratio\": 9}"), 400);
        assertThat(problem.get("errors").get(0).get("field").asText()).isEqualTo("ratio");
        assertThat(problem.get("errors").get(0).get("detail").asText()).contains("the largest ratio that fits");
    }

    @ParameterizedTest
    @ValueSource(strings = {" ", "{", "[]", "{\"ratio\": 1,}", "ratio=3"})
    void whatIsNoJsonObjectIsRefused(String body) {
        JsonNode problem = problem(SignedIn.as("apprentice").postJson(BENCH + "/stick-marks", body), 400);
        assertThat(problem.get("detail").asText()).startsWith("Send one object");
    }

    @Test
    void anUnknownCalculationIsNotFound() {
        Browserless apprentice = SignedIn.as("apprentice");
        problem(apprentice.get(BENCH + "/no-such"), 404);
        problem(apprentice.postJson(BENCH + "/no-such", "{}"), 404);
    }

    @Test
    void aFormIsNoJson() {
        problem(SignedIn.as("apprentice").post(BENCH + "/stick-marks", Map.of("ratio", "3")), 415);
    }

    @Test
    void aLongBodyIsRefused() {
        String body = "{\"ratio\": \"" + "3".repeat(64 * 1024) + "\"}";
        problem(SignedIn.as("apprentice").postJson(BENCH + "/stick-marks", body), 413);
    }

    @Test
    void withoutTheTokenNothingIsWorked() {
        JsonNode problem = problem(SignedIn.as("apprentice").postJsonWithoutToken(BENCH + "/stick-marks", "{}"), 400);
        assertThat(problem.get("title").asText()).contains("form token");
    }

    @Test
    void nobodyGetsAnythingWithoutSigningIn() {
        for (String path : new String[] {BENCH, BENCH + "/stick-marks"}) {
            problem(Browserless.anonymous().get(path), 401);
        }
    }

    private static JsonNode problem(Answer answer, int status) {
        JsonNode problem = json(answer, status);
        assertThat(answer.header("Content-Type")).startsWith("application/problem+json");
        assertThat(problem.get("title").asText()).isNotBlank();
        assertThat(problem.get("status").asInt()).isEqualTo(status);
        return problem;
    }

    private static JsonNode json(Answer answer, int status) {
        assertThat(answer.status()).as(answer.toString()).isEqualTo(status);
        try {
            return JSON.readTree(answer.body());
        } catch (JsonProcessingException e) {
            throw new AssertionError(answer.toString(), e);
        }
    }
}
