package org.riseandgel.practice;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.riseandgel.platform.sql.Row;
import org.riseandgel.platform.sql.Sql;

/**
 * Where people stand, read from the standings alone and never from the answers. By SQL, so that each question is one
 * statement, for one person or for a whole board.
 */
@ApplicationScoped
public class Standings {
    private static final String COLUMNS =
            """
            s.answers, s.right_answers, s.average, s.days, s.last_day, s.last_at, s.wrong_in_row, s.right_in_row,
            s.offered, s.rung, s.run, s.last_verdict, s.first_day, s.mastered_on, s.return_step, s.due_on, s.right_on_day,
            s.missed
            """;

    private static final String OF_ONE =
            "SELECT coalesce(s.skill, d.skill) AS skill, d.id, d.level AS draw_level, d.drawn_at, d.session_id, "
                    + COLUMNS
                    + ", ARRAY(SELECT " + ToDo.TEXT + " FROM exercise_standing WHERE person_id = ? AND " + ToDo.WORTH_IT
                    + " ORDER BY last_at) AS to_do,"
                    + """
                     ARRAY(SELECT stage FROM stage_opened WHERE person_id = ?) AS by_hand,
                     ARRAY(SELECT cardinality(items) || ' ' || (SELECT count(*) FROM draw WHERE session_id = t.id
                                   AND finished_at IS NOT NULL)
                           FROM practice_session t WHERE person_id = ? AND day = ? ORDER BY number DESC LIMIT 1) AS session
                    FROM (VALUES (1)) AS one (x)
                    LEFT JOIN (
                        (SELECT * FROM skill_standing WHERE person_id = ?) s
                        FULL JOIN (SELECT * FROM draw WHERE person_id = ? AND finished_at IS NULL AND NOT at_bench) d
                            ON d.skill = s.skill
                    ) ON true
                    ORDER BY d.drawn_at DESC NULLS LAST""";

    private static final String OF_MANY = "SELECT s.person_id, s.skill, " + COLUMNS
            + ", t.to_do FROM skill_standing s LEFT JOIN (SELECT person_id, skill, array_agg(" + ToDo.TEXT
            + ") AS to_do FROM exercise_standing WHERE person_id = ANY (?::uuid[]) AND " + ToDo.WORTH_IT
            + " GROUP BY person_id, skill) t ON t.person_id = s.person_id AND t.skill = s.skill"
            + " WHERE s.person_id = ANY (?::uuid[])";

    private final Sql sql;
    private final SchoolDay day;

    Standings(Sql sql, SchoolDay day) {
        this.sql = sql;
        this.day = day;
    }

    /** An open draw of a skill; in a session of mixed items the skill is not told. */
    public record OpenDraw(UUID id, String skill, int level, Instant drawnAt, boolean mixed) {}

    /** How far today's session of mixed items has come. */
    public record Session(int items, int done) {
        /** How many items are left. */
        public int left() {
            return items - done;
        }
    }

    /**
     * Everything a person has begun.
     *
     * @param today the school's day of the moment it was read
     * @param toDo what single exercises leave to do, the oldest first
     * @param openedByHand stages that an instructor opened
     * @param session today's latest session of mixed items; null when there is none
     */
    public record Begun(
            LocalDate today,
            Map<String, StandingView> standings,
            List<OpenDraw> open,
            List<ToDo> toDo,
            Set<String> openedByHand,
            Session session) {
        /** The standing in a skill, also in one that was never tried. */
        public StandingView in(String skill) {
            return standings.getOrDefault(skill, StandingView.none(skill));
        }

        /** Whether a session was begun today and is not over. */
        public boolean isSessionOpen() {
            return session != null && session.left() > 0;
        }
    }

    /** Standings, open draws and all that is left to do of a person; the draw that was begun last comes first. */
    public Begun of(UUID person) {
        LocalDate today = day.today();
        List<Both> rows = sql.list(OF_ONE, Standings::both, person, person, person, today, person, person);
        Map<String, StandingView> standings = new LinkedHashMap<>();
        rows.stream()
                .filter(row -> row.standing.skill() != null)
                .forEach(row -> standings.putIfAbsent(row.standing.skill(), row.standing));
        Both any = rows.get(0);
        return new Begun(
                today,
                standings,
                rows.stream().map(Both::draw).filter(draw -> draw.id() != null).toList(),
                any.toDo,
                Set.copyOf(any.byHand),
                any.session.stream().findFirst().map(Standings::session).orElse(null));
    }

    private static Session session(String text) {
        String[] counts = text.split(" ");
        return new Session(Integer.parseInt(counts[0]), Integer.parseInt(counts[1]));
    }

    /** The school's day of this moment, by which what is due is counted. */
    public LocalDate today() {
        return day.today();
    }

    /** The standings of many people, by person and skill; who has not begun is left out. */
    public Map<UUID, Map<String, StandingView>> of(Collection<UUID> people) {
        String[] ids = people.stream().map(UUID::toString).toArray(String[]::new);
        Map<UUID, Map<String, StandingView>> byPerson = new LinkedHashMap<>();
        sql.list(OF_MANY, row -> Map.entry(row.uuid("person_id"), view(row, toDo(row))), (Object) ids, (Object) ids)
                .forEach(entry -> byPerson.computeIfAbsent(entry.getKey(), person -> new LinkedHashMap<>())
                        .put(entry.getValue().skill(), entry.getValue()));
        return byPerson;
    }

    private record Both(
            StandingView standing, OpenDraw draw, List<ToDo> toDo, List<String> byHand, List<String> session) {}

    private static Both both(Row row) throws SQLException {
        OpenDraw draw = new OpenDraw(
                row.uuid("id"),
                row.text("skill"),
                row.number("draw_level"),
                row.instant("drawn_at"),
                row.uuid("session_id") != null);
        List<ToDo> toDo = toDo(row);
        List<ToDo> ofSkill =
                toDo.stream().filter(one -> one.skill().equals(draw.skill())).toList();
        return new Both(view(row, ofSkill), draw, toDo, row.texts("by_hand"), row.texts("session"));
    }

    private static List<ToDo> toDo(Row row) throws SQLException {
        return row.texts("to_do").stream().map(ToDo::of).toList();
    }

    private static StandingView view(Row row, List<ToDo> toDo) throws SQLException {
        return StandingView.of(row.text("skill"), DrawRows.standing(row), row.text("last_verdict"), toDo);
    }
}
