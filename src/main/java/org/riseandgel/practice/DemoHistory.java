package org.riseandgel.practice;

import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.UUID;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.account.SchoolFounded;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.course.CourseContent;
import org.riseandgel.course.Lesson;
import org.riseandgel.course.LessonsRead;
import org.riseandgel.exercise.Answers;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.exercise.ReadAnswer;
import org.riseandgel.platform.school.SchoolSettings;

/**
 * Gives the invented people of the demo school some weeks of practice: real exercises, drawn from fixed seeds, answered
 * on past evenings and judged as any answer is.
 */
@ApplicationScoped
class DemoHistory {
    private static final int AFTER_PEOPLE = 200;
    private static final long FIRST_SEED = 41_001;
    private static final int SECONDS_PER_PART = 95;
    private static final int LAST_STAGE = 9;
    private static final int LAST_BUT_FOUR = 5;

    private final DrawStore store;
    private final Drawings drawings;
    private final CourseContent content;
    private final LessonsRead lessonsRead;
    private final StageDoors doors;
    private final SchoolSettings school;
    private final Clock clock;

    DemoHistory(
            DrawStore store,
            Drawings drawings,
            CourseContent content,
            LessonsRead lessonsRead,
            StageDoors doors,
            SchoolSettings school,
            Clock clock) {
        this.store = store;
        this.drawings = drawings;
        this.content = content;
        this.lessonsRead = lessonsRead;
        this.doors = doors;
        this.school = school;
        this.clock = clock;
    }

    void fill(@Observes @Priority(AFTER_PEOPLE) SchoolFounded founded) {
        if (founded.demo()) {
            List<Lesson> lessons = List.copyOf(content.current().lessons().values());
            read(DemoPeople.ANOUK, lessons, lessons.size() / 2 + 1);
            read(DemoPeople.BASTIAN, lessons, lessons.size());
            read(DemoPeople.CELESTE, lessons, lessons.size() / 2);
            read(DemoPeople.DARIUS, lessons, 2);
            read(DemoPeople.ESME, lessons, 1);
            open(List.of(DemoPeople.ANOUK, DemoPeople.BASTIAN, DemoPeople.CELESTE), LAST_STAGE);
            open(List.of(DemoPeople.DARIUS, DemoPeople.ESME), LAST_BUT_FOUR);
            for (int i = 0; i < DemoVisit.ALL.size(); i++) {
                play(DemoVisit.ALL.get(i), FIRST_SEED + i);
            }
        }
    }

    private void read(UUID person, List<Lesson> lessons, int count) {
        lessons.stream().limit(count).forEach(lesson -> lessonsRead.note(person, lesson.key()));
    }

    /** The demo school worked at the bench before it had this course, so its instructor opened stages by hand. */
    private void open(List<UUID> people, int last) {
        for (UUID person : people) {
            content.course().stages().stream()
                    .filter(stage -> stage.number() > 1 && stage.number() <= last)
                    .forEach(stage -> doors.open(
                            person, stage.id(), DemoPeople.INSTRUCTOR, "Did this stage at the bench with me"));
        }
    }

    /** A course of the school's own may lack the skill or the level; then the visit did not take place. */
    private void play(DemoVisit visit, long seed) {
        List<ExerciseTemplate> choice = content.exercises().ofSkill(visit.skill(), visit.level()).stream()
                .filter(template -> !template.showsWrongWorking())
                .toList();
        if (!choice.isEmpty()) {
            ExerciseTemplate template = choice.get(visit.same() ? 0 : (int) (seed % choice.size()));
            DrawnExercise drawn = drawings.fresh(template, seed);
            Instant begun = begun(visit);
            store.add(
                            StoredDraw.fresh(visit.person(), drawn, begun),
                            template.file().text())
                    .ifPresent(draw -> answer(visit, draw, drawn, begun));
        }
    }

    private Instant begun(DemoVisit visit) {
        return LocalDate.ofInstant(clock.instant(), school.zone())
                .minusDays(visit.daysAgo())
                .atStartOfDay()
                .plusMinutes(visit.minute())
                .atZone(school.zone())
                .toInstant()
                .truncatedTo(ChronoUnit.MICROS);
    }

    private void answer(DemoVisit visit, UUID draw, DrawnExercise drawn, Instant begun) {
        for (int part = 0; part < drawn.partCount() && visit.act(part) != '.'; part++) {
            if (visit.act(part) == 'h') {
                store.showHint(visit.person(), draw, drawn.template().hints().size());
            }
            StoredDraw stored = store.load(visit.person(), draw).orElseThrow();
            Instant at = begun.plusSeconds((long) SECONDS_PER_PART * (part + 1));
            hand(stored, drawn, visit.act(part), at);
        }
    }

    private void hand(StoredDraw draw, DrawnExercise drawn, char act, Instant at) {
        int part = draw.nextPart();
        String typed = DemoHand.typed(drawn, part, act, mark());
        ReadAnswer read = Answers.read(drawn, part, typed, mark());
        if (!read.isClear()) {
            throw new IllegalStateException("an answer of the demo cannot be read: " + read.question());
        }
        boolean right = Answers.judge(drawn, part, read, mark()).verdict().isRight();
        Confidence confidence = confidence(act, right, draw.seed() + part);
        int needed = Returns.needed(SkillKinds.isMadeOfFacts(content.current(), draw.skill()));
        store.store(Marking.marked(draw, drawn, read, new Marking.At(confidence, at, mark(), school.zone(), needed)));
    }

    /** Invented people are mostly as sure as they are right, but not always. */
    private static Confidence confidence(char act, boolean right, long number) {
        if (act == 'S') {
            return Confidence.SURE;
        }
        int turn = (int) Long.remainderUnsigned(number, 10);
        if (right) {
            return turn < 6 ? Confidence.SURE : turn < 9 ? Confidence.FAIRLY : Confidence.GUESS;
        }
        return turn < 5 ? Confidence.FAIRLY : Confidence.GUESS;
    }

    private DecimalMark mark() {
        return school.decimalMark();
    }
}
