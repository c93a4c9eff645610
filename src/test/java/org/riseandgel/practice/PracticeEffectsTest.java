package org.riseandgel.practice;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.riseandgel.platform.sql.Sql;
import org.riseandgel.practice.AnswerHistory.Span;
import org.riseandgel.practice.PracticeEffects.Alike;
import org.riseandgel.practice.PracticeEffects.FirstTries;

/** LX-19: first tries at day 0, 21 and 90, counted by hand on made-up histories. */
@QuarkusTest
class PracticeEffectsTest {
    private static final Instant NOON = Instant.parse("2027-01-04T12:00:00Z");

    private static final Alike NONE_ALIKE = new Alike(0, 0, 0);

    @Inject
    Sql sql;

    @Inject
    PracticeEffects effects;

    private static Instant day(int day) {
        return NOON.plus(day, ChronoUnit.DAYS);
    }

    private static Span always(UUID person) {
        return new Span(person, day(-1), null);
    }

    private UUID somebody(String skill) {
        UUID person = Newcomer.in(sql).id();
        sql.change(
                """
                INSERT INTO skill_standing (person_id, skill, answers, right_answers, average, days, last_day, last_at,
                    last_verdict, wrong_in_row, right_in_row, offered, rung, run, first_day)
                VALUES (?, ?, 1, 1, 0.3, 1, ?, ?, 'RIGHT', 0, 1, 1, 1, 0, ?)""",
                person,
                skill,
                LocalDate.ofInstant(NOON, ZoneOffset.UTC),
                NOON,
                LocalDate.ofInstant(NOON, ZoneOffset.UTC));
        return person;
    }

    private void draw(UUID person, String skill, int day, int minute, int hints, String... verdicts) {
        draw(person, skill, 2, day, minute, hints, verdicts);
    }

    private void draw(UUID person, String skill, int level, int day, int minute, int hints, String... verdicts) {
        UUID draw = UUID.randomUUID();
        Instant at = NOON.plus(day, ChronoUnit.DAYS).plus(minute, ChronoUnit.MINUTES);
        sql.change(
                """
                INSERT INTO draw (id, person_id, exercise_id, version, skill, level, seed, drawn_at, finished_at)
                SELECT ?, ?, exercise_id, version, ?, ?, 1, ?, ? FROM exercise_version LIMIT 1""",
                draw,
                person,
                skill,
                level,
                at,
                at);
        for (int part = 0; part < verdicts.length; part++) {
            sql.change(
                    """
                    INSERT INTO answer (draw_id, part, person_id, typed, read_value, read_unit, read_figures, verdict,
                        expected, hints, shown_at, answered_at, core_version)
                    VALUES (?, ?, ?, '1', '1', '', '', ?, '1', ?, ?, ?, 'test')""",
                    draw,
                    part,
                    person,
                    verdicts[part],
                    hints,
                    at,
                    at);
        }
    }

    @Test
    void onlyTheFirstTryOfADayCountsAndOnlyWithoutHelp() {
        UUID one = somebody("weighing");
        draw(one, "weighing", 0, 0, 0, "WRONG");
        draw(one, "weighing", 0, 9, 0, "RIGHT");
        draw(one, "weighing", 20, 0, 0, "RIGHT", "RIGHT");
        draw(one, "weighing", 20, 5, 0, "WRONG");
        draw(one, "weighing", 95, 0, 1, "RIGHT");
        UUID two = somebody("weighing");
        draw(two, "weighing", 0, 0, 0, "RIGHT");
        draw(two, "weighing", 23, 0, 0, "RIGHT", "WRONG");
        draw(two, "weighing", 40, 0, 0, "RIGHT");

        assertThat(effects.of(List.of(always(one), always(two))))
                .containsExactly(
                        new FirstTries(0, 2, 2, 1, NONE_ALIKE),
                        new FirstTries(21, 2, 2, 1, new Alike(2, 1, 1)),
                        new FirstTries(90, 1, 1, 0, new Alike(1, 0, 0)));
        assertThat(effects.of(List.of()))
                .containsExactly(
                        new FirstTries(0, 0, 0, 0, NONE_ALIKE),
                        new FirstTries(21, 0, 0, 0, NONE_ALIKE),
                        new FirstTries(90, 0, 0, 0, NONE_ALIKE));
    }

    @Test
    void aTryCountsWhereItsPersonLearnedThenAndIsLikeAnotherOfItsLevel() {
        UUID one = somebody("weighing");
        draw(one, "weighing", 0, 0, 0, "RIGHT");
        draw(one, "weighing", 21, 0, 0, "RIGHT");
        draw(one, "weighing", 3, 90, 0, 0, "RIGHT");
        assertThat(effects.of(List.of(always(one))))
                .extracting(FirstTries::alike)
                .containsExactly(NONE_ALIKE, new Alike(1, 1, 1), NONE_ALIKE);
        List<Span> twice = List.of(new Span(one, day(-1), day(21)), new Span(one, day(40), null));
        assertThat(effects.of(twice))
                .as("a span ends before its end")
                .extracting(FirstTries::tries)
                .containsExactly(1, 0, 1);
    }
}
