package org.riseandgel.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.Map;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.riseandgel.Browserless;
import org.riseandgel.Browserless.Answer;
import org.riseandgel.MutableClock;
import org.riseandgel.SignedIn;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.account.TestPeople;
import org.riseandgel.course.CourseContent;
import org.riseandgel.course.Simulation.Choice;
import org.riseandgel.course.Simulation.Outcome;
import org.riseandgel.platform.sql.Sql;

/** Playing a simulation: each choice is stored once before it is explained, and one can stop and go on. */
@QuarkusTest
class SimulationPagesTest {
    @Inject
    RunStore store;

    @Inject
    CourseContent content;

    @Inject
    Sql sql;

    TestPeople.Added added;
    Browserless browser;
    UUID person;

    @BeforeEach
    void somebodyNew() {
        added = TestPeople.settled("apprentice");
        browser = TestPeople.signIn(added);
        person = UUID.fromString(added.id());
    }

    @AfterEach
    void backToToday() {
        MutableClock.reset();
    }

    private UUID begin(String simulation, Map<String, String> fields) {
        Answer begun = browser.post("/simulations/" + simulation + "/begin", fields);
        assertThat(begun.status()).isEqualTo(303);
        return UUID.fromString(begun.location().replaceAll(".*/", ""));
    }

    private Run run(UUID run) {
        return store.load(person, run).orElseThrow();
    }

    private Choice at(UUID id, Outcome outcome) {
        Run run = run(id);
        return run.at(content.current().simulation(run.simulation()).orElseThrow()).orElseThrow().choices().stream()
                .filter(choice -> choice.outcome() == outcome)
                .findFirst()
                .orElseThrow();
    }

    private Answer choose(UUID run, int step, String key) {
        return browser.post("/simulations/runs/" + run + "/choose", Map.of("step", "" + step, "choice", key));
    }

    private Answer choose(UUID run, Outcome outcome) {
        return choose(run, run(run).nextNumber(), at(run, outcome).key());
    }

    @Test
    void theSafeWayComesToItsEndAndIsKept() {
        UUID run = begin("weigh-out", Map.of());
        while (run(run).isOpen()) {
            Choice choice = at(run, Outcome.SAFE);
            Document page = choose(run, Outcome.SAFE).follow().page();
            assertThat(page.select(".verdict").text()).contains("Safe", choice.consequence());
            assertThat(page.select("section[aria-labelledby=why]").text()).contains(choice.why());
        }
        Run played = run(run);
        assertThat(played.ending()).isEqualTo("done");
        assertThat(played.safe()).isEqualTo(played.steps().size());
        Document end = browser.get("/simulations/runs/" + run).page();
        assertThat(end.text()).contains("never replaces it", "counts towards a clearance");
        assertThat(end.select("main ol > li")).hasSameSizeAs(played.steps());
        assertThat(browser.get("/simulations/weigh-out").page().select("section[aria-labelledby=past] li"))
                .hasSize(1);
    }

    @Test
    void aHarmfulChoiceShowsWhatFollowsAndEndsIt() {
        UUID run = begin("spill", Map.of());
        Choice broom = at(run, Outcome.HARM);
        Document page = choose(run, Outcome.HARM).follow().page();
        assertThat(page.select(".verdict").text()).contains("Somebody could be hurt", broom.consequence());
        assertThat(run(run).isOpen()).isFalse();
        assertThat(browser.get("/simulations/runs/" + run).body()).contains("Here it stops", "Section 4");
    }

    @Test
    void noConsequenceIsToldBeforeTheChoice() {
        UUID run = begin("spill", Map.of());
        String page = browser.get("/simulations/runs/" + run).body();
        for (Choice choice :
                content.current().simulation("spill").orElseThrow().first().choices()) {
            assertThat(page).contains(choice.key()).doesNotContain(choice.consequence(), choice.why());
        }
        assertThat(page.toLowerCase(java.util.Locale.ROOT)).doesNotContain("\"harm\"", "\"slip\"", "\"safe\"");
    }

    @Test
    void aSecondPressMeetsTheFirstChoice() {
        UUID run = begin("spill", Map.of());
        Choice safe = at(run, Outcome.SAFE);
        String slip = at(run, Outcome.SLIP).key();
        Answer first = choose(run, 1, safe.key());
        Answer second = choose(run, 1, slip);
        assertThat(second.location()).isEqualTo(first.location());
        assertThat(run(run).steps()).singleElement().satisfies(step -> assertThat(step.chosen())
                .isEqualTo(safe.text()));
        assertThat(choose(run, 5, slip).location()).isEqualTo("/simulations/runs/" + run);
        assertThat(run(run).steps()).hasSize(1);
    }

    @Test
    void nothingChosenIsAskedAgain() {
        UUID run = begin("spill", Map.of());
        for (String key : new String[] {"", "0123456789abcdef"}) {
            Answer answer = choose(run, 1, key);
            assertThat(answer.status()).isEqualTo(422);
            assertThat(answer.page().select(".error-summary a").attr("href")).isEqualTo("#choice");
            assertThat(answer.page().select("#choice-error").text()).isEqualTo("Choose what you would do.");
        }
        assertThat(run(run).steps()).isEmpty();
    }

    @Test
    void oneGoesOnWhereOneStoppedAndMayBeginAfresh() {
        UUID run = begin("spill", Map.of());
        choose(run, Outcome.SAFE);
        assertThat(begin("spill", Map.of())).as("the open run is taken up").isEqualTo(run);
        Browserless elsewhere = TestPeople.signIn(added);
        assertThat(elsewhere
                        .get("/simulations/spill")
                        .page()
                        .select("main a.button")
                        .attr("href"))
                .isEqualTo("/simulations/runs/" + run);
        assertThat(elsewhere.get("/simulations/runs/" + run).page().select("h1").text())
                .isEqualTo("A sleeve");
        UUID afresh = begin("spill", Map.of("afresh", "yes"));
        assertThat(afresh).isNotEqualTo(run);
        assertThat(run(run).isOpen()).isFalse();
        assertThat(run(run).steps()).as("what was chosen stays").hasSize(1);
        assertThat(browser.get("/simulations/runs/" + run).page().select("h1").text())
                .isEqualTo("Left before the end");
    }

    @Test
    void timeIsLookedAtOnlyWhereItWasAskedFor() {
        UUID untimed = begin("spill", Map.of());
        assertThat(browser.get("/simulations/runs/" + untimed).body()).doesNotContain("seconds");
        MutableClock.advance(Duration.ofSeconds(90));
        choose(untimed, Outcome.SAFE);
        assertThat(run(untimed).steps().get(0).late()).isFalse();

        UUID timed = begin("spill", Map.of("timed", "yes", "afresh", "yes"));
        assertThat(browser.get("/simulations/runs/" + timed).body()).contains("20 seconds");
        MutableClock.advance(Duration.ofSeconds(300));
        Document late = choose(timed, Outcome.SAFE).follow().page();
        assertThat(late.text()).contains("It took you 30", "too long");
        MutableClock.advance(Duration.ofSeconds(90));
        browser.post("/simulations/runs/" + timed + "/go-on");
        choose(timed, Outcome.SAFE);
        assertThat(Duration.between(
                        run(timed).steps().get(0).chosenAt(),
                        run(timed).steps().get(1).shownAt()))
                .as("reading the consequence costs no time")
                .isGreaterThanOrEqualTo(Duration.ofSeconds(90));
    }

    @Test
    void anothersRunIsNotFound() {
        UUID run = begin("spill", Map.of());
        String key = at(run, Outcome.SAFE).key();
        for (String who : new String[] {"apprentice", "instructor"}) {
            Browserless stranger = SignedIn.as(who);
            assertThat(stranger.get("/simulations/runs/" + run).status()).isEqualTo(404);
            assertThat(stranger.post("/simulations/runs/" + run + "/choose", Map.of("step", "1", "choice", key))
                            .status())
                    .isEqualTo(404);
            assertThat(stranger.post("/simulations/runs/" + run + "/go-on").status())
                    .isEqualTo(404);
        }
        assertThat(run(run).steps()).isEmpty();
    }

    @Test
    void whatNoLongerExistsIsSaid() {
        UUID run = UUID.randomUUID();
        sql.change(
                "INSERT INTO simulation_run (id, person_id, simulation_id, title, timed, begun_at, shown_at)"
                        + " VALUES (?, ?, 'away', 'Away', false, now(), now())",
                run,
                person);
        assertThat(browser.get("/simulations/runs/" + run).body()).contains("It was rewritten meanwhile");
        assertThat(choose(run, 1, "x").location()).isEqualTo("/simulations/runs/" + run);
    }

    @Test
    void theStageAndTheSkillLeadToThem() {
        assertThat(browser.get("/course/01-bench-and-hazards").page().select("main a[href^=/simulations/]"))
                .hasSize(2);
        assertThat(browser.get("/practice/skills/safe-handling").page().select("main a[href^=/simulations/]"))
                .hasSize(2);
        assertThat(browser.get("/course/04-whipping").page().select("main a[href^=/simulations/]"))
                .isEmpty();
    }

    @Test
    void theDemoHasPlayed() {
        Browserless bastian = SignedIn.asPerson(DemoPeople.BASTIAN);
        assertThat(bastian.get("/simulations/weigh-out").page().select("section[aria-labelledby=past] li"))
                .isNotEmpty();
        assertThat(SignedIn.asPerson(DemoPeople.ESME)
                        .get("/simulations/spill")
                        .page()
                        .select("#begin")
                        .text())
                .isEqualTo("Go on where you stopped");
    }
}
