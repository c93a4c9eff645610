package org.riseandgel.sitting;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.riseandgel.bench.Slip;
import org.riseandgel.core.quantity.DecimalMark;
import org.riseandgel.exercise.DrawnExercise;
import org.riseandgel.exercise.FeedbackView;
import org.riseandgel.exercise.PublicView;
import org.riseandgel.exercise.Verdict;
import org.riseandgel.platform.school.SchoolSettings;

/**
 * Makes what pages may show of sittings. As long as a sitting is open nothing is in these views that tells a right
 * answer, nor which exercise it is, nor whether it is critical.
 */
@ApplicationScoped
class SittingViews {
    private final KeptDraws draws;
    private final SchoolSettings school;

    SittingViews(KeptDraws draws, SchoolSettings school) {
        this.draws = draws;
        this.school = school;
    }

    /** An open sitting from above: each item and the answer saved for it. */
    record Overview(UUID id, String check, String title, Instant startedAt, List<Line> lines, long leftOpen) {
        public int items() {
            return lines.size();
        }
    }

    /** One line of the overview; words and time are empty and null while the item is open. */
    record Line(int number, String question, String words, Instant savedAt) {
        public boolean answered() {
            return savedAt != null;
        }
    }

    /**
     * An item of an open sitting.
     *
     * @param typed what was saved, as it was typed; empty while nothing is
     * @param words what that was read as
     * @param savedAt when it was saved; null while nothing is
     */
    record Item(
            UUID sitting,
            String title,
            int number,
            int items,
            PublicView asked,
            String typed,
            String words,
            Instant savedAt) {
        /** A phone's keypad for decimals has neither letters nor a slash, so it serves only answers without a unit. */
        public String keys() {
            return asked.needsUnit() ? "text" : "decimal";
        }
    }

    /** A sitting that was handed in. */
    record Marked(
            UUID id,
            String check,
            String title,
            Instant startedAt,
            Instant handedInAt,
            int items,
            int right,
            int criticalWrong,
            int passRight,
            int passCriticalWrong,
            boolean passed,
            List<MarkedItem> marked) {
        /** From beginning to handing in, with all pauses. */
        public Duration time() {
            return Duration.between(startedAt, handedInAt);
        }
    }

    /** An item with everything that may be said once the sitting is handed in. What was stored stands. */
    record MarkedItem(
            int number,
            boolean critical,
            String story,
            String typed,
            FeedbackView feedback,
            String verdict,
            String slip,
            String expected) {
        public boolean right() {
            return Verdict.RIGHT.name().equals(verdict);
        }

        public boolean leftOpen() {
            return StoredItem.LEFT_OPEN.equals(verdict);
        }

        /** Whether something was to be chosen, and not a number to be given. */
        public boolean choice() {
            return !feedback.notes().isEmpty();
        }

        /** The verdict in words, and which slip it was. */
        public String heading() {
            if (leftOpen()) {
                return "Left open";
            }
            Verdict stored = Verdict.valueOf(verdict);
            return slip == null || stored.isTheSlip()
                    ? stored.title()
                    : "Slip: " + Slip.byId(slip).map(Slip::title).orElse(slip);
        }

        /** One line that says why; nothing when today's rules would have judged otherwise and no slip is known. */
        public String line() {
            return verdict.equals(feedback.verdict().name())
                    ? feedback.line()
                    : Optional.ofNullable(slip)
                            .flatMap(Slip::byId)
                            .map(Slip::line)
                            .orElse("");
        }

        public String icon() {
            return right() ? "right" : leftOpen() ? "none" : "wrong";
        }
    }

    /** A handed-in sitting in a list. */
    record Summary(UUID id, String title, Instant startedAt, Instant handedInAt, int items, int right, boolean passed) {
        static Summary of(StoredSitting sitting) {
            return new Summary(
                    sitting.id(),
                    sitting.title(),
                    sitting.startedAt(),
                    sitting.isOpen() ? null : sitting.result().handedInAt(),
                    sitting.items().size(),
                    sitting.isOpen() ? 0 : sitting.result().right(),
                    !sitting.isOpen() && sitting.result().passed());
        }

        public boolean open() {
            return handedInAt == null;
        }
    }

    Overview overview(StoredSitting sitting) {
        List<Line> lines = sitting.items().stream().map(this::line).toList();
        return new Overview(
                sitting.id(), sitting.check(), sitting.title(), sitting.startedAt(), lines, sitting.leftOpen());
    }

    private Line line(StoredItem item) {
        DecimalMark mark = school.decimalMark();
        DrawnExercise drawn = draws.of(item);
        return new Line(
                item.number(),
                drawn.prompt(0, mark),
                item.isAnswered() ? Marking.words(drawn, item, mark) : "",
                item.savedAt());
    }

    Item item(StoredSitting sitting, StoredItem item) {
        DecimalMark mark = school.decimalMark();
        DrawnExercise drawn = draws.of(item);
        return new Item(
                sitting.id(),
                sitting.title(),
                item.number(),
                sitting.items().size(),
                PublicView.of(drawn, 0, mark, List.of(), 0),
                item.isAnswered() ? item.typed() : "",
                item.isAnswered() ? Marking.words(drawn, item, mark) : "",
                item.savedAt());
    }

    Marked marked(StoredSitting sitting) {
        StoredSitting.Result result = sitting.result();
        return new Marked(
                sitting.id(),
                sitting.check(),
                sitting.title(),
                sitting.startedAt(),
                result.handedInAt(),
                sitting.items().size(),
                result.right(),
                result.criticalWrong(),
                sitting.pass().right(),
                sitting.pass().criticalWrong(),
                result.passed(),
                sitting.items().stream().map(this::marked).toList());
    }

    private MarkedItem marked(StoredItem item) {
        DecimalMark mark = school.decimalMark();
        DrawnExercise drawn = draws.of(item);
        return new MarkedItem(
                item.number(),
                item.critical(),
                drawn.story(mark),
                item.isAnswered() ? item.typed() : "",
                Marking.feedback(drawn, item, mark),
                item.verdict(),
                item.slip(),
                item.expected());
    }
}
