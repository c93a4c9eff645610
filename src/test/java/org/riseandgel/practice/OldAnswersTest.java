package org.riseandgel.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.riseandgel.Browserless;
import org.riseandgel.SignedIn;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.account.Roles;
import org.riseandgel.clearance.Leaving;
import org.riseandgel.clearance.School;
import org.riseandgel.platform.sql.Sql;

/** Old answers become counts: after the school's years, all at once, never those that are held. */
@QuarkusTest
class OldAnswersTest {
    @Inject
    School school;

    @Inject
    Leaving leaving;

    @Inject
    Sql sql;

    @Test
    void cr24_answersBecomeCountsAfterTheirYearsAndALegalHoldKeepsThem() {
        UUID somebody = school.person(Roles.APPRENTICE);
        UUID held = school.person(Roles.APPRENTICE);
        leaving.hold(DemoPeople.SAFETY_LEAD, held, true, "A court asks");
        String exercise = "old-" + UUID.randomUUID();
        sql.change(
                "INSERT INTO exercise_version (exercise_id, version, source_text, first_used) VALUES (?, '1', 'x', now())",
                exercise);
        answered(somebody, exercise, "3 years", "RIGHT");
        answered(somebody, exercise, "3 years", "RIGHT");
        answered(somebody, exercise, "23 months", "WRONG");
        answered(held, exercise, "3 years", "WRONG");
        Browserless office = SignedIn.as("office");
        assertThat(office.get("/office/old-answers").page().select("main").text())
                .contains("kept for 2 years", "2 answers");
        assertThat(office.post("/office/old-answers").page().select("#sure-error"))
                .hasSize(1);
        assertThat(office.post("/office/old-answers", Map.of("sure", "yes")).status())
                .isEqualTo(303);
        assertThat(left(somebody)).isEqualTo(1);
        assertThat(left(held)).isEqualTo(1);
        assertThat(sql.list(
                        "SELECT verdict || ' ' || answers AS told FROM answer_tally WHERE exercise_id = ?",
                        row -> row.text("told"),
                        exercise))
                .containsExactly("RIGHT 2");
        assertThat(sql.any("SELECT 1 FROM audit_entry WHERE action = 'answers-purged' AND detail LIKE '2 answers%'"))
                .isTrue();
        assertThat(office.get("/office/old-answers").page().select("main").text())
                .contains("no such answer");
    }

    @Test
    void theDatabaseKeepsAnswersForAYearAtLeast() {
        assertThatThrownBy(() -> sql.any("SELECT purge_answers(now() - interval '11 months', '{}')"))
                .rootCause()
                .hasMessageContaining("for a year at least");
    }

    private void answered(UUID person, String exercise, String ago, String verdict) {
        UUID draw = UUID.randomUUID();
        sql.change(
                """
                INSERT INTO draw (id, person_id, exercise_id, version, skill, level, seed, drawn_at, finished_at)
                VALUES (?, ?, ?, '1', 'weighing', 1, 1, now() - ?::interval, now() - ?::interval)""",
                draw,
                person,
                exercise,
                ago,
                ago);
        sql.change(
                """
                INSERT INTO answer (draw_id, part, person_id, typed, read_value, read_unit, read_figures, verdict,
                    expected, shown_at, answered_at, core_version)
                VALUES (?, 1, ?, '1 g', '1', 'g', '1', ?, '1 g', now() - ?::interval, now() - ?::interval, '1')""",
                draw,
                person,
                verdict,
                ago,
                ago);
    }

    private int left(UUID person) {
        return sql.first(
                        "SELECT count(*) AS answers FROM answer WHERE person_id = ?",
                        row -> row.number("answers"),
                        person)
                .orElse(0);
    }
}
