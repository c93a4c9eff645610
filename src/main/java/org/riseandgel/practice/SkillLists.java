package org.riseandgel.practice;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.riseandgel.course.Content;
import org.riseandgel.course.CourseContent;
import org.riseandgel.course.Skill;
import org.riseandgel.course.Stage;
import org.riseandgel.exercise.ExerciseTemplate;

/** The skills that can be practised, in the order of the course, with where a person stands in each. */
@ApplicationScoped
public class SkillLists {
    private final CourseContent content;
    private final Standings standings;
    private final StageDoors doors;

    SkillLists(CourseContent content, Standings standings, StageDoors doors) {
        this.content = content;
        this.standings = standings;
        this.doors = doors;
    }

    /** The skills of a stage that have exercises, and whether the stage is open. */
    public record StageSkills(String id, int number, String title, boolean open, List<SkillCard> skills) {}

    /**
     * A skill with one person's standing.
     *
     * @param open the draw to go on with; null when none is open
     * @param levels the levels at which there are exercises
     */
    public record SkillCard(
            String id, String title, String about, StandingView standing, UUID open, List<Integer> levels) {
        /** Whether the person has mastered it in practice. */
        public boolean isMastered() {
            return standing.state() == SkillState.MASTERED;
        }

        /** The level of the exercises that one press leads to. */
        public int offered() {
            return levels.stream()
                    .min((one, other) ->
                            Integer.compare(Math.abs(one - standing.level()), Math.abs(other - standing.level())))
                    .orElse(1);
        }
    }

    /** An option of a list of skills. */
    public record Choice(String value, String label) {}

    /** The stages that have exercises, with the standings of this person. */
    public List<StageSkills> of(UUID person) {
        Standings.Begun begun = standings.of(person);
        return of(begun, doors.shut(person, begun));
    }

    List<StageSkills> of(Standings.Begun begun, Set<String> shut) {
        Content now = content.current();
        return now.course().stages().stream()
                .map(stage -> stageSkills(now, stage, begun, !shut.contains(stage.id())))
                .filter(stage -> !stage.skills().isEmpty())
                .toList();
    }

    /** The skills that have exercises, to choose from, after one that stands for all. */
    public List<Choice> choices() {
        Content now = content.current();
        return Stream.concat(
                        Stream.of(new Choice("", "All skills")),
                        now.course().skills().stream()
                                .filter(skill -> !levels(now, skill.id()).isEmpty())
                                .map(skill -> new Choice(skill.id(), skill.title())))
                .toList();
    }

    private static StageSkills stageSkills(Content now, Stage stage, Standings.Begun begun, boolean open) {
        List<SkillCard> cards = now.course().skills().stream()
                .filter(skill -> skill.stage().equals(stage.id()))
                .map(skill -> card(now, skill, begun))
                .filter(card -> !card.levels().isEmpty())
                .toList();
        return new StageSkills(stage.id(), stage.number(), stage.title(), open, cards);
    }

    static SkillCard card(Content now, Skill skill, Standings.Begun begun) {
        Optional<Standings.OpenDraw> open = begun.open().stream()
                .filter(draw -> draw.skill().equals(skill.id()) && !draw.mixed())
                .findFirst();
        return new SkillCard(
                skill.id(),
                skill.title(),
                skill.about(),
                begun.in(skill.id()),
                open.map(Standings.OpenDraw::id).orElse(null),
                levels(now, skill.id()));
    }

    static List<Integer> levels(Content now, String skill) {
        return now.exercises().ofSkill(skill).stream()
                .map(ExerciseTemplate::level)
                .distinct()
                .sorted()
                .toList();
    }
}
