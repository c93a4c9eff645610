package org.riseandgel.practice;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
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

    AnswerHistory(Sql sql, Drawings drawings, SchoolSettings school) {
        this.sql = sql;
        this.drawings = drawings;
        this.school = school;
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
