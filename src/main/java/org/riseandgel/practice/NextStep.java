package org.riseandgel.practice;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.riseandgel.course.Content;
import org.riseandgel.practice.SkillLists.SkillCard;
import org.riseandgel.practice.SkillLists.StageSkills;
import org.riseandgel.practice.Today.LessonLine;

/**
 * The one thing to do next.
 *
 * @param title what it is about
 * @param draw the open draw to go on with, or null
 * @param lesson the lesson to read, or null
 * @param skill the skill to practise, or the one that somebody is stuck in, or null
 */
public record NextStep(Kind kind, String title, UUID draw, LessonLine lesson, SkillCard skill) {
    /** The kinds of things to do. */
    public enum Kind {
        GO_ON,
        READ,
        READ_AGAIN,
        PRACTISE,
        KEEP_FRESH,
        NOTHING
    }

    /** Chooses among what there is, for one person at one moment. */
    record Choice(
            Content now,
            Standings.Begun begun,
            List<StageSkills> stages,
            List<LessonLine> lessons,
            List<SkillCard> skills,
            Set<String> read) {

        NextStep made() {
            return open().or(this::stuck)
                    .or(this::firstLesson)
                    .or(this::practise)
                    .orElse(new NextStep(Kind.NOTHING, "", null, null, null));
        }

        private Optional<NextStep> open() {
            return begun.open().stream()
                    .findFirst()
                    .map(draw -> new NextStep(Kind.GO_ON, Today.title(now, draw.skill()), draw.id(), null, null));
        }

        /** Whoever is stuck reads the lesson with the worked example before the next try. */
        private Optional<NextStep> stuck() {
            return stages.stream()
                    .flatMap(stage -> stage.skills().stream())
                    .filter(skill -> skill.standing().state() == SkillState.STUCK)
                    .findFirst()
                    .flatMap(skill -> lessonOn(skill.id())
                            .map(lesson -> new NextStep(Kind.READ_AGAIN, skill.title(), null, lesson, skill)));
        }

        private Optional<LessonLine> lessonOn(String skill) {
            return now.lessons().values().stream()
                    .filter(lesson -> lesson.skills().contains(skill))
                    .findFirst()
                    .map(lesson -> LessonLine.of(lesson, read));
        }

        private Optional<NextStep> firstLesson() {
            boolean practised =
                    skills.stream().anyMatch(skill -> skill.standing().answers() > 0);
            return lessons.stream()
                    .filter(lesson -> !practised && !lesson.read())
                    .findFirst()
                    .map(lesson -> new NextStep(Kind.READ, lesson.title(), null, lesson, null));
        }

        /** What was not practised for the longest time, mastered skills last. */
        private Optional<NextStep> practise() {
            return skills.stream()
                    .min(Comparator.comparing(SkillCard::isMastered)
                            .thenComparing(
                                    skill -> skill.standing().lastAt(),
                                    Comparator.nullsFirst(Comparator.naturalOrder())))
                    .map(skill -> new NextStep(
                            skill.isMastered() ? Kind.KEEP_FRESH : Kind.PRACTISE, skill.title(), null, null, skill));
        }
    }
}
