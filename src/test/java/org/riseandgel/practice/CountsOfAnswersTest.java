package org.riseandgel.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.List;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.riseandgel.MutableClock;
import org.riseandgel.Oracle;
import org.riseandgel.course.CourseContent;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.platform.sql.Sql;

/** Weeks and slips of a person's page are counts that each answer keeps up; they say what its answers say. */
@QuarkusTest
class CountsOfAnswersTest {
    @Inject
    DrawStore store;

    @Inject
    Drawings drawings;

    @Inject
    CourseContent content;

    @Inject
    AnswerHistory history;

    @Inject
    Sql sql;

    @Inject
    DataSource dataSource;

    @AfterEach
    void backToToday() {
        MutableClock.reset();
    }

    @Test
    void answersOfTwoWeeksAreCountedAsTheyAreGiven() {
        Newcomer newcomer = Newcomer.at(sql, "04-whipping");
        Learner learner = newcomer.learner(store, drawings);
        ExerciseTemplate beaker =
                content.exercises().find("stick-marks-straight-beaker").orElseThrow();
        learner.finish(learner.drawOf(beaker, 1));
        assertThat(weeks(learner)).hasSize(1).isEqualTo(weeksOfAnswers(learner));
        assertThat(history.slips(learner.id, 12)).isEmpty();
        MutableClock.advance(Duration.ofDays(7));
        learner = newcomer.learner(store, drawings);
        learner.finish(learner.drawOf(beaker, 2));
        var draw = learner.drawOf(beaker, 3);
        String slipped =
                new Oracle(dataSource::getConnection).slip("" + draw, 0).typed();
        assertThat(learner.answer(draw, 0, slipped).status()).isEqualTo(303);
        assertThat(weeks(learner)).hasSize(2).isEqualTo(weeksOfAnswers(learner));
        assertThat(history.slips(learner.id, 12)).singleElement().satisfies(slip -> assertThat(slip.times())
                .isEqualTo(1));
        // An answer that is handed in again is no second answer, and no second count.
        learner.answer(draw, 0, slipped);
        assertThat(weeks(learner)).isEqualTo(weeksOfAnswers(learner));
    }

    @Test
    void theProgramCannotWriteTheCountsItself() {
        for (String table : List.of("week_standing", "slip_standing")) {
            assertThatThrownBy(() -> sql.change("DELETE FROM " + table)).hasStackTraceContaining("permission denied");
        }
    }

    private List<String> weeks(Learner learner) {
        return history.weeks(learner.id, 8).stream()
                .map(week -> week.monday() + " " + week.answers() + " " + week.right())
                .toList();
    }

    private List<String> weeksOfAnswers(Learner learner) {
        return sql.list(
                """
                SELECT date_trunc('week', answered_at AT TIME ZONE (SELECT zone FROM school))::date || ' ' || count(*)
                       || ' ' || count(*) FILTER (WHERE verdict = 'RIGHT') AS week
                FROM answer WHERE person_id = ? GROUP BY date_trunc('week', answered_at AT TIME ZONE
                    (SELECT zone FROM school)) ORDER BY 1 DESC""",
                row -> row.text("week"),
                learner.id);
    }
}
