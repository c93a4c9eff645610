package org.riseandgel.practice;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.SQLException;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.riseandgel.bench.Slip;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.exercise.Answers;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.Verdict;
import org.riseandgel.platform.school.SchoolSettings;
import org.riseandgel.platform.sql.Row;
import org.riseandgel.platform.sql.Sql;

/**
 * The answers of a person, newest first, a page at a time. By SQL, as answers are stored: their table has no entity.
 */
@ApplicationScoped
public class AnswerHistory {
    /** How many answers make a page. */
    public static final int PAGE = 25;

    private final Sql sql;
    private final Drawings drawings;
    private final SchoolSettings school;
    private final Clock clock;

    AnswerHistory(Sql sql, Drawings drawings, SchoolSettings school, Clock clock) {
        this.sql = sql;
        this.drawings = drawings;
        this.school = school;
        this.clock = clock;
    }

    /** One page of answers and whether an older page follows. */
    public record Page(List<AnswerLine> lines, boolean more) {}

    /**
     * The answers of a person as they see them themselves: those to exercises that an open check of theirs asks are left
     * out until it is handed in.
     */
    public Page own(UUID person, Optional<String> skill, int page) {
        return of(person, skill, page, true);
    }

    /** The answers of a person as others see them, all or those of one skill; pages count from 1. */
    public Page of(UUID person, Optional<String> skill, int page) {
        return of(person, skill, page, false);
    }

    private Page of(UUID person, Optional<String> skill, int page, boolean withholds) {
        DecimalMark mark = school.decimalMark();
        List<AnswerLine> lines = sql
                .list(
                        """
                        SELECT a.draw_id, d.exercise_id, d.version, d.skill, d.seed,
                               a.part, a.typed, a.read_value, a.read_unit, a.read_figures, a.verdict, a.slip, a.expected,
                               a.hints, a.shown_at, a.answered_at, a.core_version, a.confidence, a.estimate,
                               a.looked_up
                        FROM answer a JOIN draw d ON d.id = a.draw_id
                        WHERE a.person_id = ? AND (?::text IS NULL OR d.skill = ?)
                            AND NOT (? AND EXISTS (SELECT 1 FROM asked_in_check c
                                WHERE c.person_id = a.person_id AND c.exercise_id = d.exercise_id))
                        ORDER BY a.answered_at DESC, a.draw_id, a.part DESC
                        LIMIT ? OFFSET ?""",
                        AnswerHistory::found,
                        person,
                        skill.orElse(null),
                        skill.orElse(null),
                        withholds,
                        PAGE + 1,
                        (long) PAGE * (page - 1))
                .stream()
                .map(found -> line(found, mark))
                .toList();
        return new Page(lines.subList(0, Math.min(PAGE, lines.size())), lines.size() > PAGE);
    }

    /** A slip and how often a person made it. */
    public record SlipCount(String title, int times) {}

    /** The slips that a person made, the most frequent first; read from counts that each answer keeps up. */
    public List<SlipCount> slips(UUID person, int most) {
        return sql.list(
                "SELECT slip, times FROM slip_standing WHERE person_id = ? ORDER BY times DESC, slip LIMIT ?",
                row -> new SlipCount(
                        Slip.byId(row.text("slip")).map(Slip::title).orElse(row.text("slip")), row.number("times")),
                person,
                most);
    }

    /** A span of time of a person; without end where it lasts. */
    public record Span(UUID person, Instant from, Instant until) {
        /** One part of each span as the database reads an array of it. */
        static String[] texts(List<Span> spans, Function<Span, Object> part) {
            return spans.stream()
                    .map(part)
                    .map(one -> one == null ? null : one.toString())
                    .toArray(String[]::new);
        }
    }

    /** How many answers somebody gave in a span, and how many of them were right. */
    public record Tally(int answers, int right) {}

    /** What was practised in each span, in the order asked; answers that became counts meanwhile are not in it. */
    public List<Tally> tallies(List<Span> spans) {
        return sql.list(
                """
                SELECT count(a.draw_id)::int AS answers, count(*) FILTER (WHERE a.verdict = 'RIGHT')::int AS right_answers
                FROM unnest(?::uuid[], ?::text[]::timestamptz[], ?::text[]::timestamptz[])
                     WITH ORDINALITY AS s (person, since, until, place)
                LEFT JOIN answer a ON a.person_id = s.person AND a.answered_at >= s.since
                    AND a.answered_at < coalesce(s.until, 'infinity')
                GROUP BY s.place ORDER BY s.place""",
                row -> new Tally(row.number("answers"), row.number("right_answers")),
                Span.texts(spans, Span::person),
                Span.texts(spans, Span::from),
                Span.texts(spans, Span::until));
    }

    /**
     * The answers of a week.
     *
     * @param monday the first day of the week, at the school
     */
    public record Week(LocalDate monday, int answers, int right) {}

    /**
     * The answers of a person week by week, those of so many weeks until today, the latest first; read from counts that
     * each answer keeps up. A week is that of the school's zone at the time of the answer.
     */
    public List<Week> weeks(UUID person, int most) {
        LocalDate from = LocalDate.ofInstant(clock.instant(), school.zone())
                .with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY))
                .minusWeeks(most - 1L);
        return sql.list(
                """
                SELECT monday, answers, right_answers FROM week_standing WHERE person_id = ? AND monday >= ?
                ORDER BY monday DESC""",
                row -> new Week(row.date("monday"), row.number("answers"), row.number("right_answers")),
                person,
                from);
    }

    private record Found(UUID draw, String exercise, String version, String skill, long seed, StoredAnswer answer) {}

    private static Found found(Row row) throws SQLException {
        return new Found(
                row.uuid("draw_id"),
                row.text("exercise_id"),
                row.text("version"),
                row.text("skill"),
                row.longNumber("seed"),
                DrawRows.answer(row));
    }

    private AnswerLine line(Found found, DecimalMark mark) {
        Optional<DrawnExercise> drawn = drawings.of(found.exercise, found.version, found.skill, found.seed);
        StoredAnswer answer = found.answer;
        return new AnswerLine(
                found.draw,
                answer.part(),
                found.skill,
                drawn.map(draw -> draw.template().title()).orElse(found.exercise),
                drawn.map(draw -> draw.prompt(answer.part(), mark)).orElse(""),
                answer.typed(),
                drawn.map(draw -> Answers.words(draw, answer.read(), mark)).orElse(answer.readValue()),
                answer.expected(),
                VerdictWords.of(answer.verdict()),
                Optional.ofNullable(answer.slip())
                        .filter(slip -> !Verdict.valueOf(answer.verdict()).isTheSlip())
                        .map(slip -> Slip.byId(slip).map(Slip::title).orElse(slip))
                        .orElse(""),
                answer.hints(),
                answer.answeredAt());
    }
}
