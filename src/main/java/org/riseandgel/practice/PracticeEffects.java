package org.riseandgel.practice;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.riseandgel.platform.school.SchoolSettings;
import org.riseandgel.platform.sql.Sql;

/**
 * What practice came to after a time: first tries on fresh numbers at about 0, 21 and 90 days after a skill was begun.
 * "Learned" may be said of the delayed first tries only (ISO 10015 and ANSI/ASSP Z490.1 ask for effect after training; the
 * three days are common practice, no source).
 *
 * <p>A first try is the first finished draw of a person in a skill on a day: whatever came later that day was relearning.
 * It is right when all its answers were right without help. Each person and skill counts once at each time.
 */
@ApplicationScoped
public class PracticeEffects {
    private static final String FIRST_TRIES =
            """
            WITH tried AS (
                SELECT d.person_id, d.skill, d.id, d.finished_at,
                       (d.finished_at AT TIME ZONE ?)::date - s.first_day AS day,
                       bool_and(a.verdict = 'RIGHT' AND a.hints = 0 AND NOT a.looked_up) AS all_right
                FROM draw d
                JOIN answer a ON a.draw_id = d.id
                JOIN skill_standing s ON s.person_id = d.person_id AND s.skill = d.skill
                WHERE d.person_id = ANY (?::uuid[]) AND d.finished_at IS NOT NULL
                GROUP BY d.id, s.first_day),
            first AS (
                SELECT DISTINCT ON (t.person_id, t.skill, w.about) w.about, t.all_right
                FROM (VALUES (0, 0, 0), (21, 18, 28), (90, 80, 110)) AS w (about, earliest, latest)
                JOIN tried t ON t.day BETWEEN w.earliest AND w.latest
                ORDER BY t.person_id, t.skill, w.about, t.finished_at)
            SELECT w.about, count(f.about)::int AS tries, (count(f.about) FILTER (WHERE f.all_right))::int AS all_right
            FROM (VALUES (0), (21), (90)) AS w (about) LEFT JOIN first f ON f.about = w.about
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
     * @param tries how many first tries there were
     * @param right how many of them were right without help
     */
    public record FirstTries(int day, int tries, int right) {}

    /** The first tries of these people in all skills, at day 0, about day 21 and about day 90, in that order. */
    public List<FirstTries> of(Collection<UUID> people) {
        return sql.list(
                FIRST_TRIES,
                row -> new FirstTries(row.number("about"), row.number("tries"), row.number("all_right")),
                school.zone().getId(),
                (Object) people.stream().map(UUID::toString).toArray(String[]::new));
    }
}
