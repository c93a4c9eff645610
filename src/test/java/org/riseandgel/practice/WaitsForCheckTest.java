package org.riseandgel.practice;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.riseandgel.Browserless;
import org.riseandgel.SignedIn;
import org.riseandgel.course.CourseContent;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.platform.sql.Sql;
import org.riseandgel.sitting.Sittings;

/** What an open check asks cannot be drawn, seen or answered in practice: it would tell the check's answers. */
@QuarkusTest
class WaitsForCheckTest {
    private static final String SKILL = "stick-marks-straight";
    private static final String CHECK = "/checks/whipping-check";
    private static final String WAITS = "/checks?waits=practice";

    @Inject
    DrawStore store;

    @Inject
    Drawings drawings;

    @Inject
    CourseContent content;

    @Inject
    Sittings sittings;

    @Inject
    Sql sql;

    Learner learner;

    @BeforeEach
    void somebodyNew() {
        learner = Newcomer.at(sql, "04-whipping").learner(store, drawings);
    }

    private UUID beginCheck() {
        Browserless.Answer begun = learner.browser.post(CHECK + "/begin");
        assertThat(begun.status()).isEqualTo(303);
        return UUID.fromString(begun.location().split("/")[2]);
    }

    private void handIn(UUID sitting) {
        assertThat(learner.browser.post("/sittings/" + sitting + "/hand-in").status())
                .isEqualTo(303);
    }

    private ExerciseTemplate asked() {
        Set<String> asked = sittings.askedNow(learner.id);
        return content.exercises().ofSkill(SKILL).stream()
                .filter(one -> asked.contains(one.id()))
                .findFirst()
                .orElseThrow();
    }

    private void waits(Browserless.Answer answer) {
        assertThat(answer.status()).isEqualTo(303);
        assertThat(answer.location()).isEqualTo(WAITS);
    }

    @Test
    void anOpenDrawOfItWaitsUntilTheCheckIsHandedIn() {
        UUID sitting = beginCheck();
        UUID draw = learner.drawOf(asked(), 7);
        String right = learner.right(draw);
        String path = "/practice/draws/" + draw;

        waits(learner.page(draw));
        waits(learner.answer(draw, 0, right));
        waits(learner.browser.post(path + "/read", Map.of("part", "1", "answer", right)));
        waits(learner.browser.post(path + "/hint"));
        waits(learner.browser.post(path + "/estimate", Map.of("decade", "1")));
        waits(learner.browser.post(path + "/looked-at"));
        waits(learner.browser.post("/practice/" + SKILL + "/draw", Map.of("level", "2")));
        assertThat(learner.stored(draw).answers()).isEmpty();
        assertThat(learner.stored(draw).hintsShown()).isZero();
        assertThat(learner.browser.get(WAITS).page().select("#waits").text()).isEqualTo("Practice of this waits");

        handIn(sitting);
        assertThat(learner.page(draw).status()).isEqualTo(200);
        learner.answer(draw, 0, right);
        assertThat(learner.stored(draw).answers()).hasSize(1);
    }

    @Test
    void whatWasAnsweredBeforeIsNotShownMeanwhile() {
        List<ExerciseTemplate> pool = content.exercises().ofSkill(SKILL).stream()
                .filter(one -> one.level() == 2)
                .toList();
        Map<String, UUID> done = new HashMap<>();
        for (ExerciseTemplate one : pool) {
            UUID draw = learner.drawOf(one, 21);
            learner.finish(draw);
            done.put(one.id(), draw);
        }
        String all = learner.browser.get("/practice/answers").body();
        UUID sitting = beginCheck();
        UUID asked = done.get(asked().id());
        assertThat(all).contains(asked.toString());

        waits(learner.browser.get("/practice/draws/" + asked + "?part=1"));
        waits(learner.browser.get("/practice/examples/" + asked().id()));
        String left = learner.browser.get("/practice/answers").body();
        assertThat(left).doesNotContain(asked.toString()).contains("once it is handed in");
        Set<String> inCheck = sittings.askedNow(learner.id);
        done.forEach((exercise, draw) ->
                assertThat(left.contains(draw.toString())).as(exercise).isNotEqualTo(inCheck.contains(exercise)));
        assertThat(SignedIn.as("instructor")
                        .get("/people/" + learner.id + "/answers")
                        .body())
                .as("whoever teaches sees them")
                .contains(asked.toString());

        handIn(sitting);
        assertThat(learner.browser.get("/practice/answers").body()).isEqualTo(all);
    }

    @Test
    void freshDrawsComeFromTheOtherExercises() {
        beginCheck();
        Set<String> inCheck = sittings.askedNow(learner.id);
        for (int i = 0; i < 12; i++) {
            UUID draw = learner.draw(SKILL, 2);
            assertThat(inCheck).doesNotContain(learner.stored(draw).exercise());
            learner.finish(draw);
        }
        Learner other = Newcomer.at(sql, "04-whipping").learner(store, drawings);
        UUID same = other.drawOf(asked(), 7);
        assertThat(other.page(same).status())
                .as("another person's check is no matter")
                .isEqualTo(200);
    }

    @Test
    void whereTheCheckAsksAllOfThemItComesFirst() {
        UUID sitting = beginCheck();
        int number = 100;
        for (ExerciseTemplate one : content.exercises().ofSkill(SKILL)) {
            sql.change(
                    """
                    WITH text AS (INSERT INTO exercise_version (exercise_id, version, source_text, first_used)
                        VALUES (?, ?, ?, now()) ON CONFLICT DO NOTHING)
                    INSERT INTO sitting_item (sitting_id, number, exercise_id, version, skill, critical, seed)
                    VALUES (?, ?, ?, ?, ?, false, 1) ON CONFLICT DO NOTHING""",
                    one.id(),
                    one.version(),
                    one.file().text(),
                    sitting,
                    number++,
                    one.id(),
                    one.version(),
                    SKILL);
        }
        waits(learner.browser.post("/practice/" + SKILL + "/draw", Map.of("level", "2")));
        waits(learner.browser.post("/practice/" + SKILL + "/draw", Map.of("level", "3")));
    }

    @Test
    void theFirstPageSaysToFinishTheCheck() {
        assertThat(learner.browser.get("/today").page().select("#next").text()).doesNotContain("check");
        UUID sitting = beginCheck();
        Document page = learner.browser.get("/today").page();
        assertThat(page.select("#next").text()).isEqualTo("Finish your check");
        assertThat(page.select("section[aria-labelledby=next] p").text())
                .containsPattern("All of its \\d+ items take about \\d+ minutes\\.");
        assertThat(page.select("section[aria-labelledby=next] a.button").attr("href"))
                .isEqualTo(CHECK);
        handIn(sitting);
        assertThat(learner.browser.get("/today").page().select("#next").text()).isNotEqualTo("Finish your check");
    }
}
