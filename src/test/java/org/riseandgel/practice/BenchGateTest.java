package org.riseandgel.practice;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.riseandgel.Browserless;
import org.riseandgel.SignedIn;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.clearance.BenchGate;
import org.riseandgel.clearance.Decisions;
import org.riseandgel.clearance.School;
import org.riseandgel.clearance.rule.Task;
import org.riseandgel.clearance.rule.Trigger;
import org.riseandgel.course.CourseContent;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.platform.sql.Sql;

/** What is done at the bench with the salt is shown to nobody whom the register does not clear for it, at any moment. */
@QuarkusTest
class BenchGateTest {
    private static final String SKILL = "gelling-dose";
    private static final String CUP = "gelling-dose-bench-cup";
    private static final String GATE = "/practice/at-the-bench/";
    private static final Set<Task> TASKS = EnumSet.of(Task.WEIGH, Task.DOSE, Task.CLEAN);

    @Inject
    DrawStore store;

    @Inject
    Drawings drawings;

    @Inject
    CourseContent content;

    @Inject
    BenchGate gate;

    @Inject
    School school;

    @Inject
    Decisions decisions;

    @Inject
    Sql sql;

    @Test
    void nobodyBeginsBeforeTheClearanceAndNobodyGoesOnAfterIt() {
        Learner learner = Newcomer.at(sql, "05-gelling").learner(store, drawings);
        assertThat(learner.browser.get("/practice/skills/" + SKILL).page().select("a[href=" + GATE + CUP + "]"))
                .hasSize(1);
        Document shut = learner.browser.get(GATE + CUP).page();
        assertThat(shut.select("h2").eachText()).contains("You may not", "Who may");
        assertThat(shut.select("main").text()).contains("No clearance was given for this.");
        assertThat(shut.select("section[aria-labelledby=who] li").eachText()).contains("Anouk Sorrel, in Foaming room");
        assertThat(shut.select("form[action$=begin]")).isEmpty();
        toTheGate(learner.browser.post(GATE + CUP + "/begin", Map.of("supervisor", "here")));
        toTheGate(learner.browser.get("/practice/examples/" + CUP));
        assertThat(draws(learner.id)).isZero();

        School.Cast cast = cast(learner.id);
        school.evidence(cast);
        school.grant(cast);
        Document open = learner.browser.get(GATE + CUP).page();
        assertThat(open.select("h2").eachText()).contains("You may");
        assertThat(open.select("section[aria-labelledby=may]").text())
                .contains(cast.scope().room());
        Browserless.Answer begun = learner.browser.post(GATE + CUP + "/begin");
        UUID draw = UUID.fromString(begun.location().substring("/practice/draws/".length()));
        Document page = learner.page(draw).page();
        assertThat(page.select(".at-bench").text()).contains(cast.scope().room());
        assertThat(learner.browser.post(GATE + CUP + "/begin").location())
                .as("an open one is taken up again")
                .endsWith(draw.toString());

        decisions.suspend(cast.trainer(), learner.id, null, Trigger.UNSAFE_ACT, "Goggles on the forehead");
        toTheGate(learner.page(draw));
        toTheGate(learner.answer(draw, 0, learner.right(draw)));
        toTheGate(learner.browser.post("/practice/draws/" + draw + "/hint"));
        assertThat(learner.stored(draw).answers()).isEmpty();
        assertThat(learner.browser.get(GATE + CUP).page().select("main").text())
                .contains("The clearance is suspended.");
        assertThat(learner.draw(SKILL, 2)).as("the desk stays open").isNotEqualTo(draw);
    }

    @Test
    void whoIsSupervisedSaysThatTheSupervisorIsThere() {
        Browserless darius = SignedIn.asPerson(DemoPeople.DARIUS);
        Document page = darius.get(GATE + CUP).page();
        assertThat(page.select("h2").eachText()).contains("Supervised only");
        assertThat(page.select("main").text()).contains("only while");
        Browserless.Answer alone = darius.post(GATE + CUP + "/begin");
        assertThat(alone.status()).isEqualTo(422);
        assertThat(alone.page().select("#supervisor-error").text()).contains("do not begin");
        Browserless.Answer both = darius.post(GATE + CUP + "/begin", Map.of("supervisor", "here"));
        assertThat(both.status()).isEqualTo(303);
        assertThat(darius.get(both.location()).page().select(".at-bench").text())
                .contains("Supervised only", "stop");
    }

    @Test
    void aClearanceForOneTaskIsNoneForTwo() {
        Learner learner = Newcomer.at(sql, "05-gelling").learner(store, drawings);
        School.Cast cast = school.cast(EnumSet.of(Task.WEIGH, Task.CLEAN));
        School.Cast own = with(cast, learner.id);
        school.evidence(own);
        school.grant(own);
        assertThat(learner.browser.get(GATE + CUP).page().select("h2").eachText())
                .contains("You may");
        assertThat(learner.browser
                        .get(GATE + "gelling-dose-bench-to-whisk")
                        .page()
                        .select("h2")
                        .eachText())
                .contains("You may not");
    }

    @Test
    void everyQuestionIsWrittenDown() {
        int before = asked(DemoPeople.DARIUS);
        SignedIn.asPerson(DemoPeople.DARIUS).get(GATE + CUP);
        assertThat(asked(DemoPeople.DARIUS)).isGreaterThan(before);
    }

    @Test
    void nothingAtTheBenchIsDrawnByChanceOrSetForMarks() {
        assertThat(content.exercises().ofSkill(SKILL))
                .extracting(ExerciseTemplate::id)
                .doesNotContain(CUP);
        assertThat(content.exercises().atBench(SKILL))
                .extracting(ExerciseTemplate::id)
                .contains(CUP);
        assertThat(content.current().checks().stream()
                        .flatMap(check -> check.shares().stream())
                        .flatMap(share -> share.pool(content.exercises()).stream())
                        .filter(one -> one.atBench().isPresent()))
                .isEmpty();
    }

    @Test
    void anUnknownOrAnOrdinaryExerciseHasNoGate() {
        Browserless anouk = SignedIn.asPerson(DemoPeople.ANOUK);
        assertThat(anouk.get(GATE + "no-such-exercise").status()).isEqualTo(404);
        assertThat(anouk.get(GATE + "gelling-dose-owl-dry-share").status()).isEqualTo(404);
        assertThat(anouk.post(GATE + "gelling-dose-owl-dry-share/begin").status())
                .isEqualTo(404);
    }

    private School.Cast cast(UUID learner) {
        return with(school.cast(TASKS), learner);
    }

    private static School.Cast with(School.Cast cast, UUID learner) {
        return new School.Cast(
                learner,
                cast.trainer(),
                cast.observer(),
                cast.decider(),
                cast.lead(),
                cast.scope(),
                cast.revision(),
                cast.salt());
    }

    private static void toTheGate(Browserless.Answer answer) {
        assertThat(answer.status()).isEqualTo(303);
        assertThat(answer.location()).isEqualTo(GATE + CUP);
    }

    private int draws(UUID person) {
        return sql.first("SELECT count(*) AS n FROM draw WHERE person_id = ?", row -> row.number("n"), person)
                .orElseThrow();
    }

    private int asked(UUID person) {
        return sql.first("SELECT count(*) AS n FROM register_check WHERE person_id = ?", row -> row.number("n"), person)
                .orElseThrow();
    }
}
