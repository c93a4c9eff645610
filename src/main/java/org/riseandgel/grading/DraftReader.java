package org.riseandgel.grading;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.account.CohortView;
import org.riseandgel.course.Content;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.platform.web.PlainText;
import org.riseandgel.platform.web.Problem;

/** Reads a typed draft and says of each field that cannot be taken what would be right. */
final class DraftReader {
    private static final int LONGEST_TITLE = 80;
    private static final int LONGEST_NOTE = 1_000;
    private static final int MOST_TRIES = 9;

    private final SetForm form;
    private final GradedSet stored;
    private final Content content;
    private final ZoneId zone;
    private final List<CohortView> cohorts;
    private final List<Problem> problems = new ArrayList<>();

    private DraftReader(SetForm form, GradedSet stored, Content content, ZoneId zone, List<CohortView> cohorts) {
        this.form = form;
        this.stored = stored;
        this.content = content;
        this.zone = zone;
        this.cohorts = cohorts;
    }

    /** The draft that was typed, to be taken only when there is no problem. */
    record Read(GradedSet draft, List<Problem> problems) {}

    /** Reads the form over what is stored; the cohorts are those that may be chosen. */
    static Read read(SetForm form, GradedSet stored, Content content, ZoneId zone, List<CohortView> cohorts) {
        return new DraftReader(form, stored, content, zone, cohorts).read();
    }

    private Read read() {
        String title = PlainText.tidy(form.title);
        if (!PlainText.isLine(title, LONGEST_TITLE)) {
            problem("title", "Give the set a title of 1 to 80 characters, such as “Stick marks, second week”.");
        }
        String note = form.note.strip();
        if (note.length() > LONGEST_NOTE) {
            problem("note", "The note has %d characters; at most 1,000 fit.".formatted(note.length()));
        } else if (!PlainText.isPlain(note)) {
            problem("note", PlainText.INVISIBLE);
        }
        UUID cohort = cohorts.stream()
                .map(CohortView::id)
                .filter(id -> id.toString().equals(form.cohort))
                .findFirst()
                .orElse(null);
        if (cohort == null) {
            problem("cohort", "Pick the cohort that the set is for from the list.");
        }
        LocalDateTime opens = moment("opens", form.opensDay, form.opensTime);
        LocalDateTime closes = moment("closes", form.closesDay, form.closesTime);
        if (opens != null
                && closes != null
                && !SchoolMoments.closing(closes, zone).isAfter(SchoolMoments.opening(opens, zone))) {
            problem("closes-day", "The set would close before it opens. Give a later day or time for closing.");
        }
        int tries = whole("tries", form.tries, MOST_TRIES, "Write how often the set may be worked, from 1 to 9.");
        List<Line> lines = new ArrayList<>(kept());
        added(lines).ifPresent(lines::add);
        rule(lines).ifPresent(lines::add);
        GradedSet draft = new GradedSet(
                stored.id(),
                cohort,
                title,
                note,
                stored.state(),
                form.seenRevision(),
                tries,
                policy(),
                opens,
                closes,
                null,
                null,
                stored.changedBy(),
                stored.changedAt(),
                null,
                null,
                null,
                lines);
        return new Read(draft, List.copyOf(problems));
    }

    private Policy policy() {
        return form.feedback.equals(Policy.CLOSING.name()) ? Policy.CLOSING : Policy.EACH;
    }

    private LocalDateTime moment(String field, String typedDay, String typedTime) {
        if (typedDay.isBlank() && typedTime.isBlank()) {
            return null;
        }
        Optional<LocalDate> day = SchoolMoments.day(typedDay);
        Optional<LocalTime> time = SchoolMoments.time(typedTime);
        if (day.isEmpty()) {
            problem(field + "-day", SchoolMoments.DAY_WANTED);
        }
        if (time.isEmpty()) {
            problem(field + "-time", "Write the time of day as hours:minutes, such as 18:30.");
        }
        if (day.isEmpty() || time.isEmpty()) {
            return null;
        }
        LocalDateTime moment = day.get().atTime(time.get());
        SchoolMoments.problem(moment, zone).ifPresent(message -> problem(field + "-time", message));
        return moment;
    }

    private List<Line> kept() {
        List<Line> kept = new ArrayList<>();
        for (Line line : stored.lines()) {
            if (!form.takesOut(line.id())) {
                kept.add(placed(line, kept.size() + 1).weighing(weight(line)));
            }
        }
        return kept;
    }

    private int weight(Line line) {
        return whole(
                "weight-" + line.id(),
                form.weightOf(line),
                Line.MOST_POINTS,
                "Write the points for each item as a whole number from 1 to 100.");
    }

    private static Line placed(Line line, int place) {
        return new Line(
                line.id(),
                place,
                line.exercise(),
                line.skill(),
                line.level(),
                line.items(),
                line.weight(),
                line.ranges());
    }

    private Optional<Line> added(List<Line> lines) {
        if (form.exercise.isEmpty()) {
            return Optional.empty();
        }
        Optional<ExerciseTemplate> found = content.exercises().find(form.exercise);
        if (found.isEmpty()) {
            problem("exercise", "Pick an exercise from the list.");
        } else if (found.get().atBench().isPresent()) {
            problem("exercise", PublishCheck.atBench(found.get()));
        } else if (lines.stream().anyMatch(line -> form.exercise.equals(line.exercise()))) {
            problem(
                    "exercise",
                    "“%s” is in the set already. Pick another."
                            .formatted(found.get().title()));
        }
        return found.map(one -> Line.exercise(UUID.randomUUID(), lines.size() + 1, one.id(), 1, ""));
    }

    private Optional<Line> rule(List<Line> lines) {
        if (form.ruleItems.isBlank()) {
            return Optional.empty();
        }
        int items = whole("rule-items", form.ruleItems, Line.MOST_ITEMS, "Write how many items to draw, from 1 to 20.");
        int level = form.ruleLevel.matches("[123]") ? Integer.parseInt(form.ruleLevel) : 0;
        Line rule = Line.rule(UUID.randomUUID(), lines.size() + 1, form.ruleSkill, level, items, 1);
        if (content.course().skill(form.ruleSkill).isEmpty()) {
            problem("rule-skill", "Pick the skill to draw from.");
        } else if (lines.stream().anyMatch(rule::overlaps)) {
            problem(
                    "rule-skill",
                    "Another rule draws from this skill and level already. Take that one out, or pick another level.");
        } else {
            int there = Pools.candidates(rule, lines, content.exercises()).size();
            if (items > there) {
                problem("rule-items", Pools.tooFew(there));
            }
        }
        return Optional.of(rule);
    }

    private int whole(String field, String typed, int most, String message) {
        String text = typed.strip();
        if (text.matches("[0-9]{1,3}") && Integer.parseInt(text) >= 1 && Integer.parseInt(text) <= most) {
            return Integer.parseInt(text);
        }
        problem(field, message);
        return 1;
    }

    private void problem(String field, String message) {
        problems.add(new Problem(field, message));
    }
}
