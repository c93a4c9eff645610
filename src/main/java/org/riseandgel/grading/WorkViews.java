package org.riseandgel.grading;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.FeedbackView;
import org.riseandgel.exercise.PublicView;
import org.riseandgel.exercise.Verdict;
import org.riseandgel.platform.school.SchoolSettings;

/** Makes what an apprentice may see of a try. Nothing in it tells a result before the set's policy allows. */
@ApplicationScoped
class WorkViews {
    /** Stands for what was said of an earlier part, where nothing may be said. */
    private static final FeedbackView SILENT =
            new FeedbackView(0, "", Verdict.WRONG, "", "", "", "", Optional.empty(), "", List.of(), List.of());

    private final SetStore sets;
    private final PartViews parts;
    private final SchoolSettings school;
    private final Clock clock;

    WorkViews(SetStore sets, PartViews parts, SchoolSettings school, Clock clock) {
        this.sets = sets;
        this.parts = parts;
        this.school = school;
        this.clock = clock;
    }

    /**
     * A try from above.
     *
     * @param closesAt when the set closes for this person
     * @param tellsAt when results are told; null when they are told at once
     * @param open whether answers are still taken
     * @param told whether results are told
     * @param points the points so far; empty unless told
     */
    record Overview(
            UUID id,
            GradedSet set,
            int nth,
            Instant handedInAt,
            Instant closesAt,
            Instant tellsAt,
            boolean open,
            boolean told,
            String points,
            List<Line> lines) {
        /** How many parts are not answered. */
        public int leftOpen() {
            return lines.stream().mapToInt(line -> line.parts - line.answered).sum();
        }
    }

    /** An item in the overview; its points are empty unless told. */
    record Line(int number, String question, int weight, int parts, int answered, String points) {
        public boolean isWhole() {
            return answered == parts;
        }
    }

    /**
     * An item with its parts.
     *
     * @param title of the exercise; empty unless told, because it may say how to reckon
     * @param told the parts with their results; empty unless told
     * @param quiet the parts answered so far; empty where told
     * @param asked the part that is asked on this page; null when none is
     * @param typed what stands in its field
     * @param answering the number of the part that is asked, from 1
     */
    record ItemView(
            Overview work,
            int number,
            int weight,
            String title,
            String story,
            List<PartTold> told,
            List<Quiet> quiet,
            PublicView asked,
            String typed,
            int answering) {
        /** A phone's keypad for decimals has neither letters nor a slash, so it serves only answers without a unit. */
        public String keys() {
            return asked.needsUnit() ? "text" : "decimal";
        }

        public boolean isLast() {
            return number == work.lines().size();
        }
    }

    /** An answered part of which nothing is told yet. */
    record Quiet(int part, String prompt, String typed, String words, Instant at) {}

    Overview overview(Work work, GradedSet set) {
        Instant now = clock.instant();
        List<SetStore.Extension> extensions = sets.extensions(set.id());
        Instant closes = TryRule.closes(set, extensions, work.person());
        boolean open = work.isOpen() && TryRule.isOpen(set, closes, now);
        boolean told = TryRule.tells(set, extensions, work.person(), now);
        return new Overview(
                work.id(),
                set,
                work.nth(),
                work.handedInAt(),
                closes,
                set.feedback() == Policy.EACH ? null : TryRule.toldAt(set, extensions, work.person()),
                open,
                told,
                told ? parts.score(work).words(school.decimalMark()) : "",
                work.items().stream().map(item -> line(item, told)).toList());
    }

    private Line line(Work.Item item, boolean told) {
        DecimalMark mark = school.decimalMark();
        DrawnExercise drawn = parts.drawn(item);
        String question = (drawn.story(mark) + " " + drawn.prompt(0, mark)).strip();
        return new Line(
                item.number(),
                question,
                item.weight(),
                drawn.partCount(),
                item.answers().size(),
                told
                        ? Score.text(Score.written(Score.of(item, drawn.partCount())), mark) + " of " + item.weight()
                        : "");
    }

    /** An item; the part to change an answer of may be asked for, where that is possible. */
    ItemView item(Work work, GradedSet set, Work.Item item, int wanted, String typed) {
        Overview overview = overview(work, set);
        DecimalMark mark = school.decimalMark();
        DrawnExercise drawn = parts.drawn(item);
        boolean tells = overview.told();
        int next = item.answers().size();
        boolean changes = !tells && wanted >= 0 && wanted < next;
        int asked = changes ? wanted : next;
        boolean asks = overview.open() && asked < drawn.partCount();
        String kept = changes && typed.isEmpty() ? item.answers().get(wanted).typed() : typed;
        return new ItemView(
                overview,
                item.number(),
                item.weight(),
                tells ? drawn.template().title() : "",
                drawn.story(mark),
                tells ? told(item, overview.open()) : List.of(),
                tells
                        ? List.of()
                        : item.answers().stream()
                                .map(answer -> quiet(item, drawn, answer))
                                .toList(),
                asks ? PublicView.of(drawn, asked, mark, Collections.nCopies(asked, SILENT), 0) : null,
                kept,
                asked + 1);
    }

    /** While the try is open only parts that were answered are told. */
    private List<PartTold> told(Work.Item item, boolean open) {
        return open
                ? item.answers().stream()
                        .map(answer -> parts.told(item, answer.part()))
                        .toList()
                : parts.told(item);
    }

    private Quiet quiet(Work.Item item, DrawnExercise drawn, ItemAnswer answer) {
        return new Quiet(
                answer.part(),
                drawn.prompt(answer.part(), school.decimalMark()),
                answer.typed(),
                parts.words(item, answer),
                answer.answeredAt());
    }
}
