package org.riseandgel.grading;

import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.account.SchoolFounded;
import org.riseandgel.course.CourseContent;
import org.riseandgel.exercise.ExerciseLibrary;
import org.riseandgel.platform.school.SchoolSettings;

/**
 * Gives the demo school three graded sets: one that has closed, with results and a corrected mark; one that is open, with
 * work begun and handed in; and a draft. Everything follows from fixed seeds.
 */
@ApplicationScoped
class DemoSets {
    private static final int AFTER_PRACTICE = 300;
    private static final int MOST_LINES = 4;
    private static final List<String> SKILLS =
            List.of("expansion", "stick-marks-straight", "batch-scaling", "cavity-volume", "weighing");

    private final SetStore store;
    private final DemoWork work;
    private final CourseContent content;
    private final SchoolSettings school;
    private final Clock clock;

    DemoSets(SetStore store, DemoWork work, CourseContent content, SchoolSettings school, Clock clock) {
        this.store = store;
        this.work = work;
        this.content = content;
        this.school = school;
        this.clock = clock;
    }

    void fill(@Observes @Priority(AFTER_PRACTICE) SchoolFounded founded) {
        if (founded.demo() && !lines(MOST_LINES).isEmpty()) {
            GradedSet closed = out(201, "First look at foam", Policy.CLOSING, 1, days(-20, 8), days(-10, 20));
            work.of(closed, DemoPeople.ANOUK, moment(days(-15, 18)), "rrsrrr", true);
            work.of(closed, DemoPeople.BASTIAN, moment(days(-14, 18)), "rrrrrrrrrr", true);
            work.of(closed, DemoPeople.CELESTE, moment(days(-11, 19)), "swrs", false);
            work.correct(closed, DemoPeople.CELESTE, "The drawing was misprinted; the way was right.");
            GradedSet open = out(202, "Volume and batch, week two", Policy.EACH, 2, days(-3, 8), days(4, 20));
            work.of(open, DemoPeople.BASTIAN, moment(days(-2, 18)), "rrrsrrrrrr", true);
            work.of(open, DemoPeople.ANOUK, moment(days(-1, 18)), "r", false);
            store.add(
                    draft(203, "Before the first pour", Policy.EACH, 1, null, null, lines(2)),
                    DemoPeople.INSTRUCTOR,
                    moment(days(-1, 9)));
        }
    }

    private GradedSet out(
            int number, String title, Policy feedback, int tries, LocalDateTime opens, LocalDateTime closes) {
        GradedSet draft = draft(number, title, feedback, tries, opens, closes, lines(MOST_LINES));
        Instant at = moment(opens);
        store.add(draft, DemoPeople.INSTRUCTOR, at);
        ExerciseLibrary exercises = content.exercises();
        draft.lines().forEach(line -> Pools.candidates(line, draft.lines(), exercises)
                .forEach(template -> store.freeze(line.id(), template, at)));
        store.publish(
                draft,
                new SetStore.Publication(
                        school.zone(),
                        SchoolMoments.opening(opens, school.zone()),
                        SchoolMoments.closing(closes, school.zone())),
                DemoPeople.INSTRUCTOR,
                at);
        return store.find(draft.id()).orElseThrow();
    }

    private static GradedSet draft(
            int number,
            String title,
            Policy feedback,
            int tries,
            LocalDateTime opens,
            LocalDateTime closes,
            List<Line> lines) {
        return new GradedSet(
                new UUID(0x0000_0000_0000_4000L, 0x8000_0000_0000_0000L + number),
                DemoPeople.FIRST_COHORT,
                title,
                "Work it out with paper and pencil first; the bench is there to check.",
                SetState.DRAFT,
                1,
                tries,
                feedback,
                opens,
                closes,
                null,
                null,
                DemoPeople.INSTRUCTOR,
                null,
                null,
                null,
                null,
                lines);
    }

    /** One item by rule of each skill that the course has, up to so many. */
    private List<Line> lines(int most) {
        List<Line> lines = new ArrayList<>();
        for (String skill : SKILLS) {
            if (lines.size() < most && !content.exercises().ofSkill(skill).isEmpty()) {
                lines.add(Line.rule(UUID.randomUUID(), lines.size() + 1, skill, 0, 1, lines.isEmpty() ? 1 : 2));
            }
        }
        return lines;
    }

    private LocalDateTime days(int days, int hour) {
        return LocalDate.ofInstant(clock.instant(), school.zone())
                .plusDays(days)
                .atTime(hour, 0);
    }

    private Instant moment(LocalDateTime local) {
        return local.atZone(school.zone()).toInstant().truncatedTo(ChronoUnit.MICROS);
    }
}
