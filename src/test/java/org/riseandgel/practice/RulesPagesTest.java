package org.riseandgel.practice;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.riseandgel.Browserless;
import org.riseandgel.MutableClock;
import org.riseandgel.SignedIn;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.course.CourseContent;
import org.riseandgel.exercise.DrawnNumbers;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.platform.sql.Sql;

/** The rules of practice as a newcomer meets them on the pages. */
@QuarkusTest
class RulesPagesTest {
    private static final String STAGE = "04-whipping";
    /** So many characters of an answer do not stand on a page by chance. */
    private static final int FIGURES = 5;

    private static final String SKILL = "stick-marks-straight";

    @Inject
    DrawStore store;

    @Inject
    Drawings drawings;

    @Inject
    CourseContent content;

    @Inject
    Sql sql;

    Newcomer newcomer;
    Learner learner;
    ExerciseTemplate beaker;

    @BeforeEach
    void somebodyNew() {
        newcomer = Newcomer.at(sql, STAGE);
        learner = newcomer.learner(store, drawings);
        beaker = content.exercises().find("stick-marks-straight-beaker").orElseThrow();
    }

    @AfterEach
    void backToToday() {
        MutableClock.reset();
    }

    private Browserless.Answer press(String path) {
        return learner.browser.post(path);
    }

    private ExerciseStanding with(ExerciseTemplate template, UUID draw) {
        return learner.stored(draw).withExercise();
    }

    private String right(UUID draw) {
        return learner.right(draw);
    }

    private UUID answered(long seed, String typed, String sure) {
        UUID draw = learner.drawOf(beaker, seed);
        assertThat(learner.post(draw, 0, typed == null ? right(draw) : typed, typed == null ? right(draw) : typed, sure)
                        .status())
                .isEqualTo(303);
        return draw;
    }

    @Test
    void theLadderBeginsWithAnExampleAndThenTheStepsAndCanBeSkipped() {
        Browserless.Answer first = press("/practice/" + SKILL + "/draw");
        assertThat(first.location()).startsWith("/practice/examples/" + SKILL);
        Document example = first.follow().page();
        assertThat(example.select(".worked")).isNotEmpty();
        assertThat(example.select("button").eachText())
                .contains("Now you, with fresh numbers", "Skip this, I can do it already");

        Browserless.Answer steps = press(first.location() + "/seen");
        UUID draw = UUID.fromString(steps.location().replaceAll(".*/", ""));
        assertThat(learner.stored(draw).rung()).isEqualTo(Rung.STEPS);
        String story = learner.drawn(draw).story(DecimalMark.POINT);
        assertThat(example.select(".story").text()).isNotEqualTo(story.replaceAll("\\s+", " "));
        assertThat(press("/practice/" + SKILL + "/draw").location())
                .as("the open draw is taken up again")
                .isEqualTo("/practice/draws/" + draw);

        UUID bare = learner.draw(SKILL, 2);
        assertThat(learner.stored(bare).rung()).isEqualTo(Rung.BARE);
    }

    @Test
    void whoeverSkipsAndIsRightTwiceGoesOnToWholeJobsAndNeverSeesAnExample() {
        for (int i = 0; i < 2; i++) {
            UUID draw = learner.draw(SKILL, 2);
            learner.finish(draw);
        }
        UUID job =
                UUID.fromString(press("/practice/" + SKILL + "/draw").location().replaceAll(".*/", ""));
        assertThat(learner.stored(job).rung()).isEqualTo(Rung.JOB);
        assertThat(learner.browser
                        .get("/practice/skills/" + SKILL)
                        .page()
                        .select(".ladder [aria-current]")
                        .text())
                .contains("a whole job");
    }

    @Test
    void onTheWayUpThePlanIsShownAndNothingMore() {
        sql.change(
                """
                INSERT INTO skill_standing (person_id, skill, answers, right_answers, average, days, last_day, last_at,
                    last_verdict, wrong_in_row, right_in_row, offered, rung, run, first_day)
                VALUES (?, ?, 2, 2, 0.51, 1, current_date, now(), 'RIGHT', 0, 2, 2, 1, 0, current_date)""",
                learner.id,
                SKILL);
        UUID draw =
                UUID.fromString(press("/practice/" + SKILL + "/draw").location().replaceAll(".*/", ""));
        assertThat(learner.stored(draw).rung()).isEqualTo(Rung.PLAN);
        Document page = learner.page(draw).page();
        assertThat(page.select("section[aria-labelledby=plan] li")).isNotEmpty();
        assertThat(page.select(".step-numbers, .step-value")).isEmpty();
    }

    /** LX-02: the five exercises of the level come one after the other, the one with a wrong working among the last three. */
    @Test
    void aWrongWorkingSaysSoAndComesAfterRightOnesAndNeverWhereTheWorkingIsLed() {
        List<Boolean> wrong = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            UUID draw = learner.draw(SKILL, 2);
            boolean showsWrong = learner.drawn(draw).template().showsWrongWorking();
            wrong.add(showsWrong);
            if (showsWrong) {
                assertThat(learner.page(draw).page().select("h1").text()).startsWith("Find the slip: ");
            }
            learner.finish(draw);
        }
        assertThat(wrong.subList(0, 2)).containsOnly(false);
        assertThat(wrong.subList(2, 5)).containsOnlyOnce(true);
        for (int i = 0; i < 5; i++) {
            sql.change("UPDATE skill_standing SET offered = 2, rung = 2, run = 0 WHERE person_id = ?", learner.id);
            UUID led = UUID.fromString(
                    press("/practice/" + SKILL + "/draw").location().replaceAll(".*/", ""));
            assertThat(learner.stored(led).rung()).isEqualTo(Rung.PLAN);
            assertThat(learner.drawn(led)).isInstanceOf(DrawnNumbers.class);
            learner.finish(led);
        }
    }

    @Test
    void threeWrongOnOneExerciseHoldItUntilItsExampleWasSeenAndTellTheInstructor() {
        UUID last = null;
        for (long seed = 1; seed <= 3; seed++) {
            last = answered(seed, "1 mm", "guess");
        }
        assertThat(with(beaker, last).held()).isNotNull();
        Document verdict =
                learner.browser.get("/practice/draws/" + last + "?part=1").page();
        assertThat(verdict.select("section[aria-labelledby=held] a").attr("href"))
                .isEqualTo("/practice/examples/" + beaker.id());
        Document today = learner.browser.get("/today").page();
        assertThat(today.select("#next").text()).isEqualTo("Look at it again first");
        assertThat(SignedIn.as("instructor")
                        .get("/cohorts/" + DemoPeople.FIRST_COHORT)
                        .page()
                        .select("section[aria-labelledby=words] li")
                        .eachText())
                .anyMatch(line -> line.startsWith("Test Person") && line.contains("3 wrong in a row"));

        for (int i = 0; i < 4; i++) {
            UUID other = learner.draw(SKILL, 2);
            if (learner.stored(other).exercise().equals(beaker.id())) {
                assertThat(with(beaker, other).held())
                        .as("only after its example was seen")
                        .isNull();
            }
            learner.finish(other);
        }
        press("/practice/examples/" + beaker.id() + "/seen");
        assertThat(with(beaker, last).held()).isNull();
        assertThat(with(beaker, last).lastHeld()).as("it stays on record").isNotNull();
    }

    @Test
    void howSureOneIsBelongsToEveryAnswer() {
        UUID draw = learner.drawOf(beaker, 4);
        Browserless.Answer asked = learner.post(draw, 0, right(draw), right(draw), "");
        assertThat(asked.status()).isEqualTo(422);
        assertThat(asked.page().select(".error-summary a").attr("href")).isEqualTo("#sure");
        assertThat(asked.page().select("#sure-error").text())
                .isEqualTo(asked.page().select(".error-summary a").text());
        assertThat(asked.page().select("#answer").attr("value")).isEqualTo(right(draw));
        assertThat(learner.stored(draw).answers()).isEmpty();
        learner.post(draw, 0, right(draw), right(draw), "sure");
        assertThat(learner.stored(draw).answers().get(0).said().confidence()).isEqualTo(Confidence.SURE);
        Document chart = learner.browser.get("/practice/confidence").page();
        assertThat(chart.select("svg[role=img] title").text()).contains("how sure you were");
        assertThat(chart.select("svg[role=img] desc").text()).contains("sure: 100 % (1 of 1)");
        assertThat(chart.select("svg rect[fill]"))
                .as("hatched while there are few")
                .hasSize(3);
    }

    @Test
    void sureAndWrongIsLookedAtFirstAndComesBackAtTheFrontOfTheNextSession() {
        UUID draw = answered(5, "1 mm", "sure");
        Document today = learner.browser.get("/today").page();
        assertThat(today.select("#next").text()).isEqualTo("Look at this first");
        String why = today.select("section[aria-labelledby=next] a.button").attr("href");
        assertThat(learner.browser.get(why).page().select("#look-at")).hasSize(1);
        assertThat(press("/practice/draws/" + draw + "/looked-at").status()).isEqualTo(303);
        assertThat(learner.browser.get(why).page().select("#look-at")).isEmpty();

        MutableClock.advance(Duration.ofDays(1));
        learner = newcomer.learner(store, drawings);
        UUID item = UUID.fromString(press("/practice/mixed").location().replaceAll(".*/", ""));
        assertThat(learner.stored(item).exercise()).isEqualTo(beaker.id());
        assertThat(learner.stored(item).seed())
                .isNotEqualTo(learner.stored(draw).seed());
        learner.finish(item);
        assertThat(with(beaker, item).sureWrong()).isNull();
    }

    @Test
    void anEstimateComesFirstIsKeptAndIsHeldAgainstTheValueAfterwards() {
        StoredDraw.Setting asking = new StoredDraw.Setting(false, true, null, false, null, null, null);
        UUID draw = learner.drawOf(beaker, 0x9E37_79B9_7F4AL, asking);
        Browserless.Answer before = learner.page(draw);
        Document page = before.page();
        assertThat(page.select("input[name=decade]")).hasSize(5);
        assertThat(page.select("#answer")).isEmpty();
        assertThat(before.body())
                .doesNotContain(Long.toString(learner.stored(draw).seed()))
                .doesNotContain(right(draw).substring(0, FIGURES));

        String address = "/practice/draws/" + draw + "/estimate";
        for (String none : List.of("", "99", "x")) {
            Browserless.Answer again = learner.browser.post(address, Map.of("decade", none));
            assertThat(again.status()).as(none).isEqualTo(422);
            assertThat(again.page().select(".error-summary a").attr("href")).isEqualTo("#decade");
        }
        List<String> offered = page.select("input[name=decade]").eachAttr("value");
        assertThat(learner.browser
                        .post(address, Map.of("decade", offered.get(0)))
                        .status())
                .isEqualTo(303);
        learner.browser.post(address, Map.of("decade", offered.get(1)));
        assertThat(learner.stored(draw).setting().estimate())
                .as("the first one stays")
                .isEqualTo(Integer.valueOf(offered.get(0)));
        assertThat(learner.page(draw).page().select("#answer-help").text()).contains("You estimated");

        Document verdict = learner.answer(draw, 0, right(draw)).follow().page();
        assertThat(verdict.select(".verdict").text()).contains("Your estimate,");
        assertThat(learner.stored(draw).answers().get(0).said().estimate()).isEqualTo(Integer.valueOf(offered.get(0)));
    }

    @Test
    void everyThirdDrawAsksForAnEstimateAndEveryOneAboutTheSalt() {
        List<Boolean> asked = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            UUID draw = learner.draw("expansion", 2);
            if (learner.drawn(draw) instanceof DrawnNumbers) {
                asked.add(learner.stored(draw).setting().asksEstimate());
            }
            learner.finish(draw);
        }
        assertThat(asked).hasSizeGreaterThanOrEqualTo(6);
        for (int i = 2; i < asked.size(); i++) {
            assertThat(asked.subList(i - 2, i + 1))
                    .as("of three in a row, %s", asked)
                    .contains(true);
        }
        assertThat(asked).contains(false);
        content.exercises().all().stream().filter(SaltItems::contains).forEach(template -> {
            Boolean asks = Estimates.asks(drawings.fresh(template, 9), false);
            assertThat(asks).as(template.id()).isNotEqualTo(false);
        });
    }

    @Test
    void lookingAnExampleUpIsSaidFirstAndThenTheOpenDrawDoesNotCount() {
        UUID draw = learner.drawOf(beaker, 7);
        String address = "/practice/examples/" + beaker.id();
        Document asked = learner.browser.get(address).page();
        assertThat(asked.select(".working")).isEmpty();
        assertThat(asked.select("button").eachText()).contains("See the worked example");
        press(address + "/look-up");
        Document example = learner.browser.get(address).page();
        assertThat(example.select(".working li")).isNotEmpty();
        assertThat(example.select(".story").text())
                .isNotEqualTo(learner.drawn(draw).story(DecimalMark.POINT).replaceAll("\\s+", " "));
        Document verdict = learner.answer(draw, 0, right(draw)).follow().page();
        assertThat(verdict.select(".verdict .facts").text()).contains("does not count");
        assertThat(learner.stored(draw).standing().average()).isZero();
        assertThat(learner.stored(draw).standing().rightAnswers()).isEqualTo(1);
    }

    @Test
    void fromTheDayAfterItComesMixedAndTheNameTellsNoWayOfWorking() {
        for (String skill : List.of(SKILL, "expansion")) {
            for (int i = 0; i < 3; i++) {
                learner.finish(learner.draw(skill, 2));
            }
        }
        assertThat(press("/practice/mixed").location())
                .as("nothing on the first day")
                .isEqualTo("/practice/mixed");
        MutableClock.advance(Duration.ofDays(2));
        learner = newcomer.learner(store, drawings);
        Document today = learner.browser.get("/today").page();
        assertThat(today.select("section[aria-labelledby=due] li")).hasSize(2);
        assertThat(today.select("#next").text()).isEqualTo("Mixed practice");

        String last = "";
        Browserless.Answer next = press("/practice/mixed");
        int items = 0;
        while (next.location().startsWith("/practice/draws/")) {
            UUID item = UUID.fromString(next.location().replaceAll(".*/", ""));
            StoredDraw stored = learner.stored(item);
            Document page = learner.page(item).page();
            items++;
            assertThat(page.select("h1").text()).startsWith("Mixed practice, item " + items + " of ");
            String title = learner.drawn(item).template().title();
            String skill = content.course().skill(stored.skill()).orElseThrow().title();
            assertThat(page.select("h1, .crumbs, .tag, title").text()).doesNotContain(title, skill);
            assertThat(stored.exercise()).isNotEqualTo(last);
            last = stored.exercise();
            learner.finish(item);
            next = press("/practice/mixed");
        }
        assertThat(items).isBetween(6, 12);
        Document over = next.follow().page();
        assertThat(over.select(".lede").text())
                .isEqualTo("Done for today: %d of %d right without help.".formatted(items, items));
        assertThat(learner.browser.get("/today").page().select("section[aria-labelledby=due]"))
                .as("what was due has returned")
                .isEmpty();
        assertThat(sql.first(
                        "SELECT due_on - last_day AS gap FROM skill_standing WHERE person_id = ? AND skill = ?",
                        row -> row.number("gap"),
                        learner.id,
                        SKILL))
                .contains(5);
    }
}
