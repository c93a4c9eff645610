package org.riseandgel.practice;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
            s.level, s.rung, s.run, s.last_verdict
            """;

    private final Sql sql;

    Standings(Sql sql) {
        this.sql = sql;
    }

    /** An open draw of a skill. */
    public record OpenDraw(UUID id, String skill, int level, Instant drawnAt) {}

    /** Everything a person has begun. */
    public record Begun(Map<String, StandingView> standings, List<OpenDraw> open) {
        /** The standing in a skill, also in one that was never tried. */
        public StandingView in(String skill) {
            return standings.getOrDefault(skill, StandingView.none(skill));
        }
    }

    /** Standings and open draws of a person; the draw that was begun last comes first. */
    public Begun of(UUID person) {
        List<Both> rows = sql.list(
                "SELECT coalesce(s.skill, d.skill) AS skill, d.id, d.level AS draw_level, d.drawn_at, " + COLUMNS
                        + """
                        FROM (SELECT * FROM skill_standing WHERE person_id = ?) s
                        FULL JOIN (SELECT * FROM draw WHERE person_id = ? AND finished_at IS NULL) d ON d.skill = s.skill
                        ORDER BY d.drawn_at DESC NULLS LAST""",
                Standings::both,
                person,
                person);
        Map<String, StandingView> standings = new LinkedHashMap<>();
        rows.forEach(row -> standings.putIfAbsent(row.standing.skill(), row.standing));
        return new Begun(
                standings,
                rows.stream().map(Both::draw).filter(draw -> draw.id() != null).toList());
    }

    /** The standings of many people, by person and skill; who has not begun is left out. */
    public Map<UUID, Map<String, StandingView>> of(Collection<UUID> people) {
        Map<UUID, Map<String, StandingView>> byPerson = new LinkedHashMap<>();
        sql.list(
                        "SELECT s.person_id, s.skill, " + COLUMNS
                                + "FROM skill_standing s WHERE s.person_id = ANY (?::uuid[])",
                        row -> Map.entry(row.uuid("person_id"), view(row)),
                        (Object) people.stream().map(UUID::toString).toArray(String[]::new))
                .forEach(entry -> byPerson.computeIfAbsent(entry.getKey(), person -> new LinkedHashMap<>())
                        .put(entry.getValue().skill(), entry.getValue()));
        return byPerson;
    }

    private record Both(StandingView standing, OpenDraw draw) {}

    private static Both both(Row row) throws SQLException {
        OpenDraw draw =
                new OpenDraw(row.uuid("id"), row.text("skill"), row.number("draw_level"), row.instant("drawn_at"));
        return new Both(view(row), draw);
    }

    private static StandingView view(Row row) throws SQLException {
        return StandingView.of(row.text("skill"), DrawRows.standing(row), row.text("last_verdict"));
    }
}
