package org.riseandgel.practice;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.riseandgel.course.Content;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.practice.SkillLists.SkillCard;
import org.riseandgel.practice.Today.LessonLine;
import org.riseandgel.sitting.WaitingChecks;

/**
 * The one thing to do next.
 *
 * @param title what it is about; empty where there is no one thing
 * @param address where it is, or where the button posts to
 * @param items how many items there are, for a check and for a session of mixed items
 * @param minutes how long it takes
 */
public record NextStep(Kind kind, String title, String address, int items, int minutes) {
    /** How long a draw takes in practice, in minutes: judgement, no source. */
    private static final int DRAW = 5;

    /** The kinds of things to do, the most pressing first. */
    public enum Kind {
        GO_ON_CHECK("Go on with it", false),
        CHECK("Look at it", false),
        GO_ON("Go on", false),
        LOOK_AT("See why", false),
        SEE_EXAMPLE("See the worked example", false),
        GO_ON_MIXED("Go on", true),
        MIXED("Begin", true),
        PRACTISE_NEW("Practise", true),
        READ("Read it", false),
        PRACTISE("Practise", true),
        ANOTHER_MIXED("Mix again", true),
        NOTHING("Look at the course", false);

        private final String button;
        private final boolean posts;

        Kind(String button, boolean posts) {
            this.button = button;
            this.posts = posts;
        }

        /** What the button says. */
        public String button() {
            return button;
        }

        /** Whether one press begins something that is stored. */
        public boolean posts() {
            return posts;
        }
    }

    /** Chooses among what there is, for one person at one moment. */
    record Choice(
            Content now,
            List<WaitingChecks.Waiting> checks,
            Standings.Begun begun,
            List<LessonLine> lessons,
            List<SkillCard> skills,
            Set<String> read) {

        NextStep made() {
            return check().or(this::open)
                    .or(this::sureAndWrong)
                    .or(this::held)
                    .or(this::mixed)
                    .or(this::newSkill)
                    .or(this::lesson)
                    .or(this::practise)
                    .or(this::anotherMixed)
                    .orElse(new NextStep(Kind.NOTHING, "", "/course", 0, 0));
        }

        /** What an open check asks is not practised meanwhile, so it comes before everything else. */
        private Optional<NextStep> check() {
            return checks.stream()
                    .min(Comparator.comparing(check -> !check.begun()))
                    .map(check -> new NextStep(
                            check.begun() ? Kind.GO_ON_CHECK : Kind.CHECK,
                            check.title(),
                            "/checks/" + check.check(),
                            check.items(),
                            MixedPractice.minutes(check.items())));
        }

        /** An open draw outside of a session; one inside is an item of the session. */
        private Optional<NextStep> open() {
            return begun.open().stream()
                    .filter(draw -> !draw.mixed())
                    .findFirst()
                    .map(draw -> new NextStep(
                            Kind.GO_ON, Today.title(now, draw.skill()), DrawPages.address(draw.id()), 0, DRAW));
        }

        /** Whoever was sure and wrong looks at the explanation before anything else of the day. */
        private Optional<NextStep> sureAndWrong() {
            return begun.toDo().stream()
                    .filter(ToDo::isToLookAt)
                    .findFirst()
                    .map(toDo -> new NextStep(
                            Kind.LOOK_AT,
                            Today.title(now, toDo.skill()),
                            DrawPages.address(toDo.draw()) + "?part=" + (toDo.part() + 1),
                            0,
                            2));
        }

        private Optional<NextStep> held() {
            return begun.toDo().stream()
                    .filter(ToDo::isHeld)
                    .flatMap(toDo -> now.exercises().find(toDo.exercise()).stream())
                    .findFirst()
                    .map((ExerciseTemplate exercise) -> new NextStep(
                            Kind.SEE_EXAMPLE,
                            Today.title(now, exercise.skill()),
                            new Begin.Example(exercise.id()).address(),
                            0,
                            DRAW));
        }

        /** The day begins with what was learned before it. */
        private Optional<NextStep> mixed() {
            if (begun.session() != null) {
                int left = begun.session().left();
                return left > 0 ? Optional.of(session(Kind.GO_ON_MIXED, left)) : Optional.empty();
            }
            int waiting = MixedPractice.waiting(now, begun);
            return waiting > 0 ? Optional.of(session(Kind.MIXED, waiting)) : Optional.empty();
        }

        private Optional<NextStep> anotherMixed() {
            int waiting = MixedPractice.waiting(now, begun);
            return waiting > 0 ? Optional.of(session(Kind.ANOTHER_MIXED, waiting)) : Optional.empty();
        }

        private static NextStep session(Kind kind, int items) {
            return new NextStep(kind, "", "/practice/mixed", items, MixedPractice.minutes(items));
        }

        /** A skill whose lesson was read and that was never tried. */
        private Optional<NextStep> newSkill() {
            return skills.stream()
                    .filter(skill -> skill.standing().answers() == 0 && isTaught(skill.id()))
                    .findFirst()
                    .map(skill -> practise(Kind.PRACTISE_NEW, skill));
        }

        private boolean isTaught(String skill) {
            return now.lessons().values().stream()
                    .filter(lesson -> lesson.practice().contains(skill))
                    .anyMatch(lesson -> read.contains(lesson.key().id()));
        }

        private Optional<NextStep> lesson() {
            return lessons.stream()
                    .filter(lesson -> !lesson.read())
                    .findFirst()
                    .map(lesson -> new NextStep(Kind.READ, lesson.title(), lesson.address(), 0, lesson.minutes()));
        }

        /** What was not practised for the longest time of what is not mastered. */
        private Optional<NextStep> practise() {
            return skills.stream()
                    .filter(skill -> skill.standing().masteredOn() == null)
                    .min(Comparator.comparing(
                            skill -> skill.standing().lastAt(), Comparator.nullsFirst(Comparator.naturalOrder())))
                    .map(skill -> practise(Kind.PRACTISE, skill));
        }

        private static NextStep practise(Kind kind, SkillCard skill) {
            return new NextStep(kind, skill.title(), "/practice/" + skill.id() + "/draw", 0, DRAW);
        }
    }
}
