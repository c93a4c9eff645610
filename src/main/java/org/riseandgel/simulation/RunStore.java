package org.riseandgel.simulation;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.course.Simulation.Outcome;
import org.riseandgel.platform.sql.Row;
import org.riseandgel.platform.sql.Sql;

/** Runs and their steps in the database. By SQL, because a choice and the end it may bring are one statement. */
@ApplicationScoped
class RunStore {
    private static final String RUN =
            "SELECT id, person_id, simulation_id, title, timed, begun_at, shown_at, ended_at, ending FROM simulation_run ";

    /** A second press meets the first choice at the primary key and changes nothing. */
    private static final String CHOOSE =
            """
            WITH taken AS (
                INSERT INTO simulation_step (run_id, number, scene, scene_title, chosen, outcome, consequence, why,
                    leads_to, shown_at, chosen_at, late)
                SELECT r.id, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
                FROM simulation_run r
                WHERE r.id = ? AND r.person_id = ? AND r.ended_at IS NULL
                    AND (SELECT count(*) FROM simulation_step s WHERE s.run_id = r.id) = ?
                ON CONFLICT DO NOTHING
                RETURNING run_id),
            moved AS (
                UPDATE simulation_run SET shown_at = ?, ended_at = ?::timestamptz, ending = ?::text
                FROM taken WHERE simulation_run.id = taken.run_id)
            SELECT run_id FROM taken""";

    private final Sql sql;

    RunStore(Sql sql) {
        this.sql = sql;
    }

    /** Stores a new run; false, and nothing stored, when one of the simulation is open. */
    boolean add(Run run) {
        return sql.change(
                        """
                        INSERT INTO simulation_run (id, person_id, simulation_id, title, timed, begun_at, shown_at)
                        VALUES (?, ?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING""",
                        run.id(),
                        run.person(),
                        run.simulation(),
                        run.title(),
                        run.timed(),
                        run.begunAt(),
                        run.shownAt())
                > 0;
    }

    /** The run with its steps, if it is that person's. */
    Optional<Run> load(UUID person, UUID run) {
        return sql.first(RUN + "WHERE id = ? AND person_id = ?", row -> run(row, steps(run)), run, person);
    }

    /** The open run of a simulation. */
    Optional<UUID> open(UUID person, String simulation) {
        return sql.first(
                "SELECT id FROM simulation_run WHERE person_id = ? AND simulation_id = ? AND ended_at IS NULL",
                row -> row.uuid("id"),
                person,
                simulation);
    }

    /** The latest runs of a simulation that came to an end, the newest first. */
    List<Run> ended(UUID person, String simulation, int most) {
        return sql
                .list(
                        "SELECT id FROM simulation_run WHERE person_id = ? AND simulation_id = ? AND ending IS NOT NULL"
                                + " ORDER BY ended_at DESC LIMIT ?",
                        row -> row.uuid("id"),
                        person,
                        simulation,
                        most)
                .stream()
                .flatMap(id -> load(person, id).stream())
                .toList();
    }

    /**
     * Stores a choice, and the end of the run where it leads to one.
     *
     * @param ending the scene at which the run ends; null when it goes on
     * @return false, and nothing stored, when the run has moved on since it was loaded
     */
    boolean choose(Run run, Run.Step step, String ending) {
        return sql.any(
                CHOOSE,
                step.number(),
                step.scene(),
                step.sceneTitle(),
                step.chosen(),
                step.outcome().name(),
                step.consequence(),
                step.why(),
                step.leadsTo(),
                step.shownAt(),
                step.chosenAt(),
                step.late(),
                run.id(),
                run.person(),
                step.number() - 1,
                step.chosenAt(),
                ending == null ? null : step.chosenAt(),
                ending);
    }

    /** Notes that the next scene was gone on to. */
    void goneOn(UUID person, UUID run, Instant now) {
        sql.change(
                "UPDATE simulation_run SET shown_at = ? WHERE id = ? AND person_id = ? AND ended_at IS NULL",
                now,
                run,
                person);
    }

    /** Leaves the open run of a simulation, if there is one; what was chosen in it stays. */
    void leave(UUID person, String simulation, Instant now) {
        sql.change(
                "UPDATE simulation_run SET ended_at = ? WHERE person_id = ? AND simulation_id = ? AND ended_at IS NULL",
                now,
                person,
                simulation);
    }

    private List<Run.Step> steps(UUID run) {
        return sql.list(
                """
                SELECT number, scene, scene_title, chosen, outcome, consequence, why, leads_to, shown_at, chosen_at, late
                FROM simulation_step WHERE run_id = ? ORDER BY number""",
                RunStore::step,
                run);
    }

    private static Run run(Row row, List<Run.Step> steps) throws SQLException {
        return new Run(
                row.uuid("id"),
                row.uuid("person_id"),
                row.text("simulation_id"),
                row.text("title"),
                row.flag("timed"),
                row.instant("begun_at"),
                row.instant("shown_at"),
                row.instant("ended_at"),
                row.text("ending"),
                steps);
    }

    private static Run.Step step(Row row) throws SQLException {
        return new Run.Step(
                row.number("number"),
                row.text("scene"),
                row.text("scene_title"),
                row.text("chosen"),
                Outcome.valueOf(row.text("outcome")),
                row.text("consequence"),
                row.text("why"),
                row.text("leads_to"),
                row.instant("shown_at"),
                row.instant("chosen_at"),
                row.flag("late"));
    }
}
