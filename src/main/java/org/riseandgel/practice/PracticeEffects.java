package org.riseandgel.practice;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.riseandgel.platform.school.SchoolSettings;
import org.riseandgel.platform.sql.Sql;
import org.riseandgel.practice.AnswerHistory.Span;

/**
 * What practice came to after a time: first tries on fresh numbers at about 0, 21 and 90 days after a skill was begun.
 * "Learned" may be said of the delayed first tries only (ISO 10015 and ANSI/ASSP Z490.1 ask for effect after training; the
 * three days are common practice, no source).
 *
 * <p>A first try is the first finished draw of a person in a skill on a day: whatever came later that day was relearning.
 * It is right when all its answers were right without help. Each person and skill counts once at each time. A later try is
 * like the first one when it is of the same person, skill and level.
 */
@ApplicationScoped
public class PracticeEffects {
    private static final String FIRST_TRIES =
            """
            WITH span AS (
                SELECT * FROM unnest(?::uuid[], ?::text[]::timestamptz[], ?::text[]::timestamptz[])
                    AS s (person, since, until)),
            tried AS (
                SELECT d.person_id, d.skill, d.level, d.finished_at,
                       (d.finished_at AT TIME ZONE ?)::date - s.first_day AS day,
                       bool_and(a.verdict = 'RIGHT' AND a.hints = 0 AND NOT a.looked_up) AS all_right
                FROM draw d
                JOIN answer a ON a.draw_id = d.id
                JOIN skill_standing s ON s.person_id = d.person_id AND s.skill = d.skill
                WHERE d.person_id IN (SELECT person FROM span) AND d.finished_at IS NOT NULL
                GROUP BY d.id, s.first_day),
            earliest AS (
                SELECT DISTINCT ON (t.person_id, t.skill, w.about)
                       w.about, t.person_id, t.skill, t.level, t.finished_at, t.all_right
                FROM (VALUES (0, 0, 0), (21, 18, 28), (90, 80, 110)) AS w (about, since, until)
                JOIN tried t ON t.day BETWEEN w.since AND w.until
                ORDER BY t.person_id, t.skill, w.about, t.finished_at),
            first AS (
                SELECT * FROM earliest e
                WHERE EXISTS (SELECT FROM span WHERE span.person = e.person_id AND e.finished_at >= span.since
                              AND e.finished_at < coalesce(span.until, 'infinity')))
            SELECT w.about, count(DISTINCT f.person_id)::int AS people, count(f.about)::int AS tries,
                   (count(*) FILTER (WHERE f.all_right))::int AS all_right,
                   count(b.about)::int AS alike, (count(*) FILTER (WHERE b.all_right))::int AS right_before,
                   (count(*) FILTER (WHERE b.about IS NOT NULL AND f.all_right))::int AS right_now
            FROM (VALUES (0), (21), (90)) AS w (about)
            LEFT JOIN first f ON f.about = w.about
            LEFT JOIN first b ON b.about = 0 AND f.about > 0 AND b.person_id = f.person_id AND b.skill = f.skill
                AND b.level = f.level
            GROUP BY w.about ORDER BY w.about""";

    private final Sql sql;
    private final SchoolSettings school;

    PracticeEffects(Sql sql, SchoolSettings school) {
        this.sql = sql;
        this.school = school;
    }

    /**
     * First tries at about one time after the beginning.
     *
     * @param day about how many days after it
     * @param people how many people they are of
     * @param tries how many first tries there were
     * @param right how many of them were right without help
     * @param alike those of the same person, skill and level as a first try at the beginning; none at the beginning itself
     */
    public record FirstTries(int day, int people, int tries, int right, Alike alike) {}

    /**
     * First tries that have a like one at the beginning.
     *
     * @param tries how many there are
     * @param rightBefore how many were right at the beginning
     * @param rightNow how many were right at the later time
     */
    public record Alike(int tries, int rightBefore, int rightNow) {}

    /** The first tries in these spans, in all skills, at day 0, about day 21 and about day 90, in that order. */
    public List<FirstTries> of(List<Span> spans) {
        return sql.list(
                FIRST_TRIES,
                row -> new FirstTries(
                        row.number("about"),
                        row.number("people"),
                        row.number("tries"),
                        row.number("all_right"),
                        new Alike(row.number("alike"), row.number("right_before"), row.number("right_now"))),
                Span.texts(spans, Span::person),
                Span.texts(spans, Span::from),
                Span.texts(spans, Span::until),
                school.zone().getId());
    }
}
