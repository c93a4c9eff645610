package org.riseandgel.practice;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.course.CourseContent;
import org.riseandgel.course.Skill;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.exercise.Solution;
import org.riseandgel.platform.school.SchoolSettings;
import org.riseandgel.platform.sql.Sql;

/**
 * Worked examples, and who has seen which. An example of an exercise that is open in a draw is shown only once the draw
 * knows that it was looked up, and never with that draw's numbers.
 */
@ApplicationScoped
public class Examples {
    /** The numbers of examples come from the first of these seeds that gives others than the open draws have. */
    private static final long FIRST_SEED = 71_003;

    private static final int SEEDS = 50;

    private final CourseContent content;
    private final Drawings drawings;
    private final Standings standings;
    private final SchoolSettings school;
    private final Sql sql;

    Examples(CourseContent content, Drawings drawings, Standings standings, SchoolSettings school, Sql sql) {
        this.content = content;
        this.drawings = drawings;
        this.standings = standings;
        this.school = school;
        this.sql = sql;
    }

    /** A draw of the exercise that is open, and whether it knows that the example was looked up. */
    private record OpenDraw(UUID id, String exercise, String version, String skill, long seed, boolean lookedUp) {}

    /** The draw that has to be told first, because looking the example up counts; empty when there is none. */
    public Optional<UUID> toldFirst(UUID person, String exercise) {
        return open(person, exercise).stream()
                .filter(draw -> !draw.lookedUp)
                .map(OpenDraw::id)
                .findFirst();
    }

    /** The example; empty when there is no such exercise. */
    public Optional<WorkedExample> of(UUID person, String exercise) {
        return content.exercises().find(exercise).map(template -> solved(person, template));
    }

    private WorkedExample solved(UUID person, ExerciseTemplate template) {
        DecimalMark mark = school.decimalMark();
        StandingView standing = standings.of(person).in(template.skill());
        DrawnExercise drawn = drawn(person, template, mark);
        List<Solution> parts = IntStream.range(0, drawn.partCount())
                .mapToObj(part -> Solution.of(drawn, part, mark))
                .toList();
        return new WorkedExample(
                template.id(),
                template.title(),
                template.skill(),
                content.course().skill(template.skill()).map(Skill::title).orElse(template.skill()),
                drawn.story(mark),
                parts,
                standing.toDo().stream()
                        .anyMatch(toDo -> toDo.isHeld() && toDo.exercise().equals(template.id())),
                standing.answers() == 0);
    }

    private DrawnExercise drawn(UUID person, ExerciseTemplate template, DecimalMark mark) {
        Set<String> stories = open(person, template.id()).stream()
                .flatMap(open -> drawings.of(open.exercise, open.version, open.skill, open.seed).stream())
                .map(drawn -> drawn.story(mark))
                .collect(Collectors.toSet());
        return LongStream.range(FIRST_SEED, FIRST_SEED + SEEDS)
                .mapToObj(seed -> drawings.fresh(template, seed))
                .filter(drawn -> !stories.contains(drawn.story(mark)))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(template + " has hardly two different draws"));
    }

    private List<OpenDraw> open(UUID person, String exercise) {
        return sql.list(
                """
                SELECT id, exercise_id, version, skill, seed, looked_up FROM draw
                WHERE person_id = ? AND exercise_id = ? AND finished_at IS NULL""",
                row -> new OpenDraw(
                        row.uuid("id"),
                        row.text("exercise_id"),
                        row.text("version"),
                        row.text("skill"),
                        row.longNumber("seed"),
                        row.flag("looked_up")),
                person,
                exercise);
    }

    /** Notes on every open draw of the exercise that its example was looked up: from then on its answers do not count. */
    public void lookUp(UUID person, String exercise) {
        sql.change(
                """
                UPDATE draw SET looked_up = true
                WHERE person_id = ? AND exercise_id = ? AND finished_at IS NULL AND NOT looked_up""",
                person,
                exercise);
    }

    /** Notes that the example was seen and frees the exercise if it was held; both or neither. */
    public void seen(UUID person, String skill, String exercise, Instant now) {
        sql.change(
                """
                WITH freed AS (
                    UPDATE exercise_standing SET held = NULL, wrong_in_row = 0
                    WHERE person_id = ? AND skill = ? AND exercise_id = ? AND held IS NOT NULL)
                INSERT INTO worked_example_seen (person_id, skill, exercise_id, seen_at) VALUES (?, ?, ?, ?)
                ON CONFLICT (person_id, skill, exercise_id) DO UPDATE SET seen_at = EXCLUDED.seen_at""",
                person,
                skill,
                exercise,
                person,
                skill,
                exercise,
                now);
    }

    /** When an example of the skill was seen last; empty when none was. */
    Optional<Instant> lastSeen(UUID person, String skill) {
        return sql.first(
                        "SELECT max(seen_at) AS seen FROM worked_example_seen WHERE person_id = ? AND skill = ?",
                        row -> Optional.ofNullable(row.instant("seen")),
                        person,
                        skill)
                .flatMap(seen -> seen);
    }

    /** Notes that the explanation of an answer that was sure and wrong was looked at. */
    void lookedAt(UUID person, UUID draw) {
        sql.change(
                """
                UPDATE exercise_standing SET sure_wrong = 'AGAIN'
                WHERE person_id = ? AND sure_wrong_draw = ? AND sure_wrong = 'LOOK'""",
                person,
                draw);
    }
}
